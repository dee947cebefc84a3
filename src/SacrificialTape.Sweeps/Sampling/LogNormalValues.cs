using System.Globalization;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A value whose logarithm is normal: half of all draws below the median, the logarithm's deviation s.</summary>
public sealed record LogNormalValues : DistributedValues
{
    /// <summary>States median and s.</summary>
    /// <param name="median">The median, more than 0.</param>
    /// <param name="logDeviation">The standard deviation s of the natural logarithm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or not above 0.</exception>
    public LogNormalValues(double median, double logDeviation)
    {
        this.Median = Above(median, 0, nameof(median));
        this.LogDeviation = Above(logDeviation, 0, nameof(logDeviation));
    }

    /// <summary>The median.</summary>
    public double Median { get; }

    /// <summary>The standard deviation s of the natural logarithm.</summary>
    public double LogDeviation { get; }

    /// <inheritdoc/>
    public override double Below(double value) =>
        value <= 0 ? 0 : NormalKernel.Below(Math.Log(value / this.Median) / this.LogDeviation);

    internal override double[] Numbers => [this.Median, this.LogDeviation];

    internal override void Draw(Span<double> shares) =>
        RowLoop.InPlace(new LogNormalDraws(shares, this.Median, this.LogDeviation), shares.Length);

    /// <summary>Median and s as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"log-normal, median {this.Median:G6}, s = {this.LogDeviation:G6}");
}
