using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

public sealed class FindingsOfALine
{
    private static readonly Lifetime Ten = Lifetime.Of(Duration.FromYears365(10));

    [Fact]
    public void Wet_at_a_temperature_not_stated_is_said()
    {
        Assert.Contains(RuleIds.WetTemperatureUnknown, Said(Line(steel: new SteelCondition(wetInService: true))));
        Assert.DoesNotContain(RuleIds.WetTemperatureUnknown, Said(Line()));
        Assert.DoesNotContain(RuleIds.WetTemperatureUnknown, Said(Line(steel: new SteelCondition(serviceTemperature: Temperature.FromDegreesCelsius(20), wetInService: true))));
    }

    [Fact]
    public void Aluminium_gets_a_note() => Assert.Contains(RuleIds.Aluminium, Said(Line(steel: new SteelCondition(SubstrateMetal.Aluminium))));

    [Fact]
    public void The_weld_strip_is_judged_like_any_other()
    {
        var faced = new StripStock(Tape(0.9, faced: true), Mm(5), Length.FromMeters(30));
        string[] said = Said(Line(welds: new WeldWork([new GirthWelds(Mm(168.3), 1)], faced, Length.Zero)));
        Assert.Contains(RuleIds.MaximumFoilThickness, said);
        Assert.Contains(RuleIds.MinimumStripWidth, said);
        Assert.Contains(RuleIds.FacingFilmUnderLay, said);
        Assert.Contains(RuleIds.MinimumEndLap, said);
        Assert.DoesNotContain(RuleIds.MinimumEndLap, Said(Line(welds: new WeldWork([new LongitudinalWelds(Mm(5000), 1)], Stock(), Length.Zero))));
    }

    [Fact]
    public void Recalled_bounds_of_CX_are_a_warning_of_their_own()
    {
        Assert.Contains(RuleIds.RecalledCategory, Said(Line(CorrosivityCategory.CX)));
        Assert.DoesNotContain(RuleIds.RecalledCategory, Said(Line(CorrosivityCategory.C5)));
    }

    [Fact]
    public void Lines_of_one_tape_in_two_exposures_have_two_lives()
    {
        ILay lay = new RingLay(Pipe(), Stock(), Mm(20));
        JobEstimate estimate = new Job(
            "j",
            [
                new SurveyLine("A", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Ten),
                new SurveyLine("B", lay, ZincExposure.FromCategory(CorrosivityCategory.C5), Ten),
            ],
            Make.TakeOff()).Estimate();
        Near.Equal(80 / 2.1, estimate.Lines[0].Life.Earliest.Duration.Years365, 1e-12);
        Near.Equal(80 / 8.4, estimate.Lines[1].Life.Earliest.Duration.Years365, 1e-12);
    }

    [Fact]
    public void Weld_strips_come_before_the_lay()
    {
        SurveyLine line = Line(welds: new WeldWork([new GirthWelds(Mm(168.3), 1)], Stock(), Mm(20)));
        LineEstimate estimate = new Job("j", [line], Make.TakeOff()).Estimate().Lines[0];
        Assert.Equal([StripPurpose.Weld, StripPurpose.Ring], estimate.Strips.Select(static strip => strip.Purpose));
    }

    [Fact]
    public void Sets_of_the_same_name_with_another_limit_are_two()
    {
        Rule other = RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(12, TradeUnit.Millimeter), Basis.CommonPractice());
        Assert.NotEqual(RuleSet.Default, RuleSet.Default.With(RuleSet.Default.Name, RuleSet.Default.Version, other));
    }

    [Fact]
    public void A_surface_that_is_all_window_is_taken_even_when_the_sum_ends_a_digit_over()
    {
        var contact = new BareContact(Area.FromSquareMeters(0.3), new ContactWindows(3, Area.FromSquareMeters(0.1)));
        Assert.Equal(10_000, contact.Ratio.SquareCentimetersPerSquareMeter);
    }

    private static SurveyLine Line(CorrosivityCategory category = CorrosivityCategory.C3, SteelCondition? steel = null, WeldWork? welds = null) =>
        new("A", new RingLay(Pipe(), Stock(), Mm(20)), ZincExposure.FromCategory(category), Ten, steel, welds);

    private static string[] Said(SurveyLine line) =>
        [.. new Job("j", [line], Make.TakeOff()).Estimate().Lines[0].Findings.Select(static one => one.Rule.Id)];
}
