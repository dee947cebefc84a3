using FsCheck.Xunit;

namespace SacrificialTape.Tests.Exposure;

[Properties(Arbitrary = [typeof(ExposureCases)], MaxTest = 500)]
public sealed class Coupons
{
    [Property]
    public void Thickness_and_mass_are_one_loss_through_the_density(CouponCase given)
    {
        CouponLoss coupon = given.Make(0, 0);
        Near.Equal(coupon.MassRate.GramsPerSquareMeterYear, coupon.Rate.ToMassLoss(coupon.Density).GramsPerSquareMeterYear, 1e-14);

        // A plate of that area and mass has a thickness; over the years, that is the rate.
        double um = given.Grams / given.Density / given.SquareCm * 10_000;
        Near.Equal(um / (given.Hours / 8760), coupon.Rate.MicrometersPerYear, 1e-14);
    }

    [Property]
    public void The_unit_of_what_goes_in_does_not_matter(CouponCase given)
    {
        var other = new CouponLoss(
            Mass.FromMilligrams(given.Grams * 1000),
            Area.FromSquareInches(given.SquareCm / 6.4516),
            Duration.FromDays(given.Hours / 24),
            Density.FromKilogramsPerCubicMeter(given.Density * 1000));
        Near.Equal(given.Make(0, 0).Rate.MicrometersPerYear, other.Rate.MicrometersPerYear, 1e-12);
        Near.Equal(given.Make(0, 0).MassRate.GramsPerSquareMeterYear, other.MassRate.GramsPerSquareMeterYear, 1e-12);
    }

    [Property]
    public void Uncertainties_add_as_squares(CouponCase given)
    {
        double rate = given.Make(0, 0).Rate.MicrometersPerYear;
        double Of(double grams, double squareCm) => given.Make(grams, squareCm).StandardUncertainty!.Value.MicrometersPerYear;
        Near.Equal(rate * given.OfGrams / given.Grams, Of(given.OfGrams, 0), 1e-13);
        Near.Equal(rate * given.OfSquareCm / given.SquareCm, Of(0, given.OfSquareCm), 1e-13);
        double both = Of(given.OfGrams, given.OfSquareCm);
        Near.Equal(Math.Pow(Of(given.OfGrams, 0), 2) + Math.Pow(Of(0, given.OfSquareCm), 2), both * both, 1e-12);
        RateRange range = given.Make(given.OfGrams, given.OfSquareCm).Range;
        Near.Equal(rate + (2 * both), range.Highest.MicrometersPerYear, 1e-14);
        Near.Equal(Math.Max(0, rate - (2 * both)), range.Lowest.MicrometersPerYear, 1e-14);
    }

    [Fact]
    public void A_coupon_that_lost_nothing_still_has_an_uncertainty()
    {
        var coupon = new CouponLoss(
            Mass.Zero,
            Area.FromSquareCentimeters(100),
            Duration.FromYears365(1),
            Zinc.Density,
            new CouponUncertainty(Mass.FromMilligrams(1), Area.FromSquareCentimeters(1)));
        Assert.Equal(0, coupon.Range.Lowest.MicrometersPerYear);
        Near.Equal(2 * 0.001 / 7.14 / 100 * 10_000, coupon.Range.Highest.MicrometersPerYear, 1e-14);
    }

    [Fact]
    public void Without_uncertainty_the_range_is_one_rate()
    {
        var coupon = new CouponLoss(Mass.FromGrams(0.1), Area.FromSquareCentimeters(20), Duration.FromHours(720), Zinc.Density);
        Assert.Null(coupon.StandardUncertainty);
        Assert.Equal(new RateRange(coupon.Rate, coupon.Rate), coupon.Range);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Area area = Area.FromSquareCentimeters(20);
        var hours = Duration.FromHours(720);
        Errors.Refused(() => new CouponLoss(Mass.FromGrams(-1), area, hours, Zinc.Density), "massLost", "-1 g", "at least 0 g");
        Errors.Refused(() => new CouponLoss(Mass.FromGrams(1), Area.Zero, hours, Zinc.Density), "area", "0 cm2", "more than 0 cm2");
        Errors.Refused(() => new CouponLoss(Mass.FromGrams(1), area, Duration.Zero, Zinc.Density), "time", "0 h", "more than 0 h");
        Errors.Refused(() => new CouponLoss(Mass.FromGrams(1), area, hours, Density.Zero), "density", "0 g/cm3", "more than 0 g/cm3");
        Errors.Refused(() => new CouponUncertainty(Mass.FromGrams(-1), area), "massLost", "-1 g");
        Errors.Refused(static () => new CouponUncertainty(Mass.Zero, Area.FromSquareCentimeters(-1)), "area", "-1 cm2");
    }
}
