using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>A part-used roll as it can be measured with a rule: how many metres are still on it.</summary>
/// <remarks>
/// Outside diameter: more than the core's, at most 5 m. Core diameter: more than 0. Layer: more than 0, at most 5 mm;
/// it is the pitch of the wound layers (foil, adhesive and liner), best found from a roll of known length by
/// <see cref="LayerThicknessFrom"/>, not with a micrometer.
/// </remarks>
public sealed record WoundRoll : IHasWorkings
{
    private static readonly AcceptedRange AcceptedCore = AcceptedRange.AboveUpTo(0, 5000, "mm");

    private readonly StoredNumber outsideMm;
    private readonly StoredNumber coreMm;
    private readonly StoredNumber layerMm;

    /// <summary>Describes a roll.</summary>
    /// <param name="outsideDiameter">Over the tape.</param>
    /// <param name="coreDiameter">Over the core, less than the outside.</param>
    /// <param name="layerThickness">Of one wound layer.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public WoundRoll(Length outsideDiameter, Length coreDiameter, Length layerThickness)
    {
        (double outside, double core) = Check(outsideDiameter, coreDiameter);
        this.outsideMm = new StoredNumber(outside);
        this.coreMm = new StoredNumber(core);
        this.layerMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 5, "mm")
            .Check(UnitConversions.Millimeters(layerThickness), nameof(layerThickness)));
    }

    /// <summary>Diameter over the tape.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.outsideMm.Bare);

    /// <summary>Diameter over the core.</summary>
    public Length CoreDiameter => Length.FromMillimeters(this.coreMm.Bare);

    /// <summary>Thickness of one wound layer.</summary>
    public Length LayerThickness => Length.FromMillimeters(this.layerMm.Bare);

    /// <summary>Length of strip on the roll.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.RollLength))]
    public Length StripLength => Length.FromMillimeters(this.Solve(default(NoSteps)));

    /// <summary>The thickness of a wound layer, from a roll of known length.</summary>
    /// <param name="outsideDiameter">Over the tape.</param>
    /// <param name="coreDiameter">Over the core.</param>
    /// <param name="knownLength">Length of strip on it, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.RollPitch))]
    public static Length LayerThicknessFrom(Length outsideDiameter, Length coreDiameter, Length knownLength)
    {
        (double outside, double core) = Check(outsideDiameter, coreDiameter);
        double length = AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(knownLength), nameof(knownLength));
        return Length.FromMillimeters(FoilKernel.RollLayerMm(outside, core, length));
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Strip on a roll");
    }

    /// <summary>The diameters in a few words.</summary>
    public override string ToString() => $"roll {MeasureText.Write(this.outsideMm.Bare, TradeUnit.Millimeter, 6)} over a core of {MeasureText.Write(this.coreMm.Bare, TradeUnit.Millimeter, 6)}";

    private static (double OutsideMm, double CoreMm) Check(Length outsideDiameter, Length coreDiameter)
    {
        double core = AcceptedCore.Check(UnitConversions.Millimeters(coreDiameter), nameof(coreDiameter));
        double outside = AcceptedRange.AboveUpTo(core, 5000, "mm")
            .Check(UnitConversions.Millimeters(outsideDiameter), nameof(outsideDiameter));
        return (outside, core);
    }

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        FoilKernel.RollLengthMm(this.outsideMm.Bare, this.coreMm.Bare, this.layerMm.Bare, steps);
}
