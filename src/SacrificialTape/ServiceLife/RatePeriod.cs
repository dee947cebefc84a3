using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A time over which metal goes at one rate.</summary>
/// <remarks>Range: rate and length more than zero.</remarks>
public sealed record RatePeriod
{
    private readonly StoredNumber years;

    /// <summary>Describes a period.</summary>
    /// <param name="rate">The rate, more than zero.</param>
    /// <param name="length">How long it lasts, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Rate or length is zero or less.</exception>
    public RatePeriod(CorrosionRate rate, Duration length)
    {
        AcceptedRange.Above(0, "um/a").Check(rate.MicrometersPerYear, nameof(rate));
        this.Rate = rate;
        this.years = new StoredNumber(AcceptedRange.Above(0, "a").Check(UnitConversions.Years(length), nameof(length)));
    }

    /// <summary>The rate.</summary>
    public CorrosionRate Rate { get; }

    /// <summary>How long it lasts.</summary>
    public Duration Length => UnitConversions.FromYears(this.Years);

    internal double Years => this.years.Bare;

    /// <summary>Rate and length in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Rate} for {this.Years:0.######} a");
}
