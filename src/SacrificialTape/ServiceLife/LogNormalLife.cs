using SacrificialTape.Exposure;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>A life that is log-normal: its median and s.</summary>
/// <remarks><c>default</c> is unset and says so when read.</remarks>
public readonly record struct LogNormalLife
{
    private readonly StoredNumber years;
    private readonly StoredNumber spread;

    internal LogNormalLife(double years, double spread)
    {
        this.years = new StoredNumber(years);
        this.spread = new StoredNumber(spread);
    }

    /// <summary>Half of such lives are longer.</summary>
    public Lifetime Median => Lifetime.OfYears(this.years.Read(nameof(LogNormalLife)));

    /// <summary>One standard deviation of the logarithm of the life.</summary>
    public LogSpread Spread => LogSpread.FromValue(this.spread.Read(nameof(LogNormalLife)));

    /// <summary>Median and s as invariant text.</summary>
    public override string ToString() => this.years.IsSet ? $"{this.Median}, s = {this.Spread}" : "unset";
}
