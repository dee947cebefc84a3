using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Inspection;

[Properties(MaxTest = 500)]
public sealed class SamplingLaws
{
    [Property]
    public void A_larger_area_never_takes_fewer_readings(ushort tenths, ushort more, byte which)
    {
        SamplingScheme scheme = Enum.GetValues<SamplingScheme>()[which % 4];
        double small = 10 + (tenths / 10.0);
        Assert.True(Count(scheme, small) <= Count(scheme, small + (more / 10.0)));
        Assert.True(Count(scheme, small) >= 1);
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(1.01, 10)]
    [InlineData(3, 10)]
    [InlineData(10, 15)]
    [InlineData(30, 20)]
    [InlineData(100, 30)]
    [InlineData(100.1, 40)]
    [InlineData(200, 40)]
    public void A_bound_belongs_to_the_smaller_class(double m2, int readings) => Assert.Equal(readings, Count(SamplingScheme.Iso19840, m2));

    [Property]
    public void A_bad_reading_for_a_good_one_never_gets_accepted(int seed, bool ninety)
    {
        var random = new Random(seed);
        AcceptanceRule rule = ninety ? AcceptanceRule.NinetyTen : AcceptanceRule.EightyTwenty;
        double[] um = [.. Enumerable.Range(0, 20).Select(_ => 95 + (random.NextDouble() * 12))];
        bool before = Accept(rule, um).IsAccepted;
        um[random.Next(20)] = 70;
        Assert.False(Accept(rule, um).IsAccepted);
        um = [.. um.Select(static one => Math.Max(one, 100))];
        Assert.True(Accept(rule, um).IsAccepted);
        _ = before;
    }

    [Theory]
    [InlineData(20, 80, true)]
    [InlineData(20, 79.9, false)]
    [InlineData(30, 90, false)]
    public void Eighty_twenty_by_its_bounds(int percentBelow, double low, bool accepted)
    {
        // The rest well above nominal, so that the mean holds.
        double[] um = [.. Enumerable.Range(0, 100).Select(at => at < percentBelow ? low : 110.0)];
        Assert.Equal(accepted, Accept(AcceptanceRule.EightyTwenty, um).IsAccepted);
    }

    [Theory]
    [InlineData(10, 90, true)]
    [InlineData(11, 90, false)]
    [InlineData(10, 89.9, false)]
    public void Ninety_ten_by_its_bounds(int percentBelow, double low, bool accepted)
    {
        double[] um = [.. Enumerable.Range(0, 100).Select(at => at < percentBelow ? low : 100.0)];
        Assert.Equal(accepted, Accept(AcceptanceRule.NinetyTen, um).IsAccepted);
    }

    [Fact]
    public void The_mean_counts_for_eighty_twenty()
    {
        double[] um = [.. Enumerable.Range(0, 10).Select(at => at < 2 ? 80.0 : 101)];
        Finding only = Assert.Single(Accept(AcceptanceRule.EightyTwenty, um).Findings);
        Assert.Equal(RuleIds.EightyTwentyMean, only.Rule.Id);
        Near.Equal(96.8, only.Measured!.Value.Number, 1e-12);
    }

    [Fact]
    public void Too_few_and_too_thick_are_findings()
    {
        var wanted = new SamplingCount(SamplingScheme.Iso19840, Area.FromSquareMeters(500));
        var got = new AcceptanceByReadings(
            [Length.FromMicrometers(130), Length.FromMicrometers(131)], Length.FromMicrometers(125), AcceptanceRule.EightyTwenty, RuleSet.Default, "A-1", wanted, Length.FromMicrometers(130));
        Assert.Equal([RuleIds.TooFewReadings, RuleIds.ThicknessAboveMost], got.Findings.Select(static one => one.Rule.Id));
        Assert.Equal((2.0, 70.0), (got.Findings[0].Measured!.Value.Number, got.Findings[0].Limit!.Value.Number));
        Assert.False(got.IsAccepted);
    }

    [Fact]
    public void Single_readings_of_a_spot_are_not_judged_and_its_mean_is()
    {
        AcceptanceSpot spot = new([Length.FromMicrometers(50), Length.FromMicrometers(100), Length.FromMicrometers(150)]);
        Assert.True(new AcceptanceBySpots(Enumerable.Repeat(spot, 5), Length.FromMicrometers(90), Length.FromMicrometers(110), RuleSet.Default, "A-1").IsAccepted);
        Assert.Equal(
            [RuleIds.TooFewReadings, RuleIds.AreaMeanOutside, RuleIds.SpotLeast],
            new AcceptanceBySpots([spot], Length.FromMicrometers(126), Length.FromMicrometers(150), RuleSet.Default, "A-1").Findings.Select(static one => one.Rule.Id));
    }

    [Fact]
    public void Stations_stand_at_both_ends()
    {
        Assert.Equal(2 * 4, new SamplingLine(Mm(1000), Mm(1000)).Readings);
        Assert.Equal(3 * 4, new SamplingLine(Mm(1000.1), Mm(1000)).Readings);
        Assert.Equal(11, new SamplingLine(Mm(10_000), Mm(1000), 1).Readings);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new SamplingCount(SamplingScheme.As38943, Area.FromSquareMeters(9.9)), "area", "9.9 m2", "were not read clearly");
        Errors.Refused(static () => new SamplingCount(SamplingScheme.Iso19840, Area.Zero), "area", "0 m2", "more than 0");
        Errors.Refused(static () => new SamplingCount((SamplingScheme)9, Area.FromSquareMeters(10)), "scheme");
        Errors.Refused(static () => new SamplingLine(Mm(1000), Mm(0.0001)), "farthestApart", "readings", "at most 1000000");
        Errors.Refused(static () => new SamplingLine(Mm(1000), Mm(100), 0), "round", "0");
        Errors.Refused(static () => Accept(AcceptanceRule.NinetyTen, [0]), "readings", "0 um");
        Assert.Throws<ArgumentException>(static () => Accept(AcceptanceRule.NinetyTen, []));
        Assert.Contains("at least 3 readings", Assert.Throws<ArgumentException>(static () => new AcceptanceSpot([Mm(0.1), Mm(0.1)])).Message, StringComparison.Ordinal);
        AcceptanceSpot spot = new([Mm(0.1), Mm(0.1), Mm(0.1)]);
        Errors.Refused(() => new AcceptanceBySpots([spot], Mm(0.1), Mm(0.09), RuleSet.Default, "A-1"), "most", "90 um", "at least the least");
    }

    private static int Count(SamplingScheme scheme, double m2) => new SamplingCount(scheme, Area.FromSquareMeters(m2)).Readings;

    private static AcceptanceByReadings Accept(AcceptanceRule rule, IEnumerable<double> um) =>
        new(um.Select(static one => Length.FromMicrometers(one)), Length.FromMicrometers(100), rule, RuleSet.Default, "A-1");
}
