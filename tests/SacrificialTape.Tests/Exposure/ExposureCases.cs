using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests.Exposure;

/// <summary>Generators of sites and coupons.</summary>
public static class ExposureCases
{
    public static Arbitrary<SiteCase> Sites() => (
        from celsius in Gen.Choose(-171, 287)
        from percent in Gen.Choose(340, 930)
        from sulfur in Gen.Choose(7, 1504)
        from chloride in Gen.Choose(4, 7605)
        select new SiteCase(celsius / 10.0, percent / 10.0, sulfur / 10.0, chloride / 10.0)).ToArbitrary();

    public static Arbitrary<CouponCase> Coupons() => (
        from milligrams in Gen.Choose(1, 90_000)
        from area in Gen.Choose(10, 9000)
        from hours in Gen.Choose(24, 90_000)
        from density in Gen.Choose(60, 90)
        from ofGrams in Gen.Choose(1, 100)
        from ofArea in Gen.Choose(1, 100)
        select new CouponCase(milligrams / 1000.0, area / 10.0, hours, density / 10.0, ofGrams / 10_000.0, ofArea / 1000.0)).ToArbitrary();
}
