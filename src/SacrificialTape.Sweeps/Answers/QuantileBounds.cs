using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>Between which values a quantile lies: the edges of its bin.</summary>
public readonly record struct QuantileBounds
{
    internal QuantileBounds(double low, double high)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(low, high);
        this.Low = low;
        this.High = high;
    }

    /// <summary>The lower edge; negative infinity below all bins.</summary>
    public double Low { get; }

    /// <summary>The upper edge; positive infinity above all bins.</summary>
    public double High { get; }

    /// <summary>The middle: at most half the width of the bin off.</summary>
    public double Middle => this.Low + ((this.High - this.Low) / 2);

    /// <summary>Both edges as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Low:G6} to {this.High:G6}");
}
