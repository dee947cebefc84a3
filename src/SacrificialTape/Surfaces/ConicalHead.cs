using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A pointed conical head. One cut off at its tip is a <see cref="ConcentricReducer"/>.</summary>
public sealed record ConicalHead : Head
{
    private readonly StoredNumber depthMm;

    private ConicalHead(double outsideDiameterMm, double depthMm, double straightFlangeMm)
        : base(outsideDiameterMm, straightFlangeMm) =>
        this.depthMm = new StoredNumber(depthMm);

    internal override string Form => "conical head";

    internal override double DepthMm => this.depthMm.Bare;

    internal override Meridian Meridian => Meridian.Head(
        this.OutsideDiameterMm, this.StraightFlangeMm, new MeridianLine(this.OutsideDiameterMm / 2, this.OutsideDiameterMm / 2 / this.SlantMm, this.SlantMm));

    private double SlantMm => double.Hypot(this.DepthMm, this.OutsideDiameterMm / 2);

    /// <summary>A head measured on its outside.</summary>
    /// <param name="outsideDiameter">Outside diameter at the base.</param>
    /// <param name="outsideDepth">From the base to the tip, along the axis: 1 mm to 1000 m.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ConicalHead FromOutside(Length outsideDiameter, Length outsideDepth, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter)),
        FittingRanges.ExtentMm(outsideDepth, nameof(outsideDepth)),
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    internal override double DishSquareMeters<TSteps>(TSteps steps) =>
        HeadKernel.ConeSquareMeters(this.OutsideDiameterMm, this.depthMm.Bare, steps);
}
