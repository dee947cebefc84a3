using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Fillet welds along a corner of two plates: of a welded section, a stiffener, a base.</summary>
/// <remarks>
/// Seam: more than 0, at most 1000 km. Leg: more than 0, at most 1 m. Count: at least 1. The strip lies over the weld's face
/// and reaches onto both plates.
/// </remarks>
public sealed record FilletWelds : WeldSeam
{
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber legMm;

    /// <summary>Describes fillet welds.</summary>
    /// <param name="seamLength">Of one of them.</param>
    /// <param name="leg">Leg of the fillet, both legs equal.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FilletWelds(Length seamLength, Length leg, int count)
        : base(count)
    {
        this.lengthMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 1e6, "m")
            .Check(UnitConversions.Millimeters(seamLength) / 1000, nameof(seamLength)) * 1000);
        this.legMm = new StoredNumber(FittingRanges.ThicknessMm(leg, nameof(leg)));
    }

    /// <inheritdoc/>
    public override Length SeamLength => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Leg of the fillet.</summary>
    public Length Leg => Length.FromMillimeters(this.legMm.Bare);

    /// <summary>Width of the weld's face, taken as flat: what the strip has to cross before it reaches plate.</summary>
    [BasisOf(typeof(WeldFormulas), nameof(WeldFormulas.FilletFace))]
    public Length Face => Length.FromMillimeters(WeldKernel.FilletFaceMm(this.legMm.Bare));

    /// <inheritdoc/>
    public override bool Closed => false;

    /// <inheritdoc/>
    public override string Place => "along the corner, over the fillet";

    /// <summary>Fillets along a whole section, for instance four between the web and the flanges of a welded I section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="leg">Leg of the fillet.</param>
    /// <param name="count">How many run along it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FilletWelds Along(Section section, Length leg, int count)
    {
        ArgumentNullException.ThrowIfNull(section);
        return new(section.Length, leg, count);
    }

    internal override double LengthMm<TSteps>(TSteps steps) => this.lengthMm.Bare;
}
