using FsCheck.Xunit;
using MathNet.Numerics.Distributions;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>Laws of lives with their uncertainty, and what they come to by other ways.</summary>
[Properties(Arbitrary = [typeof(SpreadCases)], MaxTest = 60)]
public sealed class LifeSpreads
{
    [Property]
    public void Percentiles_are_ordered_and_turn_into_chances(SpreadCase given)
    {
        LifeDistribution life = given.Life;
        double before = double.PositiveInfinity;
        foreach (double confidence in new[] { 0.001, 0.05, 0.5, given.Confidence, 0.95, 0.999 }.Order())
        {
            Lifetime reached = life.ReachedWith(Probability.FromFraction(confidence));
            Assert.True(reached.Duration.Years365 <= before);
            before = reached.Duration.Years365;
            Near.Equal(confidence, life.ChanceOf(reached).Fraction, 1e-9);
            Near.Equal(before, life.Percentile(Probability.FromFraction(1 - confidence)).Duration.Years365, 1e-9);
        }
    }

    [Property]
    public void A_longer_life_is_never_likelier(SpreadCase given)
    {
        LifeDistribution life = given.Life;
        double before = 1;
        foreach (double years in new[] { 0, 0.1, 1, 5, 19.9, 20, 20.1, 50, 200, 2000 })
        {
            double chance = life.ChanceOf(Years(years)).Fraction;
            Assert.InRange(chance, 0, before + 1e-14);
            before = chance;
        }

        Assert.Equal(0, life.ChanceOf(Lifetime.Unlimited).Fraction);
    }

    [Property]
    public void Life_falls_as_the_rate_rises(SpreadCase given)
    {
        var faster = new LifeDistribution(given.Foil, given.Layers, given.With(SpreadCase.Of(given.Median * 1.2, given.Sigma)));
        Assert.True(faster.ReachedWith(given.Sure) < given.Life.ReachedWith(given.Sure));
    }

    [Property]
    public void A_further_layer_never_shortens_any_percentile(SpreadCase given)
    {
        var more = new LifeDistribution(given.Foil, given.Layers + 1, given.Uncertainty);
        foreach (double confidence in new[] { 0.01, 0.5, 0.99, given.Confidence })
        {
            Probability sure = Probability.FromFraction(confidence);
            double one = new LifeDistribution(given.Foil, 1, given.Uncertainty).ReachedWith(sure).Duration.Years365;
            Assert.True(more.ReachedWith(sure) > given.Life.ReachedWith(sure));
            Near.Equal((given.Layers + 1) * one, more.ReachedWith(sure).Duration.Years365, 1e-9);
        }
    }

    [Property]
    public void Units_do_not_matter(SpreadCase given)
    {
        var inches = new Foil(Length.FromInches(given.FoilUm / 25400), Length.FromInches(given.FoilUm * given.ToleranceShare / 25400));
        UncertainRate mils = UncertainRate.Of(
            new LogNormalRate(CorrosionRate.FromMilsPerYear(given.Median / 25.4), LogSpread.FromValue(given.Sigma)), Basis.OwnExperience("made up"));
        Near.Equal(
            given.Life.ReachedWith(given.Sure).Duration.Years365,
            new LifeDistribution(inches, given.Layers, given.With(mils)).ReachedWith(given.Sure).Duration.Years365,
            1e-9);
        double doubled = new LifeDistribution(
            new Foil(Length.FromMicrometers(2 * given.FoilUm), Length.FromMicrometers(2 * given.FoilUm * given.ToleranceShare)),
            given.Layers,
            given.With(SpreadCase.Of(2 * given.Median, given.Sigma))).ReachedWith(given.Sure).Duration.Years365;
        Near.Equal(given.Life.ReachedWith(given.Sure).Duration.Years365, doubled, 1e-9);
    }

