namespace SacrificialTape.Tests.Exposure;

/// <summary>A coupon with uncertainties, in g, cm2, h and g/cm3.</summary>
public sealed record CouponCase(double Grams, double SquareCm, double Hours, double Density, double OfGrams, double OfSquareCm)
{
    internal CouponLoss Make(double ofGrams, double ofSquareCm) => new(
        Mass.FromGrams(this.Grams),
        Area.FromSquareCentimeters(this.SquareCm),
        Duration.FromHours(this.Hours),
        UnitsNet.Density.FromGramsPerCubicCentimeter(this.Density),
        new CouponUncertainty(Mass.FromGrams(ofGrams), Area.FromSquareCentimeters(ofSquareCm)));
}
