using System.Globalization;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A normal distribution.</summary>
public sealed record NormalValues : DistributedValues
{
    /// <summary>States mean and standard deviation.</summary>
    /// <param name="mean">The mean.</param>
    /// <param name="deviation">The standard deviation, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the deviation not above 0.</exception>
    public NormalValues(double mean, double deviation)
    {
        this.Mean = Finite(mean, nameof(mean));
        this.Deviation = Above(deviation, 0, nameof(deviation));
    }

    /// <summary>The mean.</summary>
    public double Mean { get; }

    /// <summary>The standard deviation.</summary>
    public double Deviation { get; }

    /// <inheritdoc/>
    public override double Below(double value) => NormalKernel.Below((value - this.Mean) / this.Deviation);

    internal override double[] Numbers => [this.Mean, this.Deviation];

    internal override void Draw(Span<double> shares) => RowLoop.InPlace(new NormalDraws(shares, this.Mean, this.Deviation), shares.Length);

    /// <summary>Mean and deviation as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"normal, mean {this.Mean:G6}, deviation {this.Deviation:G6}");
}
