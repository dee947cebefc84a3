using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>A range of storage temperatures: allowed by the data sheet, or recorded in the store.</summary>
/// <remarks>-60 to 100 degC, the lowest at most the highest.</remarks>
public sealed record TapeBatchStorage
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;

    /// <summary>Describes a range.</summary>
    /// <param name="lowest">Lowest temperature.</param>
    /// <param name="highest">Highest temperature.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public TapeBatchStorage(Temperature lowest, Temperature highest)
    {
        double low = AcceptedRange.Between(-60, 100, "degC").Check(UnitConversions.DegreesCelsius(lowest), nameof(lowest));
        this.lowest = new StoredNumber(low);
        this.highest = new StoredNumber(AcceptedRange.Between(low, 100, "degC").Noting("at least the lowest")
            .Check(UnitConversions.DegreesCelsius(highest), nameof(highest)));
    }

    /// <summary>Lowest temperature.</summary>
    public Temperature Lowest => Temperature.FromDegreesCelsius(this.lowest.Bare);

    /// <summary>Highest temperature.</summary>
    public Temperature Highest => Temperature.FromDegreesCelsius(this.highest.Bare);

    internal double Low => this.lowest.Bare;

    internal double High => this.highest.Bare;

    /// <summary>Both ends as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Low:0.##} to {this.High:0.##} degC");
}
