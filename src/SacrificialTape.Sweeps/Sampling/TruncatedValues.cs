using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A distribution of which only the part between two bounds is drawn, in proportion.</summary>
public sealed record TruncatedValues : DistributedValues
{
    private const double LeastShare = 1e-6;

    private readonly double below;
    private readonly double width;

    /// <summary>States the bounds.</summary>
    /// <param name="whole">The whole distribution.</param>
    /// <param name="low">The lowest value drawn.</param>
    /// <param name="high">The highest value drawn, more than the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A bound is not finite, the highest is not above the lowest, or less than a millionth of the distribution lies between.
    /// </exception>
    public TruncatedValues(DistributedValues whole, double low, double high)
    {
        ArgumentNullException.ThrowIfNull(whole);
        this.Whole = whole;
        this.Low = Finite(low, nameof(low));
        this.High = Above(high, low, nameof(high));
        this.below = whole.Below(low);
        this.width = whole.Below(high) - this.below;

        // Less than this and its digits would be gone; who wants that tail has the wrong distribution.
        if (!(this.width >= LeastShare))
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, string.Create(
                CultureInfo.InvariantCulture,
                $"Between {low} and {high} lies {this.width:G3} of all draws of '{whole}': at least {LeastShare} must."));
        }
    }

    /// <summary>The whole distribution.</summary>
    public DistributedValues Whole { get; }

    /// <summary>The lowest value drawn.</summary>
    public double Low { get; }

    /// <summary>The highest value drawn.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Below(double value) =>
        double.IsNaN(value) ? value : Math.Clamp((this.Whole.Below(value) - this.below) / this.width, 0, 1);

    internal override string Kind => $"{base.Kind} of {this.Whole.Kind}";

    internal override double[] Numbers => [this.Low, this.High, .. this.Whole.Numbers];

    // The inverse may miss a bound by a rounding error; a bound is a bound.
    internal override void Draw(Span<double> shares)
    {
        foreach (ref double share in shares)
        {
            share = this.below + (share * this.width);
        }

        this.Whole.Draw(shares);
        foreach (ref double value in shares)
        {
            value = Math.Clamp(value, this.Low, this.High);
        }
    }

    /// <summary>Distribution and bounds as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Whole}, only {this.Low:G6} to {this.High:G6}");
}
