using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A head in the form of half a spheroid, of any depth; half the radius deep it is the 2:1 head.</summary>
/// <remarks>
/// Only one face of a plate of even thickness can be an ellipsoid. <see cref="FromOutside"/> takes the outside for one,
/// <see cref="FromInside"/> the inside, and the outside is then the surface one plate thickness away from it.
/// </remarks>
public sealed record EllipsoidalHead : Head
{
    private readonly StoredNumber faceDiameterMm;
    private readonly StoredNumber faceDepthMm;
    private readonly StoredNumber thicknessMm;

    private EllipsoidalHead(double faceDiameterMm, double faceDepthMm, double thicknessMm, double straightFlangeMm)
        : base(faceDiameterMm + (2 * thicknessMm), straightFlangeMm)
    {
        this.faceDiameterMm = new StoredNumber(faceDiameterMm);
        this.faceDepthMm = new StoredNumber(faceDepthMm);
        this.thicknessMm = new StoredNumber(thicknessMm);
    }

    internal override string Form => "ellipsoidal head";

    internal double FaceDiameterMm => this.faceDiameterMm.Bare;

    internal double FaceDepthMm => this.faceDepthMm.Bare;

    /// <summary>Thickness of the plate where the inside was measured; 0 where the outside was.</summary>
    internal double PlateMm => this.thicknessMm.Bare;

    internal override double DepthMm => this.faceDepthMm.Bare + this.thicknessMm.Bare;

    internal override Meridian Meridian => Meridian.Head(
        this.OutsideDiameterMm, this.StraightFlangeMm, new MeridianEllipse(this.faceDiameterMm.Bare / 2, this.faceDepthMm.Bare, this.thicknessMm.Bare));

    /// <summary>A head whose outside is the ellipsoid.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="outsideDepth">Depth on the outside, without the straight flange: 1 mm to 1000 m.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static EllipsoidalHead FromOutside(Length outsideDiameter, Length outsideDepth, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter)),
        FittingRanges.ExtentMm(outsideDepth, nameof(outsideDepth)),
        0,
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    /// <summary>A head whose inside is the ellipsoid.</summary>
    /// <param name="insideDiameter">Inside diameter.</param>
    /// <param name="insideDepth">Depth on the inside, without the straight flange: 1 mm to 1000 m.</param>
    /// <param name="thickness">Of the plate.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static EllipsoidalHead FromInside(Length insideDiameter, Length insideDepth, Length thickness, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(insideDiameter, nameof(insideDiameter)),
        FittingRanges.ExtentMm(insideDepth, nameof(insideDepth)),
        FittingRanges.ThicknessMm(thickness, nameof(thickness)),
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    /// <summary>A 2:1 head whose outside is the ellipsoid: a quarter of the outside diameter deep.</summary>
    /// <param name="outsideDiameter">Outside diameter, at least 4 mm.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static EllipsoidalHead TwoToOneFromOutside(Length outsideDiameter, Length straightFlange) =>
        FromOutside(outsideDiameter, Quarter(outsideDiameter, nameof(outsideDiameter)), straightFlange);

    /// <summary>A 2:1 head whose inside is the ellipsoid: a quarter of the inside diameter deep.</summary>
    /// <param name="insideDiameter">Inside diameter, at least 4 mm.</param>
    /// <param name="thickness">Of the plate.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static EllipsoidalHead TwoToOneFromInside(Length insideDiameter, Length thickness, Length straightFlange) =>
        FromInside(insideDiameter, Quarter(insideDiameter, nameof(insideDiameter)), thickness, straightFlange);

    internal override double DishSquareMeters<TSteps>(TSteps steps) => HeadKernel.SpheroidSquareMeters(
        this.faceDiameterMm.Bare, this.faceDepthMm.Bare, this.thicknessMm.Bare, steps);

    private static Length Quarter(Length diameter, string parameter) => Length.FromMillimeters(
        FittingRanges.Within(UnitConversions.Millimeters(diameter), 4, 100_000, parameter) / 4);
}
