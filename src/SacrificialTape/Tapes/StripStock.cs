using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>A tape as it is stocked: slit to a width and wound to a length. Stock is the user's own data.</summary>
/// <remarks>Width: 1 to 2000 mm. Roll length: more than 0, at most 10 000 m.</remarks>
public sealed record StripStock
{
    private readonly StoredNumber widthMm;
    private readonly StoredNumber rollMm;

    /// <summary>Describes a stocked strip.</summary>
    /// <param name="tape">The tape.</param>
    /// <param name="width">Width of the strip, 1 to 2000 mm.</param>
    /// <param name="rollLength">Length of a roll, more than 0, at most 10 000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public StripStock(Tape tape, Length width, Length rollLength)
    {
        ArgumentNullException.ThrowIfNull(tape);
        this.Tape = tape;
        this.widthMm = new StoredNumber(
            AcceptedRange.Between(1, 2000, "mm").Check(UnitConversions.Millimeters(width), nameof(width)));
        double meters = UnitConversions.Millimeters(rollLength) / 1000;
        this.rollMm = new StoredNumber(
            AcceptedRange.AboveUpTo(0, 10_000, "m").Check(meters, nameof(rollLength)) * 1000);
    }

    /// <summary>The tape.</summary>
    public Tape Tape { get; }

    /// <summary>Width of the strip.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>Length of a roll.</summary>
    public Length RollLength => Length.FromMillimeters(this.RollMm);

    internal double WidthMm => this.widthMm.Bare;

    internal double RollMm => this.rollMm.Bare;

    /// <summary>The roll as it is cut and counted: in whole micrometres.</summary>
    internal long RollUm => (long)Math.Round(this.RollMm * 1e3);

    /// <summary>The zinc in a length of this strip: length times width times foil thickness times density.</summary>
    /// <param name="stripLength">Length of strip, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative.</exception>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincMass(Length stripLength) => Mass.FromKilograms(FoilKernel.Kilograms(
        AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(stripLength), nameof(stripLength)),
        this.WidthMm,
        this.Tape.Foil.ThicknessMm,
        this.Tape.Foil.KilogramsPerCubicMeter,
        default(NoSteps)));

    /// <summary>Foil thickness, width and roll length in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Tape.Foil.ThicknessMm:0.####} x {this.WidthMm:0.##} mm, rolls of {this.RollMm / 1000:0.##} m{(this.Tape.ConductsAtLaps ? string.Empty : ", faced")}");
}
