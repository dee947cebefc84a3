using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A butt-weld pipe cap: a 2:1 ellipsoidal dish with a straight flange.</summary>
/// <remarks>
/// The outside is taken for the ellipsoid, a quarter of the outside diameter deep; what is left of the overall length is
/// straight. The standard's form is recalled as ellipsoidal, without the face: on thick caps the dish is a little deeper.
/// </remarks>
public sealed record Cap : Head
{
    private Cap(double outsideDiameterMm, double lengthMm, Basis? form = null)
        : base(outsideDiameterMm, lengthMm - (outsideDiameterMm / 4), form)
    {
    }

    private Cap(double outsideDiameterMm, StoredNumber straightFlangeMm)
        : base(outsideDiameterMm, straightFlangeMm.Bare)
    {
    }

    internal override string Form => "cap";

    internal override double DepthMm => this.OutsideDiameterMm / 4;

    internal override Meridian Meridian => Meridian.Head(this.OutsideDiameterMm, this.StraightFlangeMm, new MeridianEllipse(this.OutsideDiameterMm / 2, this.DepthMm, 0));

    /// <summary>A cap measured on its outside.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="overallLength">From the weld end to the top: at least a quarter of the diameter, at most 100 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Cap FromOutside(Length outsideDiameter, Length overallLength)
    {
        double diameter = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        return new(diameter, FittingRanges.Within(UnitConversions.Millimeters(overallLength), diameter / 4, 100_000, nameof(overallLength)));
    }

    /// <summary>A cap by its size, with the length of ASME B16.9 (recalled, check before use).</summary>
    /// <param name="size">Size of the pipe.</param>
    /// <exception cref="ArgumentException">The length of that size is not known here.</exception>
    public static Cap FromSize(PipeSize size)
    {
        double length = UnitConversions.Millimeters(FittingSizes.CapLength(size));
        return new(UnitConversions.Millimeters(size.OutsideDiameter), length, FittingSizes.CapBasis);
    }

    /// <summary>A cap by what it keeps, to the last bit.</summary>
    internal static Cap FromStraightFlange(Length outsideDiameter, Length straightFlange)
    {
        double diameter = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        return new(diameter, new StoredNumber(FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange))));
    }

    internal override double DishSquareMeters<TSteps>(TSteps steps) =>
        HeadKernel.SpheroidSquareMeters(this.OutsideDiameterMm, this.DepthMm, 0, steps);
}
