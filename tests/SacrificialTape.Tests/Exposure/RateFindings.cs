namespace SacrificialTape.Tests.Exposure;

public sealed class RateFindings
{
    private static readonly CouponLoss Coupon = new(
        Mass.FromGrams(0.1), Area.FromSquareCentimeters(100), Duration.FromYears365(1), Zinc.Density);

    [Fact]
    public void A_category_or_a_year_of_coupons_needs_no_remark()
    {
        Assert.Empty(FirstYearRate.FromCategory(Metal.Zinc, CorrosivityCategory.C4).Judge(RuleSet.Default, "A-1"));
        Assert.Empty(FirstYearRate.FromCategory(Metal.CarbonSteel, CorrosivityCategory.CX).Judge(RuleSet.Default, "A-1"));
        Assert.Empty(FirstYearRate.From(Metal.Zinc, Coupon, "invented").Judge(RuleSet.Default, "A-1"));
    }

    [Theory]
    [InlineData(0.89, true)]
    [InlineData(0.9, false)]
    [InlineData(1.1, false)]
    [InlineData(1.11, true)]
    [InlineData(20, true)]
    public void Other_than_a_year_is_not_the_first_year(double years, bool said)
    {
        var time = Duration.FromYears365(years);
        FirstYearRate[] rates =
        [
            FirstYearRate.From(Metal.Zinc, new CouponLoss(Coupon.MassLost, Coupon.Area, time, Coupon.Density), "invented"),
            FirstYearRate.FromThicknessLoss(Metal.CarbonSteel, Length.FromMicrometers(12), time, "invented"),
        ];
        Assert.All(rates, rate => Assert.Equal(said, Has(rate, RuleIds.FirstYearTolerance)));
        RuleSet strict = RuleSet.Default.With("strict", "1", RuleSet.Default[RuleIds.FirstYearTolerance]
            .WithLimit(new Measure(0.01, TradeUnit.Year), Basis.OwnExperience("invented")));
        Assert.All(rates, rate => Assert.Contains(rate.Judge(strict, "A-1"), static one => one.Rule.Id == RuleIds.FirstYearTolerance));
    }

    [Fact]
    public void What_was_recalled_or_is_from_elsewhere_says_so()
    {
        var estimate = new DoseResponse(Metal.Zinc, SiteCase.Of(10, 75, 10, 3));
        Assert.True(Has(FirstYearRate.From(estimate), RuleIds.RecalledRate));
        Assert.True(Has(FirstYearRate.From(new DoseResponse(Metal.CarbonSteel, estimate.Atmosphere)), RuleIds.RecalledRate));
        Assert.False(Has(FirstYearRate.FromCategory(Metal.Zinc, CorrosivityCategory.C3), RuleIds.RecalledRate));
        Assert.True(Has(FirstYearRate.FromCategory(Metal.Zinc, CorrosivityCategory.CX), RuleIds.RecalledCategory));
        foreach (WaterKind water in Enum.GetValues<WaterKind>())
        {
            FirstYearRate rate = FirstYearRate.OfZincIn(water);
            Assert.True(Has(rate, RuleIds.ImmersedZinc));
            Assert.Equal(water == WaterKind.TemperateSea, Has(rate, RuleIds.RecalledRate));
            Assert.False(Has(rate, RuleIds.RateAboveCategories));
        }

        Assert.True(Has(FirstYearRate.InReinforcedSoil(Metal.Zinc), RuleIds.BuriedMetal));
        Assert.False(Has(FirstYearRate.InReinforcedSoil(Metal.Zinc), RuleIds.RecalledRate));
        Assert.True(Has(FirstYearRate.InReinforcedSoil(Metal.CarbonSteel), RuleIds.RecalledRate));
        Assert.True(Has(FirstYearRate.FromMeasurement(
            Metal.Zinc, CorrosionRate.FromMicrometersPerYear(1), CorrosionRate.FromMicrometersPerYear(25.1), "invented"), RuleIds.RateAboveCategories));
    }

    [Fact]
    public void A_coupon_is_classed_by_mass_and_a_gauge_by_thickness()
    {
        // 179.5 g/m2 is within CX by mass (180), though 25.14 um is above it by thickness (25).
        var coupon = new CouponLoss(Mass.FromGrams(1.795), Area.FromSquareCentimeters(100), Duration.FromYears365(1), Zinc.Density);
        Assert.False(Has(FirstYearRate.From(Metal.Zinc, coupon, "invented"), RuleIds.RateAboveCategories));
        Assert.True(Has(FirstYearRate.FromThicknessLoss(
            Metal.Zinc, Length.FromMicrometers(coupon.Rate.MicrometersPerYear), Duration.FromYears365(1), "invented"), RuleIds.RateAboveCategories));
    }

    [Fact]
    public void A_life_repeats_what_its_rate_has_to_say()
    {
        var exposure = ZincExposure.From(FirstYearRate.OfZincIn(WaterKind.TemperateSea));
        var life = new LifeEstimate(new Foil(Make.Mm(0.1)), 1, exposure, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        string[] said = [.. life.Judge(Lifetime.Of(Duration.FromYears365(1)), RuleSet.Default, "A-1").Select(static one => one.Rule.Id)];
        Assert.Equal([RuleIds.RecalledRate, RuleIds.ImmersedZinc, RuleIds.NoPublishedLife], said);
        Assert.Equal("4 a to 8 a", life.ToString());
    }

    [Fact]
    public void An_exposure_of_zinc_takes_no_rate_of_steel()
    {
        Assert.Contains("carbon steel", Assert.Throws<ArgumentException>(
            static () => ZincExposure.From(FirstYearRate.FromCategory(Metal.CarbonSteel, CorrosivityCategory.C3))).Message, StringComparison.Ordinal);
        Errors.Refused(static () => FirstYearRate.FromCategory((Metal)5, CorrosivityCategory.C3), "metal");
        Errors.Refused(static () => FirstYearRate.OfZincIn((WaterKind)9), "water");
        Errors.Refused(static () => FirstYearRate.InReinforcedSoil((Metal)9), "metal");
        Errors.Refused(static () => FirstYearRate.From((Metal)9, Coupon, "invented"), "metal");
        Errors.Refused(static () => FirstYearRate.FromThicknessLoss(Metal.Zinc, Length.Zero, Duration.Zero, "invented"), "time");
        Assert.Throws<ArgumentException>(static () => FirstYearRate.From(Metal.Zinc, Coupon, " "));
    }

    [Fact]
    public void Rates_of_the_same_making_are_equal()
    {
        static FirstYearRate Make() => FirstYearRate.From(new DoseResponse(Metal.Zinc, SiteCase.Of(-30, 75, 10, 3), BeyondFit.AcceptWithFinding));
        Assert.Equal(Make(), Make());
        Assert.Equal(Make().GetHashCode(), Make().GetHashCode());
        Assert.Equal(ZincExposure.From(Make()), ZincExposure.From(Make()));
        Assert.Equal(ZincExposure.FromCategory(CorrosivityCategory.C3), ZincExposure.From(FirstYearRate.FromCategory(Metal.Zinc, CorrosivityCategory.C3)));
    }

    private static bool Has(FirstYearRate rate, string rule) => rate.Judge(RuleSet.Default, "A-1").Any(one => one.Rule.Id == rule);
}
