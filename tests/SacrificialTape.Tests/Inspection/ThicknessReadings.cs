using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using static SacrificialTape.Tests.Inspection.InspectionMake;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Readings, outliers, limits.</summary>
[Properties(Arbitrary = [typeof(InspectionCases)], MaxTest = 60)]
public sealed class ThicknessReadings
{
    [Property]
    public void Layers_together_and_what_was_left_on_come_off(ReadingCase given)
    {
        double um = given.Um[0];
        var preparation = new ReadingPreparation(true, Um(25), "a made-up solvent");
        Near.Equal(um, FoilReading.Measured(Um(3 * (um + 25)), preparation, 3).Thickness.Micrometers, 1e-12);
        Near.Equal(um, FoilReading.Measured(Length.FromInches(3 * (um + 25) / 25_400), preparation, 3).Thickness.Micrometers, 1e-9);

        // 7.14 g/cm3: a square decimetre of 1 um weighs 0.0714 g.
        FoilReading weighed = FoilReading.Weighed(Area.FromSquareCentimeters(100), Mass.FromGrams(2 * 0.0714 * um), Mass.FromGrams(20), "made up", layers: 2);
        Near.Equal(um, weighed.Thickness.Micrometers, 1e-12);
        Assert.True(weighed.IsWeighed);
    }

    [Property]
    public void Outliers_stay_the_same_under_shift_and_scale(ReadingCase given)
    {
        double[] um = [.. given.Um, 30 + (given.Age / 10)];
        int[] Flagged(double factor, double shift) =>
            [.. Readings(Foil(1000), [.. um.Select(one => (factor * one) + shift)]).Outliers.Select(static outlier => outlier.Number)];
        Assert.Equal(Flagged(1, 0), Flagged(3, 0));
        Assert.Equal(Flagged(1, 0), Flagged(1, 217));
        Assert.Equal(Flagged(1, 0), Flagged(-2, 400));
    }

    [Fact]
    public void An_outlier_is_flagged_and_both_results_are_given()
    {
        FoilReadings readings = Readings(Foil(), 71, 73, 72, 74, 70, 72, 31);
        Assert.Equal([7], readings.Outliers.Select(static outlier => outlier.Number));
        Near.Equal(463.0 / 7, readings.All.Mean.Micrometers, 1e-12);
        Near.Equal(72, readings.WithoutOutliers!.Mean.Micrometers, 1e-12);
        Assert.Equal(RuleIds.ReadingOutlier, Assert.Single(readings.Judge(RuleSet.Default, "here")).Rule.Id);
        Assert.Contains("without 1 outlier", readings.ToString(), StringComparison.Ordinal);

        FoilReadings calm = Readings(Foil(), 72, 72, 72);
        Assert.Empty(calm.Outliers);
        Assert.Null(calm.WithoutOutliers);
    }

    // Two-sided: of a normal set the farthest lies beyond the critical distance about as seldom as stated.
    [Fact]
    public void Few_sound_sets_are_flagged()
    {
        var random = new Random(7);
        int flagged = 0;
        const int Sets = 4000;
        for (int i = 0; i < Sets; i++)
        {
            double[] um = [.. Enumerable.Range(0, 8).Select(_ => Normal.InvCDF(70, 3, random.NextDouble()))];
            flagged += Readings(Foil(200), um).Outliers.Count > 0 ? 1 : 0;
        }

        Assert.InRange(flagged / (double)Sets, 0.04, 0.06);
    }

    [Fact]
    public void Readings_thicker_than_the_foil_are_told_or_refused()
    {
        FoilReadings thick = Readings(Foil(100, 5), 106, 90, 105);
        Finding finding = Assert.Single(thick.Judge(RuleSet.Default, "line 3"), static one => one.Rule.Id == RuleIds.ReadingAboveFoil);
        Assert.Equal("line 3, reading 1", finding.Subject);
        Errors.Refused(static () => Readings(Foil(100, 5), 90, 160), "readings", "adhesive left on", "at most 157.5 um");

        var dirty = new ReadingPreparation(false, Length.Zero, "wiped only");
        var readings = new FoilReadings(Foil(), [FoilReading.Measured(Um(80), dirty), FoilReading.Measured(Um(81), Clean)], Share(0.05));
        Assert.Contains(readings.Judge(RuleSet.Default, "here"), static one => one.Rule.Id == RuleIds.ReadingNotCleaned);
    }

