using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>One input of a tornado: what the answer is at its low and at its high value, all others at their medians.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="LowValue">Its value at the low share.</param>
/// <param name="HighValue">Its value at the high share.</param>
/// <param name="AtLow">The answer at the low value.</param>
/// <param name="AtHigh">The answer at the high value.</param>
public sealed record TornadoBar(string Input, double LowValue, double HighValue, double AtLow, double AtHigh)
{
    /// <summary>How far apart the two answers are; not a number where one of them is none.</summary>
    public double Swing => Math.Abs(this.AtHigh - this.AtLow);

    /// <summary>Input, values and answers as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Input}: {this.AtLow:G6} at {this.LowValue:G6}, {this.AtHigh:G6} at {this.HighValue:G6}");
}
