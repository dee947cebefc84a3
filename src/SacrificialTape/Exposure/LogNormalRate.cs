using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>A rate with a log-normal error: its middle, and s.</summary>
/// <remarks>The middle is the median: half of all sites lie above. <c>default</c> is unset and says so when read.</remarks>
public readonly record struct LogNormalRate
{
    private readonly StoredNumber median;
    private readonly StoredNumber spread;

    /// <summary>Describes a rate and how widely it is known.</summary>
    /// <param name="median">The middle.</param>
    /// <param name="spread">s of the log-normal error.</param>
    public LogNormalRate(CorrosionRate median, LogSpread spread)
    {
        this.median = new StoredNumber(median.MicrometersPerYear);
        this.spread = new StoredNumber(spread.Value);
    }

    /// <summary>The middle.</summary>
    public CorrosionRate Median => CorrosionRate.FromMicrometersPerYear(this.median.Read(nameof(LogNormalRate)));

    /// <summary>s of the log-normal error.</summary>
    public LogSpread Spread => LogSpread.FromValue(this.spread.Read(nameof(LogNormalRate)));

    /// <summary>From r exp(-s) to r exp(+s).</summary>
    [BasisOf(typeof(ExposureFormulas), nameof(ExposureFormulas.LowRate))]
    [BasisOf(typeof(ExposureFormulas), nameof(ExposureFormulas.HighRate))]
    public RateRange Range => ExposureKernel.Interval(this.median.Read(nameof(LogNormalRate)), this.spread.Bare, default(NoSteps));

    /// <summary>Middle and s as invariant text.</summary>
    public override string ToString() => this.median.IsSet ? $"{this.Median}, s = {this.Spread}" : "unset";
}