    [Property]
    public void A_log_normal_rate_alone_makes_a_log_normal_life(SpreadCase given)
    {
        foreach (double exponent in new[] { 1.0, given.Exponent })
        {
            LossGrowth growth = exponent == 1
                ? LossGrowth.Linear
                : LossGrowth.PowerLaw(UncertainExponent.Exactly(TimeExponent.FromValue(exponent), Basis.OwnExperience("made up")), AfterTwentyYears.Power);
            var life = new LifeDistribution(
                new Foil(Length.FromMicrometers(given.FoilUm)),
                given.Layers,
                new LifeUncertainty(given.Rate, growth, UncertainUtilisation.Exactly(Utilisation.FromFraction(given.Usable)), ToleranceShape.Uniform));
            double mean = Math.Log(given.Layers) + (Math.Log(given.Usable * given.FoilUm / given.Median) / exponent);
            var oracle = new LogNormal(mean, given.Sigma / exponent);
            Near.Equal(oracle.InverseCumulativeDistribution(1 - given.Confidence), life.ReachedWith(given.Sure).Duration.Years365, 1e-9);
            double years = oracle.Median * (0.5 + given.Confidence);
            Near.Equal(1 - oracle.CumulativeDistribution(years), life.ChanceOf(Years(years)).Fraction, 1e-9, absolute: 1e-12);
            Near.Equal(oracle.Median, life.LogNormal!.Value.Median.Duration.Years365, 1e-12);
            Near.Equal(given.Sigma / exponent, life.LogNormal.Value.Spread.Value, 1e-12);
        }
    }

    // ln(u f) - ln r - b ln t is normal when rate and exponent are, at any one time.
    [Property]
    public void A_normal_exponent_without_tangent_has_a_closed_chance(SpreadCase given)
    {
        var exponent = new UncertainExponent(TimeExponent.FromValue(given.Exponent), given.Error, Basis.OwnExperience("made up"));
        var life = new LifeDistribution(
            new Foil(Length.FromMicrometers(given.FoilUm)),
            given.Layers,
            new LifeUncertainty(
                given.Rate, LossGrowth.PowerLaw(exponent, AfterTwentyYears.Power), UncertainUtilisation.Exactly(Utilisation.FromFraction(given.Usable)), ToleranceShape.Uniform));
        foreach (double years in new[] { 0.3, 1, 7, 30, 120 })
        {
            double log = Math.Log(years / given.Layers);
            double away = Math.Sqrt((given.Sigma * given.Sigma) + (given.Error * given.Error * log * log));
            double expected = Normal.CDF(0, 1, (Math.Log(given.Usable * given.FoilUm / given.Median) - (given.Exponent * log)) / away);
            Near.Equal(expected, life.ChanceOf(Years(years)).Fraction, 0, absolute: 1e-10);
        }
    }

    // E N((ln f - y)/s) over an even f has a closed form: partial means of a log-normal.
    [Property]
    public void An_even_thickness_has_a_closed_chance(SpreadCase given)
    {
        if (given.ToleranceShare < 0.02)
        {
            return; // the closed form loses its digits
        }

        var life = new LifeDistribution(
            given.Foil, 1, new LifeUncertainty(given.Rate, LossGrowth.Linear, UncertainUtilisation.Exactly(Utilisation.FromFraction(given.Usable)), ToleranceShape.Uniform));
        double years = given.FoilUm * given.Usable / given.Median * (0.6 + (0.8 * given.Confidence));
        double y = Math.Log(years * given.Median / given.Usable);
        double s = given.Sigma;
        double Primitive(double f) => (f * Normal.CDF(0, 1, (Math.Log(f) - y) / s))
            - (Math.Exp(y + (s * s / 2)) * Normal.CDF(0, 1, (Math.Log(f) - y - (s * s)) / s));
        double low = given.FoilUm * (1 - given.ToleranceShare);
        double high = given.FoilUm * (1 + given.ToleranceShare);
        Near.Equal((Primitive(high) - Primitive(low)) / (high - low), life.ChanceOf(Years(years)).Fraction, 0, absolute: 1e-10);
    }

