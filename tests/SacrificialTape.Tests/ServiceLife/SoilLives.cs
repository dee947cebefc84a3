namespace SacrificialTape.Tests.ServiceLife;

public sealed class SoilLives
{
    private static readonly Foil Foil = new(Length.FromMicrometers(200), Length.FromMicrometers(10));

    [Fact]
    public void The_power_law_in_soil_makes_a_life_and_says_what_it_rests_on()
    {
        ZincExposure soil = ZincExposure.From(FirstYearRate.InSoilByPowerLaw(Metal.Zinc));
        var life = new LifeEstimate(Foil, 1, soil, Utilisation.FromFraction(0.8), LawsByMedium.For(soil));

        // 0.8 x 190 = 152 um; (152/25)^(1/0.65) = 16.07 a, before the tangent at 20.
        Near.Equal(Math.Pow(152 / 25.0, 1 / 0.65), life.Earliest.Duration.Years365, 1e-12);
        Near.Equal(160, LawsByMedium.For(soil)[0].Loss(soil.FirstYear.Lowest, Duration.FromYears365(life.Latest.Duration.Years365)).Micrometers, 1e-12);
        string[] said = [.. life.Judge(Lifetime.Of(Duration.FromYears365(10)), RuleSet.Default, "culvert").Select(static one => one.Rule.Id)];
        Assert.Equal(
            [RuleIds.RecalledRate, RuleIds.BuriedMetal, RuleIds.SoilConstants, RuleIds.SoilKind, RuleIds.RecalledLifeValue, RuleIds.NoPublishedLife], said);
    }

    [Fact]
    public void Each_medium_has_the_laws_that_hold_in_it()
    {
        Assert.Equal([LinearLoss.Law, PowerLawLoss.ZincMean], LawsByMedium.For(ZincExposure.FromCategory(CorrosivityCategory.C3)));
        Assert.Equal([LinearLoss.Law, PowerLawLoss.ZincMean], LawsByMedium.For(ZincExposure.From(FirstYearRate.Indoors(Metal.Zinc, IndoorCategory.IC2))));
        Assert.Equal([LinearLoss.Law], LawsByMedium.For(ZincExposure.From(FirstYearRate.OfZincIn(WaterKind.HardFresh))));
        Assert.Equal([PiecewiseLoss.ZincInReinforcedSoil], LawsByMedium.For(ZincExposure.From(FirstYearRate.InReinforcedSoil(Metal.Zinc))));
        Assert.Equal([PowerLawLoss.ZincInSoil], LawsByMedium.For(ZincExposure.From(FirstYearRate.InSoilByPowerLaw(Metal.Zinc))));
        Assert.Null(FirstYearRate.FromCategory(Metal.Zinc, CorrosivityCategory.C3).Soil);
    }

    [Fact]
    public void A_job_takes_the_laws_of_the_medium()
    {
        var strip = new StripStock(new Tape(Foil, new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(100), Length.FromMeters(50));
        ILay lay = new SpiralLay(Make.Pipe(), strip, SpiralSetting.FromTrueLap(Length.FromMillimeters(15)), SpiralEnds.TrimmedFlush, Make.Choices());
        ZincExposure[] places =
        [
            ZincExposure.From(FirstYearRate.OfZincIn(WaterKind.SoftFresh)), ZincExposure.From(FirstYearRate.InReinforcedSoil(Metal.Zinc)),
            ZincExposure.From(FirstYearRate.InSoilByPowerLaw(Metal.Zinc)), ZincExposure.FromCategory(CorrosivityCategory.C4),
        ];
        foreach (ZincExposure place in places)
        {
            var job = new Job("test", [new SurveyLine("A-1", lay, place, Lifetime.Of(Duration.FromYears365(10)))], Make.TakeOff());
            Assert.Equal(LawsByMedium.For(place), job.Estimate().Lines[0].Life.ByLaw.Select(static one => one.Law));
        }
    }
}
