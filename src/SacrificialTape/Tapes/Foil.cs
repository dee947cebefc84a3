using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>The zinc foil of a tape.</summary>
/// <remarks>
/// Thickness: 0.005 to 2 mm. Tolerance: zero or more and less than the thickness; no standard tolerance for thin zinc
/// foil was found, so there is no default but none. Density: that of zinc unless stated. Equality: by meaning, to 15
/// significant digits.
/// </remarks>
public sealed record Foil
{
    private static readonly AcceptedRange AcceptedThickness = AcceptedRange.Between(0.005, 2, "mm");

    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber toleranceMm;
    private readonly StoredNumber kilogramsPerCubicMeter;

    /// <summary>Describes a foil.</summary>
    /// <param name="thickness">Nominal thickness, 0.005 to 2 mm.</param>
    /// <param name="tolerance">How much thinner it may be, less than the thickness; left out: no allowance.</param>
    /// <param name="density">Density; left out: <see cref="Zinc.Density"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Foil(Length thickness, Length? tolerance = null, Density? density = null)
    {
        double mm = AcceptedThickness.Check(UnitConversions.Millimeters(thickness), nameof(thickness));
        double less = tolerance is { } given ? UnitConversions.Millimeters(given) : 0;
        this.thicknessMm = new StoredNumber(mm);
        this.toleranceMm = new StoredNumber(AcceptedRange.FromBelow(0, mm, "mm").Check(less, nameof(tolerance)));
        this.kilogramsPerCubicMeter = new StoredNumber(density is { } stated
            ? AcceptedRange.Between(6000, 8000, "kg/m3").Check(UnitConversions.KilogramsPerCubicMeter(stated), nameof(density))
            : Zinc.KilogramsPerCubicMeter);
    }

    /// <summary>Nominal thickness.</summary>
    public Length Thickness => Length.FromMillimeters(this.ThicknessMm);

    /// <summary>How much thinner than nominal it may be.</summary>
    public Length Tolerance => Length.FromMillimeters(this.toleranceMm.Bare);

    /// <summary>Nominal thickness less the tolerance: what the earliest life counts on.</summary>
    public Length LeastThickness => Length.FromMillimeters(this.ThicknessMm - this.toleranceMm.Bare);

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(this.KilogramsPerCubicMeter);

    internal double ThicknessMm => this.thicknessMm.Bare;

    internal double LeastThicknessMm => this.ThicknessMm - this.toleranceMm.Bare;

    internal double KilogramsPerCubicMeter => this.kilogramsPerCubicMeter.Bare;

    /// <summary>Thickness in a few words.</summary>
    public override string ToString() => $"zinc foil {MeasureText.Write(this.ThicknessMm, TradeUnit.Millimeter, 6)}";
}
