using static SacrificialTape.Tests.Inspection.InspectionMake;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Readings, extremes and patches small enough to be worked out on paper.</summary>
public sealed class CountedByHand
{
    // SSPC-PA 2: five spots on each area of 10 m2 up to three of them, on one more for each further 100 m2 begun.
    [Theory]
    [InlineData(5, 5)]
    [InlineData(10, 5)]
    [InlineData(11, 10)]
    [InlineData(25, 15)]
    [InlineData(100, 15)]
    [InlineData(101, 20)]
    public void Spots_by_areas(double m2, int spots) => Assert.Equal(spots, Count(SamplingScheme.SspcPa2, m2));

    // AS 3894.3: 10 readings up to 20 m2, 15 up to 100 m2, 5 more for each further 100 m2 begun.
    [Theory]
    [InlineData(10, 10)]
    [InlineData(20, 10)]
    [InlineData(21, 15)]
    [InlineData(100, 15)]
    [InlineData(201, 25)]
    public void Readings_by_classes_of_area(double m2, int readings) => Assert.Equal(readings, Count(SamplingScheme.As38943, m2));

    // Five samples of 2 m2 out of 40 m2: the whole is twenty samples, of which a quarter was taken.
    [Fact]
    public void A_return_period_counts_samples_of_the_whole()
    {
        LargestLosses losses = Losses(2, 40);
        Near.Equal(20, losses.ReturnPeriod, 1e-15);
        RuleSet strict = RuleSet.Default.With(
            "ours", "1", RuleSet.Default[RuleIds.ExtremeSampleShare].WithLimit(new Measure(26, TradeUnit.Percent), Basis.Judgement("for this test")));
        Finding small = Assert.Single(losses.Judge(strict, "A"), static one => one.Rule.Id == RuleIds.ExtremeSampleShare);
        Near.Equal(25, small.Measured!.Value.Number, 1e-13);
    }

    // -ln(-ln(1 - 1/T)) = ln T - 1/(2 T) - 5/(24 T^2) - ..., by the series of both logarithms.
    [Theory]
    [InlineData(1e4)]
    [InlineData(9e4)]
    [InlineData(1.1e5)]
    [InlineData(1e6)]
    public void Far_extremes_follow_the_series(double period)
    {
        LargestLosses losses = Losses(1, period);
        double reduced = Math.Log(period) - (1 / (2 * period)) - (5 / (24 * period * period));
        Near.Equal(losses.Location.Micrometers + (losses.Scale.Micrometers * reduced), losses.LargestLoss.Micrometers, 1e-12);
    }

    // Turned alike and set out along their long axes, two ellipses come nearest at the ends of these axes.
    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(75)]
    [InlineData(-40)]
    public void Ellipses_in_line_are_as_far_apart_as_their_ends(double degrees)
    {
        double turn = degrees * Math.PI / 180;
        double gap = PatchKernel.GapMm(new(false, 30, 10), turn, new(false, 25, 5), turn, 100 * Math.Cos(turn), 100 * Math.Sin(turn));
        Near.Equal(45, gap, 1e-9);
    }

    [Fact]
    public void What_is_usable_leaves_the_rest() =>
        Near.Equal(20, PerforationLimit.Of(Foil(100), Utilisation.FromFraction(0.8)).Micrometers, 1e-13);

    [Fact]
    public void At_the_thickness_required_nothing_is_left_whatever_the_rate()
    {
        var still = new RemainingLifeByRate(Um(100), new ThicknessPoint(Years(5), Um(60)), Um(60), new ThicknessPoint(Years(2), Um(60)), RateChoice.ShortTerm);
        Assert.True(still.IsDetermined);
        Assert.Equal(0, still.Remaining!.Value.Years365);
    }

    private static int Count(SamplingScheme scheme, double m2) => new SamplingCount(scheme, Area.FromSquareMeters(m2)).Readings;

    private static LargestLosses Losses(double sampleM2, double wholeM2) => new(
        [Um(12), Um(17), Um(15), Um(22), Um(31)], Area.FromSquareMeters(sampleM2), Area.FromSquareMeters(wholeM2), GumbelMethod.Moments);
}
