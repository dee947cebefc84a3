using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Cases at the edge of a lay: one ring, several passes, level turns on one another.</summary>
public sealed class SingleRingsAndPasses
{
    [Fact]
    public void One_ring_in_three_passes_is_three_layers_and_trims_what_stands_over()
    {
        var lay = new RingLay(Pipe(100, 80), Stock(100), Mm(10), Choices(2, 15, 3));
        Strip ring = lay.Strips.Single();
        Assert.Equal(3, lay.LayersEverywhere);
        Assert.Equal(3, ring.Count);
        Near.Equal(Math.PI * 100 * 0.2, ring.Trim.Millimeters, 0, absolute: 0.001);
        Near.Equal(15, ring.Lap.Millimeters, 0, absolute: 0.002);
    }

    [Fact]
    public void One_ring_has_no_neighbour_to_lap_but_its_own_end()
    {
        string[] said = [.. new RingLay(Pipe(100, 80), Stock(100), Length.Zero, Choices(2, 5)).Judge(RuleSet.Default, "R").Select(static one => one.Rule.Id)];
        Assert.Equal([RuleIds.MinimumEndLap], said);
    }

    [Fact]
    public void Level_turns_on_one_another_are_repeated_with_each_pass()
    {
        var lay = new SpiralLay(Pipe(114.3, 3000), Stock(), SpiralSetting.FromTrueLap(Mm(60)), SpiralEnds.LevelTurns(3), Choices(0, 10, 2));
        Assert.Equal(2 * 2 * 3, lay.Strips.Where(static strip => strip.Purpose == StripPurpose.LevelTurn).Sum(static strip => strip.Count));
        Assert.Equal(2 * 2, lay.LayersEverywhere);
    }

    [Fact]
    public void Passes_multiply_the_layers_on_average()
    {
        double once = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)), null, Choices(0, 10, 1)).LayersOnAverage.Ratio;
        double thrice = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)), null, Choices(0, 10, 3)).LayersOnAverage.Ratio;
        Near.Equal(3 * once, thrice, 1e-12);
        Near.Equal(100.0 / 80, once, 1e-12);
    }

    [Theory]
    [InlineData(ApplicationMethod.ByHand, false)]
    [InlineData(ApplicationMethod.WrappingHead, true)]
    public void A_wide_strip_is_too_wide_for_a_head_only(ApplicationMethod method, bool said)
    {
        var lay = new SpiralLay(Pipe(610), Stock(200), SpiralSetting.FromTrueLap(Mm(20)), null, new LayChoices(Mm(10), Mm(2), 1, method));
        Assert.Equal(said, lay.Judge(RuleSet.Default, "S").Any(static one => one.Rule.Id == RuleIds.MaximumStripWidthOnWrappingHead));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void An_end_lap_is_judged_where_there_is_one(int levelTurns, bool said)
    {
        SpiralEnds ends = levelTurns == 0 ? SpiralEnds.TrimmedFlush : SpiralEnds.LevelTurns(levelTurns);
        var lay = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)), ends, Choices(2, 5));
        Assert.Equal(said, lay.Judge(RuleSet.Default, "S").Any(static one => one.Rule.Id == RuleIds.MinimumEndLap));
    }

    [Fact]
    public void A_girth_weld_strip_is_whole_and_a_strip_along_may_be_spliced()
    {
        Assert.False(WeldStrips.For(new GirthWelds(Mm(168.3), 2), Stock(), Mm(20)).MaySplice);
        Strip along = WeldStrips.For(new LongitudinalWelds(Mm(5000), 1), Stock(), Mm(20));
        Assert.True(along.MaySplice);
        Near.Equal(5000, along.Length.Millimeters, 1e-9);
    }

    [Fact]
    public void A_strip_as_wide_as_a_lap_along_the_pipe_allows_is_solved_and_one_without_lap_is_refused()
    {
        // At w^2 = C^2 + o^2 the root under the solution is zero.
        double c = Math.PI * 50;
        var spiral = new SpiralGeometry(Mm(50), Mm(Math.Sqrt((c * c) + (30 * 30))), SpiralSetting.FromLapAlongPipe(Mm(30)));
        Assert.True(double.IsFinite(spiral.Advance.Millimeters) && spiral.Advance.Millimeters > 0);
        Assert.Contains("must be narrower than that", Assert.Throws<ArgumentOutOfRangeException>(() =>
            new SpiralGeometry(Mm(50), Mm(c), SpiralSetting.FromLapAlongPipe(Length.Zero))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpiralGeometry(Mm(50), Mm(c), SpiralSetting.FromTrueLap(Length.Zero)));
    }

    [Fact]
    public void A_lap_that_makes_layers_past_counting_is_refused() => Assert.Equal(
        "leastLap",
        Assert.Throws<ArgumentOutOfRangeException>(static () => new AlongPipeLay(Pipe(1, 1000), Stock(2000), Mm(2000 - 1e-6), Choices())).ParamName);
}
