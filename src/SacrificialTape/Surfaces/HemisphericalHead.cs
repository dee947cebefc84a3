using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A head in the form of half a sphere.</summary>
public sealed record HemisphericalHead : Head
{
    private HemisphericalHead(double outsideDiameterMm, double straightFlangeMm)
        : base(outsideDiameterMm, straightFlangeMm)
    {
    }

    internal override string Form => "hemispherical head";

    internal override double DepthMm => this.OutsideDiameterMm / 2;

    internal override Meridian Meridian => Meridian.Head(this.OutsideDiameterMm, this.StraightFlangeMm, new MeridianArc(0, this.OutsideDiameterMm / 2, Math.PI / 2, 0));

    /// <summary>A head measured on its outside.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static HemisphericalHead FromOutside(Length outsideDiameter, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter)),
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    /// <summary>A head dimensioned on its inside.</summary>
    /// <param name="insideDiameter">Inside diameter.</param>
    /// <param name="thickness">Of the plate.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static HemisphericalHead FromInside(Length insideDiameter, Length thickness, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(insideDiameter, nameof(insideDiameter)) + (2 * FittingRanges.ThicknessMm(thickness, nameof(thickness))),
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    internal override double DishSquareMeters<TSteps>(TSteps steps) =>
        HeadKernel.AsMeasured(HeadKernel.HemisphereSquareMeters(this.OutsideDiameterMm, steps), steps);
}