    [Fact]
    public void A_large_quasi_random_sample_agrees()
    {
        var given = new SpreadCase(1.4, 0.405, 100, 0.15, 0.75, 0.2, 0.813, 0.03, 2, 0.9, 7);
        LifeDistribution life = given.Life;
        Assert.Equal(AfterTwentyYears.Tangent, life.Uncertainty.Growth.After);
        const int Count = 200_000;
        double[] lives = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            double rate = 1.4 * Math.Exp(0.405 * Normal.InvCDF(0, 1, Halton(i + 1, 2)));
            double exponent = 0.813 + (0.03 * Normal.InvCDF(0, 1, Halton(i + 1, 3)));
            double foil = Triangular(85, 100, 115, Halton(i + 1, 5));
            double usable = Triangular(0.6, 0.75, 0.9, Halton(i + 1, 7));
            double ratio = foil * usable / rate;
            double knee = Math.Pow(20, exponent);
            lives[i] = 2 * (ratio <= knee ? Math.Pow(ratio, 1 / exponent) : 20 + ((ratio - knee) * 20 / (exponent * knee)));
        }

        Array.Sort(lives);
        foreach (double confidence in new[] { 0.99, 0.9, 0.5, 0.1 })
        {
            double sampled = lives[(int)(Count * (1 - confidence))];
            Near.Equal(sampled, life.ReachedWith(Probability.FromFraction(confidence)).Duration.Years365, 0.002);
            Near.Equal(confidence, life.ChanceOf(Years(sampled)).Fraction, 0, absolute: 0.001);
        }
    }

    [Property]
    public void Designs_turn_lives_round(SpreadCase given)
    {
        Lifetime reached = given.Life.ReachedWith(given.Sure);
        var design = new LifeDesign(given.Uncertainty, reached, given.Sure);
        Length thickness = design.LeastThickness(given.Layers, given.Foil.Tolerance)!.Value;
        Near.Equal(given.FoilUm, thickness.Micrometers, 1e-8);
        Assert.Equal(given.Layers, design.LeastLayers(given.Foil));
        Assert.Equal(given.Layers + 1, new LifeDesign(given.Uncertainty, Years(reached.Duration.Years365 * 1.001), given.Sure).LeastLayers(given.Foil));
        Near.Equal(
            reached.Duration.Years365 + design.OneLayer(given.Foil).Duration.Years365,
            new LifeDistribution(given.Foil, given.Layers + 1, given.Uncertainty).ReachedWith(given.Sure).Duration.Years365,
            1e-9);
        var thinner = new Foil(given.Foil.Thickness * 0.9, given.Foil.Tolerance * 0.9);
        var thicker = new Foil(given.Foil.Thickness * 1.2, given.Foil.Tolerance);
        Assert.Equal(given.Foil, design.ThinnestOf([thicker, given.Foil, thinner], given.Layers));
        Assert.Null(design.ThinnestOf([thinner], given.Layers));
    }

    [Property(MaxTest = 20)]
    public void Plans_begin_full_and_end_with_the_life(SpreadCase given)
    {
        var plan = new LifePlan(given.Life, given.Sure);
        double end = given.Life.ReachedWith(given.Sure).Duration.Years365;
        Near.Equal(end, plan.Until(ZincShare.FromFraction(0)).Duration.Years365, 1e-9);
        Assert.Equal(0, plan.Until(ZincShare.FromFraction(1)).Duration.Years365);
        double before = 1;
        foreach (ZincLeftPoint point in plan.Curve([Duration.FromYears365(0), Duration.FromYears365(end / 3), Duration.FromYears365(end * 0.8), Duration.FromYears365(end * 1.1)]))
        {
            Assert.InRange(point.Left.Fraction, 0, before);
            before = point.Left.Fraction;
            if (before is > 0.001 and < 0.999)
            {
                Near.Equal(point.Time.Years365, plan.Until(point.Left).Duration.Years365, 1e-6);
            }
        }

        Assert.Equal(0, before);
        ValueList<ZincShare> shares = [ZincShare.FromFraction(0.9), ZincShare.FromFraction(0.95)];
        if (plan.Until(shares[0]).Duration.Years365 > 7900)
        {
            // The calendar ends with the year 9999.
            Assert.Throws<ArgumentOutOfRangeException>(() => plan.Inspections(new DateOnly(2100, 1, 1), shares));
            return;
        }

        ValueList<DateOnly> days = plan.Inspections(new DateOnly(2030, 1, 1), shares);
        double years = plan.Until(ZincShare.FromFraction(0.95)).Duration.Years365;
        Assert.Equal(new DateOnly(2030, 1, 1).AddDays((int)Math.Floor((years * 365) + 1e-6)), days[0]);
        Assert.True(days[1] >= days[0]);
    }

    [Fact]
    public void Layers_that_begin_anew_are_used_one_after_the_other()
    {
        // 100 um, all usable, median rate 2: a layer lasts (50)^(1/0.5) = 2500 a along the power; half of the second a quarter of that.
        var growth = LossGrowth.PowerLaw(UncertainExponent.Exactly(TimeExponent.FromValue(0.5), Basis.OwnExperience("made up")), AfterTwentyYears.Power);
        var life = new LifeDistribution(
            new Foil(Length.FromMicrometers(100)), 2, new LifeUncertainty(SpreadCase.Of(2, 0.4), growth, UncertainUtilisation.Exactly(Utilisation.FromFraction(1)), ToleranceShape.Uniform));
        var plan = new LifePlan(life, Probability.FromFraction(0.5));
        Near.Equal(2500, plan.Until(ZincShare.FromFraction(0.5)).Duration.Years365, 1e-9);
        Near.Equal(2500 + 625, plan.Until(ZincShare.FromFraction(0.25)).Duration.Years365, 1e-9);
        Near.Equal(0.25, plan.LeftAfter(Duration.FromYears365(3125)).Fraction, 1e-9);
    }

    [Property(MaxTest = 20)]
    public void A_coating_as_thick_as_the_tape_is_worth_lasts_as_long(SpreadCase given)
    {
        var first = new HotDipComparison(given.Life, HotDipCoating.Iso1461(Length.FromMillimeters(8), HotDipValue.Mean), given.Sure);
        if (first.EqualCoating.Micrometers > 1000)
        {
            // Four layers of thick foil are worth more than any coating that is taken.
            Assert.Throws<ArgumentOutOfRangeException>(() => HotDipCoating.FromThickness(first.EqualCoating, "made up"));
            Assert.True(first.CoatingLife < first.TapeLife);
            return;
        }

        var same = new HotDipComparison(given.Life, HotDipCoating.FromThickness(first.EqualCoating, "made up"), given.Sure);
        Near.Equal(same.TapeLife.Duration.Years365, same.CoatingLife.Duration.Years365, 1e-8);
        Assert.Equal(first.CoatingLife > first.TapeLife, first.EqualCoating.Micrometers < 85);
    }

    [Fact]
    public void Hot_dip_thickness_by_steel_and_by_mass()
    {
        (double Steel, double Local, double Mean)[] rows = [(6.01, 70, 85), (6, 55, 70), (3.01, 55, 70), (3, 45, 55), (1.5, 45, 55), (1.49, 35, 45)];
        Assert.All(rows, static row =>
        {
            Assert.Equal(row.Local, HotDipCoating.Iso1461(Length.FromMillimeters(row.Steel), HotDipValue.Local).Thickness.Micrometers);
            Assert.Equal(row.Mean, HotDipCoating.Iso1461(Length.FromMillimeters(row.Steel), HotDipValue.Mean).Thickness.Micrometers);
        });
        Near.Equal(610 / 7.14, HotDipCoating.FromMass(AreaDensity.FromGramsPerSquareMeter(610), "a note").Thickness.Micrometers, 1e-14);
        Near.Equal(610 / 7.2, HotDipCoating.FromMass(AreaDensity.FromKilogramsPerSquareMeter(0.61), "a note", Density.FromGramsPerCubicCentimeter(7.2)).Thickness.Micrometers, 1e-14);
    }

    [Fact]
    public void Bounds_read_as_quantiles_come_back_as_quantiles()
    {
        var rate = UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05));
        var oracle = new LogNormal(Math.Log(rate.LogNormal.Median.MicrometersPerYear), rate.LogNormal.Spread.Value);
        Near.Equal(0.7, oracle.InverseCumulativeDistribution(0.05), 1e-9);
        Near.Equal(2.1, oracle.InverseCumulativeDistribution(0.95), 1e-9);
        Assert.Contains("quantiles 0.05 and 0.95", rate.Name, StringComparison.Ordinal);
        Assert.Equal(BasisKind.Recalled, UncertainRate.FromCategory(CorrosivityCategory.CX, Probability.FromFraction(0.05)).Basis.Kind);
        Near.Equal(0.03, UncertainExponent.Zinc.StandardError, 1e-12);
    }

    [Fact]
    public void What_is_outside_is_refused()
    {
        var given = new SpreadCase(1.4, 0.4, 100, 0.1, 0.8, 0.1, 0.8, 0.03, 1, 0.9, 7);
        Errors.Refused(() => UncertainRate.FromCategory(CorrosivityCategory.C1, Probability.FromFraction(0.05)), "bounds", "more than 0 um/a");
        Errors.Refused(() => UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.5)), "below", "less than 0.5");
        Errors.Refused(() => SpreadCase.Of(1, 0), "rate", "at least 0.01");
        Errors.Refused(() => given.Life.ReachedWith(Probability.FromFraction(1)), "confidence", "at most 0.999999");
        Errors.Refused(() => new LifeDistribution(given.Foil, 101, given.Uncertainty), "layersEverywhere", "at most 100");
        Errors.Refused(() => new UncertainExponent(TimeExponent.FromValue(0.8), 0.1, Basis.OwnExperience("made up")), "standardError", "less than 0.1");
        Errors.Refused(() => new LifeDesign(given.Uncertainty, Lifetime.Unlimited, given.Sure), "required", "not a finite number");
        Errors.Refused(() => HotDipCoating.FromThickness(Length.FromMillimeters(610), "g/m2 taken for um"), "thickness", "610000 um is outside", "at most 1000 um", "state it as one");
        Errors.Refused(() => HotDipCoating.Iso1461(Length.Zero, HotDipValue.Mean), "steelThickness", "more than 0 mm");
        Assert.Throws<ArgumentException>(static () => UncertainRate.From(ZincExposure.FromCategory(CorrosivityCategory.C3)));
        Assert.Null(new LifeDesign(given.Uncertainty, Years(1e6), given.Sure).LeastThickness(1, Length.Zero));
        Assert.Null(new LifeDesign(given.Uncertainty, Years(1e6), given.Sure).LeastLayers(given.Foil));
        Assert.Equal(0, new LifeDistribution(given.Foil, 0, given.Uncertainty).ReachedWith(given.Sure).Duration.Years365);
    }

    [Fact]
    public void A_life_reached_less_surely_than_wanted_is_found()
    {
        LifeDistribution life = new SpreadCase(1.4, 0.4, 100, 0.1, 0.8, 0.1, 0.8, 0.03, 1, 0.9, 0).Life;
        Lifetime reached = life.ReachedWith(Probability.FromFraction(0.9));
        string[] quiet = [.. life.Judge(reached, Probability.FromFraction(0.9), RuleSet.Default, "here").Select(static one => one.Rule.Id)];
        Assert.Equal([RuleIds.SpreadIsJudgement, RuleIds.NoPublishedLife], quiet);
        Finding found = life.Judge(reached, Probability.FromFraction(0.95), RuleSet.Default, "here").First();
        Assert.Equal(RuleIds.ConfidenceNotReached, found.Rule.Id);
        Near.Equal(90, found.Measured!.Value.Number, 1e-8);
    }

    private static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));

    private static double Triangular(double low, double mode, double high, double share)
    {
        double bend = (mode - low) / (high - low);
        return share < bend
            ? low + Math.Sqrt(share * (high - low) * (mode - low))
            : high - Math.Sqrt((1 - share) * (high - low) * (high - mode));
    }

    private static double Halton(int index, int prime)
    {
        double result = 0;
        double share = 1.0 / prime;
        while (index > 0)
        {
            result += share * (index % prime);
            index /= prime;
            share /= prime;
        }

        return result;
    }
}
