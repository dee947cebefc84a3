using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using static SacrificialTape.Tests.Inspection.InspectionMake;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Rates, remaining lives and their confidence.</summary>
[Properties(Arbitrary = [typeof(InspectionCases)], MaxTest = 60)]
public sealed class RemainingLives
{
    [Property]
    public void The_refitted_curve_runs_through_the_reading_and_ends_at_the_usable_thickness(ReadingCase given)
    {
        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, given.Law })
        {
            RemainingLifeFromReadings life = Life(given.Statistics, given.Age, law);
            CorrosionRate rate = life.FirstYear!.Value;
            Near.Equal(100 - given.Um.Average(), law.Loss(rate, Years(given.Age)).Micrometers, 1e-10);
            Near.Equal(80, law.Loss(rate, life.Age + life.Mean!.Value).Micrometers, 1e-10);
        }
    }

    [Property]
    public void Under_the_linear_law_it_is_the_long_term_rate(ReadingCase given)
    {
        RemainingLifeFromReadings life = Life(given.Statistics, given.Age, LinearLoss.Law);
        var byRate = new RemainingLifeByRate(Um(100), new ThicknessPoint(Years(given.Age), given.Statistics.Mean), Um(20));
        Near.Equal(byRate.Remaining!.Value.Years365, life.Mean!.Value.Years365, 1e-9);

        // Loss that slows down leaves more than the straight line through the same reading.
        Assert.True(Life(given.Statistics, given.Age, given.Law).Mean!.Value.Years365 >= life.Mean.Value.Years365 * (1 - 1e-9));
    }

    [Property]
    public void Fewer_readings_of_the_same_scatter_widen_the_interval(ReadingCase given)
    {
        double[] thrice = [.. given.Um, .. given.Um, .. given.Um];
        RemainingLifeFromReadings few = Life(given.Statistics, given.Age, given.Law);
        RemainingLifeFromReadings many = Life(Statistics(thrice), given.Age, given.Law);
        Near.Equal(few.Mean!.Value.Years365, many.Mean!.Value.Years365, 1e-9);
        Assert.True(many.HalfWidth <= few.HalfWidth);
        Assert.True(many.Earliest!.Value >= few.Earliest!.Value);
        Assert.True(few.Earliest.Value.Years365 <= few.Mean.Value.Years365 * (1 + 1e-12));
        Assert.True(few.Latest is null || few.Latest.Value.Years365 >= few.Mean.Value.Years365 * (1 - 1e-12));
        Assert.True(few.OfThinSpots!.Value.Years365 <= few.Mean.Value.Years365);
        double t = StudentT.InvCDF(0, 1, given.Um.Length - 1, 0.975);
        Near.Equal(t * few.Statistics.StandardDeviation.Micrometers / Math.Sqrt(given.Um.Length), few.HalfWidth.Micrometers, 1e-8, absolute: 1e-10);
    }

    [Property]
    public void A_tolerance_of_the_foil_only_widens(ReadingCase given)
    {
        RemainingLifeFromReadings exact = Life(given.Statistics, given.Age, given.Law);
        RemainingLifeFromReadings loose = Life(given.Statistics, given.Age, given.Law, toleranceUm: 4);
        Near.Equal(exact.Mean!.Value.Years365, loose.Mean!.Value.Years365, 1e-12);
        Assert.True(loose.Earliest!.Value.Years365 <= exact.Earliest!.Value.Years365 + 1e-9);
        Assert.True(loose.Latest is null || exact.Latest is null || loose.Latest.Value.Years365 >= exact.Latest.Value.Years365 - 1e-9);
    }

    [Property]
    public void Units_do_not_matter(ReadingCase given)
    {
        var mils = new ReadingStatistics(new ValueList<Length>(given.Um.Select(static one => Length.FromMils(one / 25.4))));
        var other = new RemainingLifeFromReadings(
            new Foil(Length.FromMils(100 / 25.4)), mils, Duration.FromHours(8760 * given.Age), Length.FromMillimeters(0.02), given.Law, Share(0.9), Share(0.95));
        Near.Equal(Life(given.Statistics, given.Age, given.Law).Earliest!.Value.Years365, other.Earliest!.Value.Years365, 1e-8, absolute: 1e-8);
    }

    [Fact]
    public void Without_loss_the_life_is_undetermined_and_never_endless()
    {
        var byRate = new RemainingLifeByRate(Um(100), new ThicknessPoint(Years(5), Um(100)), Um(20));
        Assert.False(byRate.IsDetermined);
        Assert.Null(byRate.Remaining);
        Assert.Equal(0, byRate.Rate!.Value.MicrometersPerYear);
        Assert.Equal(RuleIds.LifeUndetermined, Assert.Single(byRate.Judge(RuleSet.Default, "here")).Rule.Id);
        Assert.Contains("undetermined", byRate.ToString(), StringComparison.Ordinal);

        var thicker = new RemainingLifeByRate(Um(100), new ThicknessPoint(Years(5), Um(104)), Um(20));
        Assert.Null(thicker.Rate);
        Assert.Null(thicker.Remaining);

        RemainingLifeFromReadings readings = Life(Statistics(101, 103, 99), 5, LinearLoss.Law);
        Assert.Null(readings.Mean);
        Assert.Null(readings.FirstYear);
        Assert.NotNull(readings.Earliest);
        Assert.Null(readings.Latest);
        Assert.Contains(readings.Judge(RuleSet.Default, "here"), static one => one.Rule.Id == RuleIds.LifeUndetermined);
        Assert.Throws<InvalidOperationException>(() => Life(Statistics(119, 120, 121), 5, LinearLoss.Law) is { } none
            ? new PredictionCheck(none, ZincExposure.FromCategory(CorrosivityCategory.C3)).Corrected("here") : null);
    }

    [Fact]
    public void Used_up_foil_has_no_life_left()
    {
        var byRate = new RemainingLifeByRate(Um(100), new ThicknessPoint(Years(5), Um(20)), Um(20));
        Assert.Equal(0, byRate.Remaining!.Value.Years365);
        Finding finding = Assert.Single(byRate.Judge(RuleSet.Default, "here"));
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(0, Life(Statistics(15, 16, 17), 5, LinearLoss.Law).Mean!.Value.Years365);
    }

    [Fact]
    public void The_larger_rate_is_taken_unless_another_is_chosen()
    {
        var now = new ThicknessPoint(Years(14), Length.FromMillimeters(10.2));
        var before = new ThicknessPoint(Years(10), Length.FromMillimeters(10.8));
        double Left(RateChoice choice) => new RemainingLifeByRate(
            Length.FromMillimeters(12), now, Length.FromMillimeters(7), before, choice).Remaining!.Value.Years365;
        Near.Equal(3.2 / 0.15, Left(RateChoice.Larger), 1e-12);
        Near.Equal(3.2 / 0.15, Left(RateChoice.ShortTerm), 1e-12);
        Near.Equal(3.2 / (1.8 / 14), Left(RateChoice.LongTerm), 1e-12);
    }

    [Fact]
    public void Two_inspections_give_welchs_interval()
    {
        var between = new LossBetween(Statistics(80, 84, 82, 86), Statistics(70, 72, 75, 71, 73), Years(4), Share(0.95));
        (double m1, double v1, double m2, double v2) = (83, 20.0 / 3, 72.2, 3.7);
        double error = Math.Sqrt((v1 / 4) + (v2 / 5));
        double freedom = Math.Pow((v1 / 4) + (v2 / 5), 2) / ((v1 * v1 / 16 / 3) + (v2 * v2 / 25 / 4));
        double t = StudentT.InvCDF(0, 1, freedom, 0.975);
        Near.Equal(m1 - m2 - (t * error), between.LeastLoss.Micrometers, 1e-8);
        Near.Equal(m1 - m2 + (t * error), between.MostLoss.Micrometers, 1e-8);
        Near.Equal((m1 - m2) / 4, between.Rate!.Value.MicrometersPerYear, 1e-12);
        Near.Equal(52.2 / (10.8 / 4), between.Remaining(Um(20))!.Value.Years365, 1e-9);
        Assert.True(between.EarliestRemaining(Um(20)) < between.Remaining(Um(20)));
        var even = new LossBetween(Statistics(80, 80, 80), Statistics(72, 72), Years(4), Share(0.95));
        Assert.Equal((8, 8), (even.LeastLoss.Micrometers, even.MostLoss.Micrometers));
        Assert.Null(new LossBetween(Statistics(70, 71), Statistics(90, 91), Years(4), Share(0.95)).Remaining(Um(20)));
        Errors.Refused(static () => new LossBetween(Statistics(70, 71), Statistics(60, 61), Years(0), Share(0.95)), "between");
    }

    [Fact]
    public void The_next_look_comes_after_half_the_life_or_the_longest_interval()
    {
        Assert.Equal(2, new NextInspection(Years(4), RuleSet.Default).Interval.Years365, 1e-12);
        Assert.Equal(5, new NextInspection(Years(40), RuleSet.Default).Interval.Years365, 1e-12);
        Assert.Equal(5, new NextInspection(null, RuleSet.Default).Interval.Years365, 1e-12);
        Assert.Equal(0, new NextInspection(Years(0), RuleSet.Default).Interval.Years365);
        Assert.Equal(new DateOnly(2032, 4, 30), new NextInspection(Years(4), RuleSet.Default).After(new DateOnly(2030, 5, 1)));
        Errors.Refused(static () => new NextInspection(Years(-1), RuleSet.Default), "remaining");
    }

    [Fact]
    public void Readings_correct_the_exposure()
    {
        RemainingLifeFromReadings life = Life(Statistics(40, 42, 44, 41, 43), 10, LinearLoss.Law);
        var check = new PredictionCheck(life, ZincExposure.FromCategory(CorrosivityCategory.C3));
        Assert.Equal(PredictionVerdict.Faster, check.Verdict);
        Near.Equal(5.8 / 2.1, check.RatioToHighest, 1e-12);
        Near.Equal(21, check.MostLossPredicted.Micrometers, 1e-12);
        Assert.Equal(RuleIds.FasterThanPredicted, Assert.Single(check.Judge(RuleSet.Default, "here")).Rule.Id);
        ZincExposure corrected = check.Corrected("tank 4, invented");
        Assert.Contains("from readings: 5 at 10 a", corrected.Basis.ToString(), StringComparison.Ordinal);
        Assert.Equal(PredictionVerdict.NotContradicted, new PredictionCheck(life, corrected).Verdict);
        Assert.True(corrected.FirstYear.Lowest < life.FirstYear!.Value && life.FirstYear.Value < corrected.FirstYear.Highest);

        // Estimated anew with that exposure, the life of the mean lies within.
        var estimate = new LifeEstimate(Foil(), 1, corrected, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        Assert.InRange(10 + life.Mean!.Value.Years365, estimate.Earliest.Duration.Years365, estimate.Latest.Duration.Years365);
        Assert.Equal(PredictionVerdict.Slower, new PredictionCheck(Life(Statistics(97, 97.5, 98), 10, LinearLoss.Law), estimate).Verdict);
    }

    [Fact]
    public void A_single_reading_gives_a_rate_and_says_what_it_lacks()
    {
        var single = new SingleReading(Foil(), FoilReading.Measured(Um(80), Clean), Years(10));
        Near.Equal(2, single.Rate!.Value.MicrometersPerYear, 1e-12);
        Assert.Equal([RuleIds.SingleReading], single.Judge(RuleSet.Default, "here").Select(static one => one.Rule.Id));
        var thick = new SingleReading(Foil(), FoilReading.Measured(Um(110), Clean), Years(10));
        Assert.Null(thick.Rate);
        Assert.Equal(3, thick.Judge(RuleSet.Default, "here").Count());
    }

    [Fact]
    public void Bad_arguments_are_refused()
    {
        ThicknessPoint now = new(Years(5), Um(80));
        Errors.Refused(static () => new ThicknessPoint(Years(0), Um(80)), "age", "nothing is lost yet");
        Errors.Refused(static () => new ThicknessPoint(Years(1), Um(0)), "thickness");
        Errors.Refused(() => new RemainingLifeByRate(Um(50), now, Um(20)), "now", "layers miscounted");
        Errors.Refused(() => new RemainingLifeByRate(Um(100), now, Um(100)), "required");
        Errors.Refused(() => new RemainingLifeByRate(Um(100), now, Um(20), new ThicknessPoint(Years(5), Um(90))), "before", "earlier than now");
        Assert.Throws<ArgumentException>(() => new RemainingLifeByRate(Um(100), now, Um(20), null, RateChoice.ShortTerm));
        Errors.Refused(static () => Life(Statistics(80, 81), 0, LinearLoss.Law), "age");
        Errors.Refused(static () => Life(Statistics(80, 81), 5, LinearLoss.Law, required: 100), "required");
        Errors.Refused(static () => Life(Statistics(80, 151), 5, LinearLoss.Law), "statistics", "adhesive left on");
    }
}
