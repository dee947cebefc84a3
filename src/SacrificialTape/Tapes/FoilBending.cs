using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>A foil bent round a pipe or folded over an edge: how much its outside stretches.</summary>
/// <remarks>
/// Radius: 0 to 1000 m; a sharp edge has radius 0, and the strain is then 1. The adhesive under the foil is not counted.
/// Strain without thinning or a shift of the middle: for tight folds of soft foil a measure to compare by, no forecast.
/// </remarks>
public sealed record FoilBending : IHasWorkings
{
    private readonly StoredNumber radiusMm;

    /// <summary>Describes a bent foil.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="radius">Of the steel it lies on; half the outside diameter of a pipe.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is outside its range.</exception>
    public FoilBending(Foil foil, Length radius)
    {
        ArgumentNullException.ThrowIfNull(foil);
        this.Foil = foil;
        this.radiusMm = new StoredNumber(AcceptedRange.Between(0, 1e6, "mm").Check(UnitConversions.Millimeters(radius), nameof(radius)));
    }

    /// <summary>The foil.</summary>
    public Foil Foil { get; }

    /// <summary>Radius of the steel it lies on.</summary>
    public Length Radius => Length.FromMillimeters(this.radiusMm.Bare);

    /// <summary>How much the outside of the foil stretches.</summary>
    [BasisOf(typeof(FoilBendingFormulas), nameof(FoilBendingFormulas.Strain))]
    public EdgeStrain Strain => EdgeStrain.FromFraction(this.Solve(default(NoSteps)));

    /// <summary>The smallest radius that stretches the outside of a foil by no more than is allowed.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="allowed">More than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is allowed.</exception>
    [BasisOf(typeof(FoilBendingFormulas), nameof(FoilBendingFormulas.SmallestRadius))]
    public static Length SmallestRadius(Foil foil, EdgeStrain allowed)
    {
        ArgumentNullException.ThrowIfNull(foil);
        return Length.FromMillimeters(FoilBendingKernel.SmallestRadiusMm(
            foil.ThicknessMm, AcceptedRange.AboveUpTo(0, 1, string.Empty).Check(allowed.Fraction, nameof(allowed))));
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Bent foil");
    }

    /// <summary>Foil and radius in a few words.</summary>
    public override string ToString() => $"{this.Foil} on a radius of {MeasureText.Write(this.radiusMm.Bare, TradeUnit.Millimeter, 6)}";

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        FoilBendingKernel.Strain(this.Foil.ThicknessMm, this.radiusMm.Bare, steps);
}
