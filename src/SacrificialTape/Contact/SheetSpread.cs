using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>What a wide sheet resists around a disc through which current enters it: to a ring about it, or to a second like disc.</summary>
/// <remarks>Radius of the disc: more than 0, at most 10 m. Distance: more than the radius; for two discs more than twice it; at most 1 km.</remarks>
public sealed record SheetSpread : IHasWorkings
{
    private readonly StoredNumber discMm;
    private readonly StoredNumber farMm;

    /// <summary>Describes where current spreads.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="discRadius">Radius of the disc.</param>
    /// <param name="reach">Radius of the ring, or distance between the middles of two discs.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SheetSpread(FoilSheet sheet, Length discRadius, Length reach)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        this.Sheet = sheet;
        double a = AcceptedRange.AboveUpTo(0, 10_000, "mm").Check(UnitConversions.Millimeters(discRadius), nameof(discRadius));
        this.discMm = new StoredNumber(a);
        this.farMm = new StoredNumber(AcceptedRange.AboveUpTo(a, 1e6, "mm").Noting("the radius of the disc").Check(UnitConversions.Millimeters(reach), nameof(reach)));
    }

    /// <summary>The sheet.</summary>
    public FoilSheet Sheet { get; }

    /// <summary>Radius of the disc.</summary>
    public Length DiscRadius => Length.FromMillimeters(this.discMm.Bare);

    /// <summary>Radius of the ring, or distance between two discs.</summary>
    public Length Reach => Length.FromMillimeters(this.farMm.Bare);

    /// <summary>From the disc to the ring.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.DiscToRing))]
    public ElectricResistance DiscToRing => ElectricResistance.FromOhms(
        VoltageKernel.DiscToRingOhm(this.Sheet.SquareOhm(default(NoSteps)), this.farMm.Bare, this.discMm.Bare, default(NoSteps)));

    /// <summary>Between two like discs on a sheet without end, exactly; null where they would touch.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.TwoDiscs))]
    public ElectricResistance? TwoDiscs => this.Apart
        ? ElectricResistance.FromOhms(VoltageKernel.TwoDiscsOhm(this.Sheet.SquareOhm(default(NoSteps)), this.farMm.Bare, this.discMm.Bare, default(NoSteps)))
        : null;

    /// <summary>Between two like discs that are small against their distance.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.TwoSmallDiscs))]
    public ElectricResistance TwoSmallDiscs => ElectricResistance.FromOhms(
        VoltageKernel.TwoSmallDiscsOhm(this.Sheet.SquareOhm(default(NoSteps)), this.farMm.Bare, this.discMm.Bare, default(NoSteps)));

    private bool Apart => this.farMm.Bare > 2 * this.discMm.Bare;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double square = this.Sheet.SquareOhm(steps);
        _ = VoltageKernel.DiscToRingOhm(square, this.farMm.Bare, this.discMm.Bare, steps);
        _ = VoltageKernel.TwoSmallDiscsOhm(square, this.farMm.Bare, this.discMm.Bare, steps);
        if (this.Apart)
        {
            _ = VoltageKernel.TwoDiscsOhm(square, this.farMm.Bare, this.discMm.Bare, steps);
        }

        return steps.Under("Spreading in a sheet");
    }

    /// <summary>Disc and distance in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"disc of radius {this.discMm.Bare:0.###} mm, {this.farMm.Bare:0.###} mm away, {this.Sheet}");
}
