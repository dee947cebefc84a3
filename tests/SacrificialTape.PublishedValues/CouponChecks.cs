using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Rates from coupons by hand, and by the constants for other units.</summary>
internal static class CouponChecks
{
    internal static CheckGroup Group => new(
        "ASTM G1: rate from the mass that a coupon lost",
        "The constants are recalled: 8.76e4 for mm/a is 8760 h by 10 mm in a cm, 3.45e6 for mil/a is the same by 39.37 mil in a mm, rounded. The numbers are worked out by hand.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        CouponLoss zinc = Coupon(0.1, 20, 720, 7.13);
        CouponLoss steel = Coupon(0.1234, 30, 1000, 7.86);
        yield return Case("zinc", "zinc, 0.1 g from 20 cm2 in 720 h, 7.13 g/cm3", 0.08532, 5e-6, "mm/a",
            Evidence.FirstPrinciples("8.76e4 x 0.1 / (20 x 720 x 7.13) = 8760 / 102 672", References.CouponMassLoss),
            () => zinc.Rate.MicrometersPerYear / 1000);
        yield return Case("steel", "carbon steel, 0.1234 g from 30 cm2 in 1000 h, 7.86 g/cm3", 0.04584, 5e-6, "mm/a",
            Evidence.FirstPrinciples("8.76e4 x 0.1234 / (30 x 1000 x 7.86) = 10 809.84 / 235 800", References.CouponMassLoss),
            () => steel.Rate.MicrometersPerYear / 1000);
        yield return Case("zinc-mils", "the same zinc by the constant for mils", 3.360, 0.005, "mil/a",
            Evidence.From(References.CouponMassLoss, "3.45e6 x 0.1 / 102 672; the constant has three digits"),
            () => zinc.Rate.MicrometersPerYear / 25.4);
        yield return Case("zinc-mass", "the same zinc as mass", 608.333, 5e-4, "g/(m2.a)",
            Evidence.FirstPrinciples("0.1 g / 0.002 m2 = 50 g/m2 in 720 h; x 8760 / 720"),
            () => zinc.MassRate.GramsPerSquareMeterYear);
        yield return Case("mdd", "1 mg from 1 dm2 of zinc in a day, 7.14 g/cm3", 5.112, 5e-4, "um/a",
            Evidence.FirstPrinciples("0.1 g/m2 a day is 36.5 g/m2 a year; 36.5 / 7.14"),
            static () => Coupon(0.001, 100, 24, 7.14).Rate.MicrometersPerYear);
        yield return Case("uncertainty", "standard uncertainty of that zinc, 0.4 mg and 0.06 cm2", 0.4266, 5e-5, "um/a",
            Evidence.FirstPrinciples("0.4 % and 0.3 % make 0.5 % (3-4-5); 85.32 x 0.005"),
            static () => new CouponLoss(
                Mass.FromGrams(0.1),
                Area.FromSquareCentimeters(20),
                Duration.FromHours(720),
                Density.FromGramsPerCubicCentimeter(7.13),
                new CouponUncertainty(Mass.FromMilligrams(0.4), Area.FromSquareCentimeters(0.06))).StandardUncertainty!.Value.MicrometersPerYear);
    }

    internal static CouponLoss Coupon(double grams, double squareCm, double hours, double density) => new(
        Mass.FromGrams(grams),
        Area.FromSquareCentimeters(squareCm),
        Duration.FromHours(hours),
        Density.FromGramsPerCubicCentimeter(density));

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "coupon/" + id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
