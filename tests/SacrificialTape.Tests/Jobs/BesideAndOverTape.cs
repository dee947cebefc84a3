using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>Bare steel beside a tape end, and paint over the tape, as a survey line states them.</summary>
public sealed class BesideAndOverTape
{
    [Fact]
    public void A_bare_margin_is_found_and_the_life_says_what_it_leaves_out()
    {
        Finding[] added = Added(ends: [new TapeEnd(Mm(5), Mm(20))]);
        Assert.Equal([RuleIds.BareMarginBesideTape, RuleIds.LifeWithoutBareSteel], added.Select(static one => one.Rule.Id));
        Assert.Equal("A (tape end)", added[0].Subject);
        Assert.Equal(new Measure(5, TradeUnit.Millimeter), added[0].Measured);
    }

    [Fact]
    public void A_trimmed_end_is_within_the_rule_but_still_draws_on_the_zinc() =>
        Assert.Equal([RuleIds.LifeWithoutBareSteel], Added(ends: [new TapeEnd(Mm(1), Mm(20))]).Select(static one => one.Rule.Id));

    [Fact]
    public void A_painted_end_says_nothing() => Assert.Empty(Added(ends: [new TapeEnd(Length.Zero, Mm(20))]));

    [Fact]
    public void Each_end_is_judged_and_the_life_speaks_once()
    {
        Finding[] added = Added(ends: [new TapeEnd(Mm(5), Mm(20)), new TapeEnd(Mm(7), Mm(20))]);
        Assert.Equal(
            [RuleIds.BareMarginBesideTape, RuleIds.BareMarginBesideTape, RuleIds.LifeWithoutBareSteel], added.Select(static one => one.Rule.Id));
    }

    [Fact]
    public void The_crew_hears_of_a_bare_end() => Assert.Contains(
        Of(ends: [new TapeEnd(Mm(5), Mm(20))]).CrewSteps,
        static step => step.Activity == CrewActivity.Cautions && step.Text.Contains("bare beside a tape end", StringComparison.Ordinal));

    [Theory]
    [InlineData(false, new[] { RuleIds.DuplexFactorOfHotDip })]
    [InlineData(true, new[] { RuleIds.DuplexFactorOfHotDip, RuleIds.AlkydOnZinc })]
    public void Paint_says_on_what_its_factor_rests_and_warns_of_alkyd(bool alkyd, string[] rules) =>
        Assert.Equal(rules, Added(paint: new PaintFilm(Years(8), Years(12), alkyd)).Select(static one => one.Rule.Id));

    [Fact]
    public void Paint_gives_a_range_on_top_of_the_zincs_and_excuses_no_thin_foil()
    {
        // 500 years are asked for and 10 are there by the zinc; paint that lasted for ever would not change that.
        SurveyLine line = Line(years: 500, paint: new PaintFilm(Lifetime.Unlimited, Lifetime.Unlimited));
        LineEstimate estimate = new Job("j", [line], Make.TakeOff()).Estimate().Lines[0];
        Assert.True(estimate.Duplex!.Earliest.IsUnlimited);
        Assert.Contains(estimate.Findings, static one => one.Rule.Id == RuleIds.LifeFallsShort);
        DuplexLife duplex = Of(paint: new PaintFilm(Years(8), Years(12))).Duplex!;
        Near.Equal(1.4 * ((80 / 2.1) + 8), duplex.Earliest.Duration.Years365, 1e-12);
        Assert.True(duplex.Latest > duplex.Earliest);
    }

    [Fact]
    public void Paint_comes_last_and_keeps_alkyd_away()
    {
        CrewStep last = Of(paint: new PaintFilm(Years(8), Years(12))).CrewSteps[^1];
        Assert.Equal(CrewActivity.Paint, last.Activity);
        Assert.Contains("no alkyd", last.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_come_before_all_work_and_paint_after_it() => Assert.Equal(
        [CrewActivity.Cautions, CrewActivity.Clean, CrewActivity.Lay, CrewActivity.RollDown, CrewActivity.Look, CrewActivity.Paint],
        Of([new TapeEnd(Mm(5), Mm(20))], new PaintFilm(Years(8), Years(12))).CrewSteps.Select(static step => step.Activity));

    private static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));

    private static SurveyLine Line(ValueList<TapeEnd>? ends = null, PaintFilm? paint = null, double years = 10) => new(
        "A", new RingLay(Pipe(), Stock(), Mm(20)), ZincExposure.FromCategory(CorrosivityCategory.C3), Years(years), ends: ends, paintOver: paint);

    private static LineEstimate Of(ValueList<TapeEnd>? ends = null, PaintFilm? paint = null) =>
        new Job("j", [Line(ends, paint)], Make.TakeOff()).Estimate().Lines[0];

    private static Finding[] Added(ValueList<TapeEnd>? ends = null, PaintFilm? paint = null)
    {
        Finding[] without = [.. Of().Findings];
        Finding[] with = [.. Of(ends, paint).Findings];
        Assert.Empty(without.Except(with));
        return [.. with.Where(one => !without.Contains(one))];
    }
}
