using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.ServiceLife;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class HolidayLives
{
    private static readonly Utilisation Usable = Utilisation.FromFraction(0.8);

    [Property]
    public void Own_loss_and_demand_use_up_the_zinc_together(LossCase given)
    {
        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, new PowerLawLoss(TimeExponent.FromValue(given.Exponent)), PowerLawLoss.ZincMean })
        {
            HolidayLife life = Life(given, law, 0.03, 5);
            double years = life.Earliest.Duration.Years365;
            double own = law.Loss(CorrosionRate.FromMicrometersPerYear(given.Rate), Duration.FromYears365(years)).Micrometers;
            Near.Equal(80, own + (life.HighestDemandRate.MicrometersPerYear * years), 1e-12, law.Name);
            Assert.True(life.Earliest <= life.Latest);
        }
    }

    [Property]
    public void The_linear_law_has_a_closed_form(LossCase given)
    {
        HolidayLife life = Life(given, LinearLoss.Law, 0.03, 5);
        Near.Equal(80 / (given.Rate + life.HighestDemandRate.MicrometersPerYear), life.Earliest.Duration.Years365, 1e-12);

        // 0.03 A/m2 of steel, 5/7 of it for each area of zinc, against Faraday's law worked by hand.
        Near.Equal(0.03 * 5 / 7 * 65.38 / (2 * 96485.332) * 3600 * 8760 / 7140 * 1000, life.HighestDemandRate.MicrometersPerYear, 1e-12);
    }

    [Property]
    public void Life_falls_as_demand_bare_width_or_own_corrosion_rise(LossCase given, byte more)
    {
        double factor = 1 + ((more + 1) / 50.0);
        var law = new PowerLawLoss(TimeExponent.FromValue(given.Exponent));
        Lifetime plain = Life(given, law, 0.03, 5).Earliest;
        Assert.True(Life(given, law, 0.03 * factor, 5).Earliest < plain);
        Assert.True(Life(given, law, 0.03, 5 * factor).Earliest < plain);
        Assert.True(Life(given with { Rate = given.Rate * factor }, law, 0.03, 5).Earliest < plain);
        Assert.True(plain < law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(given.Rate), Length.FromMicrometers(80)));
    }

    [Property]
    public void Without_demand_the_law_alone_decides_and_without_own_corrosion_the_demand(LossCase given)
    {
        var law = new PowerLawLoss(TimeExponent.FromValue(given.Exponent));
        Near.Equal(
            law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(given.Rate), Length.FromMicrometers(80)).Duration.Years365,
            Life(given, law, 0, 5).Earliest.Duration.Years365,
            1e-12);
        HolidayLife fed = Life(given with { Rate = 0 }, law, 0.03, 5);
        Near.Equal(80 / fed.HighestDemandRate.MicrometersPerYear, fed.Earliest.Duration.Years365, 1e-14);
        Assert.True(Life(given with { Rate = 0 }, law, 0, 5).Earliest.IsUnlimited);
    }

    // Next to nothing taken by the steel: rounding must not leave the bracket of the root without a root.
    [Fact]
    public void A_demand_lost_in_rounding_leaves_the_law_alone()
    {
        for (double exponent = 0.02; exponent <= 1; exponent += 0.049)
        {
            var law = new PowerLawLoss(TimeExponent.FromValue(exponent));
            for (double rate = 0.01; rate < 100; rate *= 1.7)
            {
                double alone = law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(rate), Length.FromMicrometers(80)).Years;
                Near.Equal(alone, Life(new LossCase(rate, 1, 1), law, 1e-18 * rate / Math.Max(1, alone), 5).Earliest.Years, 1e-12);
            }
        }
    }

    [Fact]
    public void A_practical_capacity_counts_own_corrosion_by_itself()
    {
        // The same demand at 90 % of the theoretical capacity lasts 90 % as long as at the theoretical one without own corrosion.
        double theoretical = TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram;
        var tested = PracticalCapacity.FromTest(ElectrochemicalCapacity.FromAmpereHoursPerKilogram(0.9 * theoretical), "made up");
        HolidayLife practical = new(new Foil(Mm(0.1)), ZincFeed.BesideMargin(Mm(5), Mm(7)), Demand(0.03), new DemandAtPracticalCapacity(tested), Usable);
        HolidayLife apart = Life(new LossCase(0, 1, 1), LinearLoss.Law, 0.03, 5);
        Near.Equal(0.9, practical.Earliest.Duration.Years365 / apart.Earliest.Duration.Years365, 1e-12);
    }

    [Fact]
    public void Without_a_demand_zinc_lasts_for_ever_or_as_long_as_its_own_corrosion_lets_it()
    {
        HolidayLife practical = new(new Foil(Mm(0.1)), ZincFeed.BesideMargin(Mm(5), Mm(7)), Demand(0), new DemandAtPracticalCapacity(PracticalCapacity.IsoBuried), Usable);
        Assert.True(practical.Earliest.IsUnlimited);
        HolidayLife apart = Life(new LossCase(2, 1, 1), LinearLoss.Law, 0, 5);
        Near.Equal(Usable.Fraction * 100 / 2, apart.Earliest.Duration.Years365, 1e-13);
    }

    [Fact]
    public void Five_millimetres_of_bare_steel_end_a_thin_foil_in_a_few_years()
    {
        // C3, bare 5 mm beside 7 mm of zinc, 80 um foil: the rule of every tape end on bare steel rests on this.
        var life = new HolidayLife(
            new Foil(Mm(0.08)),
            ZincFeed.BesideMargin(Mm(5), Mm(7)),
            CurrentDemand.FromSteelCorrosion(CorrosivityCategory.C3),
            new OwnCorrosionAndDemand(TheoreticalCapacity.Zinc, ZincExposure.FromCategory(CorrosivityCategory.C3), LinearLoss.Law),
            Usable);
        Assert.InRange(life.Earliest.Duration.Years365, 1, 2);
        Assert.InRange(life.Latest.Duration.Years365, 2, 4);
    }

    [Fact]
    public void Findings_hold_the_life_against_the_required_one()
    {
        HolidayLife life = Life(new LossCase(2, 1, 1), LinearLoss.Law, 0.03, 5);
        Duration earliest = life.Earliest.Duration;
        string[] Found(HolidayLife one, Duration required) => [.. one.Judge(Lifetime.Of(required), RuleSet.Default, "A-1").Select(static f => f.Rule.Id)];
        string[] always = [RuleIds.OtherElectricalSystems, RuleIds.NoPublishedLife];
        Assert.Equal(always, Found(life, earliest));
        Assert.Equal([RuleIds.HolidayLifeMayFallShort, .. always], Found(life, earliest * 1.01));
        Assert.Equal([RuleIds.HolidayLifeFallsShort, .. always], Found(life, life.Latest.Duration * 1.01));
        HolidayLife cast = new(life.Foil, life.Feed, life.Demand, new DemandAtPracticalCapacity(PracticalCapacity.DnvSeawater), Usable);
        Assert.Equal([RuleIds.CastAlloyCapacity, RuleIds.RecalledCapacity, .. always], Found(cast, Duration.FromYears365(0.1)));
        HolidayLife recalled = new(
            life.Foil, life.Feed, life.Demand, new OwnCorrosionAndDemand(TheoreticalCapacity.Zinc, ZincExposure.FromCategory(CorrosivityCategory.CX), PowerLawLoss.ZincMean),
            Usable);
        Assert.Equal([RuleIds.RecalledCategory, RuleIds.RecalledLifeValue, .. always], Found(recalled, Duration.FromYears365(0.1)));
    }

    [Property]
    public void Mass_and_life_of_an_anode_are_inverse_in_both_forms(LossCase given)
    {
        var current = ElectricCurrent.FromAmperes(given.Rate);
        var years = Duration.FromYears365(given.Ratio);
        PracticalCapacity capacity = PracticalCapacity.IsoBuried;
        Mass mass = new AnodeMass(capacity, Usable, current, years).Mass;
        Near.Equal(given.Ratio, new AnodeLife(mass, capacity, Usable, current).Life.Duration.Years365, 1e-13);

        // The other form at the efficiency that this capacity is of the theoretical one.
        var efficiency = CurrentEfficiency.FromFraction(750 / TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram);
        AnodeConsumption consumption = TheoreticalCapacity.Zinc.Consumption;
        Near.Equal(mass.Kilograms, AnodeMass.ByConsumption(consumption, efficiency, Usable, current, years).Mass.Kilograms, 1e-12);
        Near.Equal(given.Ratio, AnodeLife.ByConsumption(mass, consumption, efficiency, Usable, current).Life.Duration.Years365, 1e-12);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new AnodeMass(PracticalCapacity.IsoBuried, Usable, ElectricCurrent.Zero, Duration.FromYears365(1)), "mean", "0 A", "more than 0");
        Errors.Refused(static () => new AnodeLife(Mass.Zero, PracticalCapacity.IsoBuried, Usable, ElectricCurrent.FromAmperes(1)), "mass", "0 kg", "more than 0");
        Errors.Refused(static () => ZincFeed.BesideMargin(Length.Zero, Mm(7)), "bareMargin", "0 mm");
        Errors.Refused(static () => new TapeEnd(Mm(-1), Mm(7)), "bareMargin", "-1 mm");
        Errors.Refused(static () => CurrentEfficiency.FromFraction(0), "value", "more than 0 and at most 1");
    }

    private static CurrentDemand Demand(double amperes) => CurrentDemand.FromMeasurement(
        ElectricCurrentDensity.FromAmperesPerSquareMeter(amperes / 2), ElectricCurrentDensity.FromAmperesPerSquareMeter(amperes), "made up");

    private static HolidayLife Life(LossCase given, ILossLaw law, double demand, double bareMm) => new(
        new Foil(Mm(0.1)),
        ZincFeed.BesideMargin(Mm(bareMm), Mm(7)),
        Demand(demand),
        new OwnCorrosionAndDemand(
            TheoreticalCapacity.Zinc,
            ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(given.Rate / 2), CorrosionRate.FromMicrometersPerYear(given.Rate), "made up"),
            law),
        Usable);
}
