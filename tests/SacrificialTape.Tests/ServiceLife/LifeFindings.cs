namespace SacrificialTape.Tests.ServiceLife;

public sealed class LifeFindings
{
    // Measured 1 to 2 um/a, 80 um of zinc counted: linear 40 to 80 years.
    private static readonly LifeEstimate Life = new(
        new Foil(Make.Mm(0.1)),
        1,
        ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(1), CorrosionRate.FromMicrometersPerYear(2), "a made-up coupon"),
        Utilisation.FromFraction(0.8),
        [LinearLoss.Law]);

    [Theory]
    [InlineData(39.9, null)]
    [InlineData(40, null)]
    [InlineData(40.1, RuleIds.LifeMayFallShort)]
    [InlineData(80, RuleIds.LifeMayFallShort)]
    [InlineData(80.1, RuleIds.LifeFallsShort)]
    [InlineData(double.PositiveInfinity, RuleIds.LifeFallsShort)]
    public void A_life_is_held_against_the_required_one(double required, string? rule)
    {
        Finding[] found = [.. Life.Judge(Lifetime.OfYears(required), RuleSet.Default, "A-1")];
        Assert.Equal(rule, found.Select(static one => one.Rule.Id).FirstOrDefault(static id => id is RuleIds.LifeMayFallShort or RuleIds.LifeFallsShort));
        Assert.Contains(found, static one => one.Rule.Id == RuleIds.NoPublishedLife);
        Assert.DoesNotContain(found, static one => one.Rule.Id == RuleIds.RecalledLifeValue);
        if (rule is not null && double.IsFinite(required))
        {
            Assert.Equal(new Measure(required, TradeUnit.Year), found[0].Limit);
        }
    }

    [Fact]
    public void A_life_on_recalled_numbers_says_so()
    {
        var life = new LifeEstimate(Life.Foil, 1, Life.Exposure, Life.Usable);
        Assert.Contains(life.Judge(Lifetime.OfYears(1), RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.RecalledLifeValue);
        var extreme = new LifeEstimate(Life.Foil, 1, ZincExposure.FromCategory(CorrosivityCategory.CX), Life.Usable, [LinearLoss.Law]);
        Assert.Contains(extreme.Judge(Lifetime.OfYears(1), RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.RecalledCategory);
    }
}