    [Fact]
    public void Bad_readings_are_refused()
    {
        Errors.Refused(static () => Readings(Foil(), 80), "readings", "1 readings");
        Errors.Refused(static () => Statistics(80), "thicknesses", "one reading has no scatter");
        Errors.Refused(static () => Statistics(80, 0), "thicknesses", "count it as damage");
        Errors.Refused(static () => FoilReading.Measured(Um(0), Clean), "together");
        Errors.Refused(static () => FoilReading.Measured(Um(-1), Clean), "together");
        Errors.Refused(static () => FoilReading.Measured(Um(50), new ReadingPreparation(true, Um(25), "made up"), 2), "thickness", "what was left on");
        Errors.Refused(static () => FoilReading.Measured(Um(50), Clean, 0), "layers");
        Errors.Refused(static () => FoilReading.Weighed(Area.FromSquareCentimeters(10), Mass.FromGrams(1), Mass.FromGrams(0.9), "made up"), "beforeCleaning", "after cleaning");
        Errors.Refused(static () => FoilReading.Weighed(Area.Zero, Mass.FromGrams(1), Mass.FromGrams(1), "made up"), "area");
        Errors.Refused(static () => new FoilReadings(Foil(), [FoilReading.Measured(Um(80), Clean), FoilReading.Measured(Um(80), Clean)], Share(0.5)), "significance");
        Errors.Refused(static () => FoilReadings.CriticalDistance(2, Share(0.05)), "readings");
        Errors.Refused(static () => new ReadingPreparation(true, Um(-1), "made up"), "leftOn");
    }

    [Property]
    public void A_normal_limit_is_mean_less_k_deviations_whatever_the_unit(ReadingCase given)
    {
        var limit = new ThicknessLimit(given.Statistics, Share(given.Coverage), Share(given.Confidence));
        double mean = given.Um.Average();
        double deviation = Math.Sqrt(given.Um.Sum(one => (one - mean) * (one - mean)) / (given.Um.Length - 1));
        Near.Equal(mean - (limit.Factor.Value * deviation), limit.Value.Micrometers, 1e-10, absolute: 1e-9);
        var inches = new ReadingStatistics(new ValueList<Length>(given.Um.Select(static one => Length.FromInches(one / 25_400))));
        Near.Equal(limit.Value.Micrometers, new ThicknessLimit(inches, Share(given.Coverage), Share(given.Confidence)).Value.Micrometers, 1e-9, absolute: 1e-8);
    }

    [Theory]
    [InlineData(0.90, 0.95, 29)]
    [InlineData(0.95, 0.95, 59)]
    [InlineData(0.99, 0.95, 299)]
    public void The_lowest_reading_becomes_a_limit_just_then(double coverage, double confidence, int least)
    {
        Assert.Equal(least, RankLimit.LeastReadings(Share(coverage), Share(confidence)));
        double[] um = [.. Enumerable.Range(1, least).Select(static i => 50.0 + (i * 0.01))];
        Assert.Equal(50.01, new RankLimit(Statistics(um), Share(coverage), Share(confidence)).Value!.Value.Micrometers, 1e-9);
        var tooFew = new RankLimit(Statistics(um[1..]), Share(coverage), Share(confidence));
        Assert.Null(tooFew.Value);
        Assert.Contains($"it takes {least}", tooFew.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, tooFew.Reached.Fraction);
        Assert.Single(tooFew.ShowWorkings().Steps);
    }

    [Fact]
    public void Ranks_agree_with_the_binomial_of_a_general_library()
    {
        foreach (int count in new[] { 30, 46, 100, 1000, 10_000 })
        {
            double[] um = [.. Enumerable.Range(1, count).Select(static i => i / 100.0)];
            foreach ((double coverage, double confidence) in new[] { (0.9, 0.95), (0.5, 0.99), (0.99, 0.6) })
            {
                var limit = new RankLimit(Statistics(um), Share(coverage), Share(confidence));
                var below = new Binomial(1 - coverage, count);
                int expected = 0;
                while (below.CumulativeDistribution(expected) <= 1 - confidence)
                {
                    expected++;
                }

                Assert.Equal(expected, limit.Rank);
                if (expected > 0)
                {
                    Near.Equal(1 - below.CumulativeDistribution(expected - 1), limit.Reached.Fraction, 1e-9);
                }
            }
        }
    }
}
