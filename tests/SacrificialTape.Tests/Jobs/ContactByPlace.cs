using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>A line whose survey gives the windows at their places.</summary>
public sealed class ContactByPlace
{
    private static readonly RingLay Lay = new(Pipe(), Stock(), Mm(20));

    [Fact]
    public void It_is_judged_by_place_and_not_on_the_average()
    {
        LineEstimate good = Estimate(Line(WindowPlan.For(Lay, RuleSet.Default)));
        string[] said = Ids(good);
        Assert.DoesNotContain(RuleIds.WindowPositionsUnknown, said);
        Assert.DoesNotContain(RuleIds.BareRatioInMetre, said);
        Assert.Contains(RuleIds.OldPaint, said);
        Assert.Contains(RuleIds.WindowEdges, said);
        Assert.NotNull(good.ProvenContact);
        Assert.Null(good.Contact);
        string[] bare = Ids(Estimate(Line(new WindowLayout(new(Pipe()), []))));
        Assert.Contains(RuleIds.NoWindow, bare);
        Assert.Contains(RuleIds.StripsWithoutSteel, bare);
        Assert.Contains(RuleIds.BareRatioInMetre, bare);
    }

    [Theory]
    [InlineData(UnderTape.TightMillScale)]
    [InlineData(UnderTape.TightRust)]
    public void Tight_scale_and_rust_are_judged_as_paint_is(UnderTape under)
    {
        string[] said = Ids(Estimate(Line(new WindowLayout(new(Pipe()), []), under)));
        Assert.Contains(RuleIds.BareRatioInMetre, said);
        Assert.Contains(RuleIds.NoWindow, said);
        Assert.Contains(RuleIds.ScaleAsPaint, said);
        Assert.DoesNotContain(RuleIds.OldPaint, said);
    }

    [Fact]
    public void The_crew_gets_the_marks()
    {
        WindowLayout layout = WindowPlan.For(Lay, RuleSet.Default);
        string text = Estimate(Line(layout)).CrewSteps.Single(static step => step.Activity == CrewActivity.Windows).Text;
        Assert.Contains("Along from the start; around from the line along the top", text, StringComparison.Ordinal);
        Assert.All(new MarkingList(layout).Marks, mark => Assert.Contains(mark.ToString(), text, StringComparison.Ordinal));
        Assert.Contains("tape them the same day", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Windows_by_count_and_by_place_are_refused()
    {
        var layout = new WindowLayout(new(Pipe()), []);
        var counted = new SteelCondition(windowsInPaint: new ContactWindows(5, Area.FromSquareCentimeters(25)));
        ArgumentException both = Assert.Throws<ArgumentException>(() => new LineNeeds("A-1", Exposed, Lifetime.Of(Duration.FromYears365(5)), counted, windows: layout));
        Assert.Contains("by count and by place", both.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new LineNeeds("A-1", Exposed, Lifetime.Of(Duration.FromYears365(5)), windows: layout)
            .With(new RingLay(Pipe(100), Stock(), Mm(20))));
    }

    private static ZincExposure Exposed => ZincExposure.FromCategory(CorrosivityCategory.C3);

    private static SurveyLine Line(WindowLayout layout, UnderTape under = UnderTape.SoundPaint) =>
        new("A-1", Lay, Exposed, Lifetime.Of(Duration.FromYears365(5)), windows: layout, under: under);

    private static LineEstimate Estimate(SurveyLine line) => new Job("job", [line], Make.TakeOff()).Estimate().Lines[0];

    private static string[] Ids(LineEstimate estimate) => [.. estimate.Findings.Select(static one => one.Rule.Id)];
}
