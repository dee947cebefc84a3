using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A flat end: a disc, with a straight flange or a rim if it has one.</summary>
public sealed record FlatHead : Head
{
    private FlatHead(double outsideDiameterMm, double straightFlangeMm)
        : base(outsideDiameterMm, straightFlangeMm)
    {
    }

    internal override string Form => "flat head";

    internal override double DepthMm => 0;

    internal override Meridian Meridian => Meridian.Head(this.OutsideDiameterMm, this.StraightFlangeMm, new MeridianLine(this.OutsideDiameterMm / 2, 1, this.OutsideDiameterMm / 2));

    /// <summary>A head measured on its outside.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="straightFlange">Length of the straight flange, or height of the rim; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FlatHead FromOutside(Length outsideDiameter, Length straightFlange) => new(
        FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter)),
        FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));

    internal override double DishSquareMeters<TSteps>(TSteps steps) => HeadKernel.DiscSquareMeters(this.OutsideDiameterMm, steps);
}
