using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>Between which values a quantile lies: the edges of its bin.</summary>
/// <param name="Low">The lower edge; negative infinity below all bins.</param>
/// <param name="High">The upper edge; positive infinity above all bins.</param>
public readonly record struct QuantileBounds(double Low, double High)
{
    /// <summary>The middle: at most half the width of the bin off.</summary>
    public double Middle => this.Low + ((this.High - this.Low) / 2);

    /// <summary>Both edges as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Low:G6} to {this.High:G6}");
}
