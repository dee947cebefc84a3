using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>A range of corrosion rates: what is known of an exposure is seldom one number.</summary>
/// <remarks>Lowest: zero or more, at most the highest. <c>default</c> is unset and says so when read.</remarks>
public readonly record struct RateRange
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;

    /// <summary>Describes a range.</summary>
    /// <param name="lowest">The lowest rate.</param>
    /// <param name="highest">The highest rate, at least the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The highest is below the lowest.</exception>
    public RateRange(CorrosionRate lowest, CorrosionRate highest)
    {
        AcceptedRange.AtLeast(lowest.MicrometersPerYear, "um/a").Noting("the lowest rate").Check(highest.MicrometersPerYear, nameof(highest));
        this.lowest = new StoredNumber(lowest.MicrometersPerYear);
        this.highest = new StoredNumber(highest.MicrometersPerYear);
    }

    /// <summary>The lowest rate.</summary>
    public CorrosionRate Lowest => CorrosionRate.FromMicrometersPerYear(this.lowest.Read(nameof(RateRange)));

    /// <summary>The highest rate.</summary>
    public CorrosionRate Highest => CorrosionRate.FromMicrometersPerYear(this.highest.Read(nameof(RateRange)));

    /// <summary>The range as invariant text.</summary>
    public override string ToString() => this.lowest.IsSet ? $"{this.Lowest} to {this.Highest}" : "unset";
}
