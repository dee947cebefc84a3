using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A coating of hot-dip zinc to compare a tape with.</summary>
/// <remarks>Thickness more than zero, at most 1 mm; mass at most 7140 g/m2. All of it is counted, as the life tables for such coatings do.</remarks>
public sealed record HotDipCoating
{
    private static readonly AcceptedRange AcceptedThickness = AcceptedRange.AboveUpTo(0, 1000, "um").Noting("610 g/m2 is a mass: state it as one");
    private static readonly AcceptedRange AcceptedMass = AcceptedRange.AboveUpTo(0, 7140, "g/m2");

    private readonly StoredNumber um;

    private HotDipCoating(double um, Basis basis)
    {
        this.um = new StoredNumber(um);
        this.Basis = basis;
    }

    /// <summary>Its thickness.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.HotDipThickness))]
    public Length Thickness => Length.FromMicrometers(this.Um);

    /// <summary>On what the thickness rests.</summary>
    public Basis Basis { get; }

    internal double Um => this.um.Bare;

    /// <summary>A coating of known thickness.</summary>
    /// <param name="thickness">More than zero, at most 1 mm.</param>
    /// <param name="note">How it is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range.</exception>
    public static HotDipCoating FromThickness(Length thickness, string note) => new(
        AcceptedThickness.Check(UnitConversions.Micrometers(thickness), nameof(thickness)), Basis.OwnExperience(note));

    /// <summary>A coating of known mass on one face, at 7.14 g/cm3 unless another density is stated.</summary>
    /// <param name="mass">Mass per area of one face, more than zero, at most 7140 g/m2.</param>
    /// <param name="note">How it is known.</param>
    /// <param name="density">ISO 1461 converts at 7.2 g/cm3; left out: 7.14 g/cm3.</param>
    /// <exception cref="ArgumentOutOfRangeException">Mass or density is outside its range.</exception>
    public static HotDipCoating FromMass(AreaDensity mass, string note, Density? density = null)
    {
        double grams = AcceptedMass.Check(UnitConversions.GramsPerSquareMeter(mass), nameof(mass));
        double rho = density is { } stated
            ? AcceptedRange.Above(0, "kg/m3").Check(UnitConversions.KilogramsPerCubicMeter(stated), nameof(density))
            : Zinc.KilogramsPerCubicMeter;
        return new(SpreadKernel.HotDipUm(grams, rho), Basis.OwnExperience(note));
    }

    /// <summary>Least thickness of ISO 1461:2009 on parts that are not centrifuged (read as quoted elsewhere).</summary>
    /// <param name="steelThickness">Thickness of the steel, more than zero.</param>
    /// <param name="value">At any one place, or the mean.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not positive, or there is no such value.</exception>
    public static HotDipCoating Iso1461(Length steelThickness, HotDipValue value)
    {
        double mm = AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(steelThickness), nameof(steelThickness));
        if (!Enum.IsDefined(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "The standard has a local and a mean thickness.");
        }

        (double local, double mean) = mm switch
        {
            > 6 => (70.0, 85.0),
            > 3 => (55, 70),
            >= 1.5 => (45, 55),
            _ => (35, 45),
        };
        return new(value == HotDipValue.Local ? local : mean, SpreadFormulas.Local);
    }

    /// <summary>The thickness in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"hot-dip zinc {this.Um:0.###} um");
}
