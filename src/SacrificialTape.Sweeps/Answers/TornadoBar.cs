using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>One input of a tornado: what the answer is at its low and at its high value, all others at their medians.</summary>
public sealed record TornadoBar
{
    internal TornadoBar(string input, double lowValue, double highValue, double atLow, double atHigh)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(input);
        this.Input = input;
        this.LowValue = lowValue;
        this.HighValue = highValue;
        this.AtLow = atLow;
        this.AtHigh = atHigh;
    }

    /// <summary>Name of the input.</summary>
    public string Input { get; }

    /// <summary>Its value at the low share.</summary>
    public double LowValue { get; }

    /// <summary>Its value at the high share.</summary>
    public double HighValue { get; }

    /// <summary>The answer at the low value.</summary>
    public double AtLow { get; }

    /// <summary>The answer at the high value.</summary>
    public double AtHigh { get; }

    /// <summary>How far apart the two answers are; not a number where one of them is none.</summary>
    public double Swing => Math.Abs(this.AtHigh - this.AtLow);

    /// <summary>Input, values and answers as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Input}: {this.AtLow:G6} at {this.LowValue:G6}, {this.AtHigh:G6} at {this.HighValue:G6}");
}
