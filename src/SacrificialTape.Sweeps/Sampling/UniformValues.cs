using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Every value between two bounds with equal chance.</summary>
public sealed record UniformValues : DistributedValues
{
    /// <summary>States the bounds.</summary>
    /// <param name="low">The lowest value.</param>
    /// <param name="high">The highest, more than the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the highest is not above the lowest.</exception>
    public UniformValues(double low, double high)
    {
        this.Low = Finite(low, nameof(low));
        this.High = Above(high, low, nameof(high));
    }

    /// <summary>The lowest value.</summary>
    public double Low { get; }

    /// <summary>The highest value.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Below(double value) =>
        double.IsNaN(value) ? value : Math.Clamp((value - this.Low) / (this.High - this.Low), 0, 1);

    internal override double[] Numbers => [this.Low, this.High];

    internal override void Draw(Span<double> shares)
    {
        foreach (ref double share in shares)
        {
            share = ((1 - share) * this.Low) + (share * this.High);
        }
    }

    /// <summary>The bounds as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"uniform, {this.Low:G6} to {this.High:G6}");
}
