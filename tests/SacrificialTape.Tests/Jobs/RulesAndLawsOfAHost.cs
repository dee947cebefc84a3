using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>A host's own rule and its own loss law, through an estimate and through a choice.</summary>
public sealed class RulesAndLawsOfAHost
{
    private const string Id = "crew.pieces.maximum";

    private static readonly Rule Most = new(
        Id, "Pieces on a line", RuleKind.Maximum, new Measure(5, TradeUnit.One), Severity.Warning, Basis.Judgement("made up"), "Ask for a second crew.");

    [Fact]
    public void A_finding_of_an_own_rule_stands_after_those_of_the_library()
    {
        Job job = Job(Most, new FewPieces());
        JobEstimate estimate = job.Estimate();
        Finding[] with = [.. estimate.Lines[0].Findings];
        Finding[] without = [.. new Job("j", job.Lines, job.TakeOff, job.Rules).Estimate().Lines[0].Findings];
        Assert.Equal(without, with[..^1]);
        Assert.Equal(new Finding(Most, "A-1", new Measure(Rings, TradeUnit.One), new Measure(5, TradeUnit.One)), with[^1]);
        Assert.Equal(with, estimate.Findings.Take(with.Length));
    }

    [Fact]
    public void The_limit_of_an_own_rule_is_the_one_of_the_rule_set()
    {
        Rule enough = Most.WithLimit(new Measure(Rings, TradeUnit.One), Basis.Judgement("made up"));
        Assert.DoesNotContain(Job(enough, new FewPieces()).Estimate().Findings, static one => one.Rule.Id == Id);
        Rule less = Most.WithLimit(new Measure(Rings - 1, TradeUnit.One), Basis.Judgement("made up"));
        Assert.Contains(Job(less, new FewPieces()).Estimate().Findings, static one => one.Rule.Id == Id);
    }

    [Fact]
    public void An_own_stop_stops_the_crew_but_leaves_the_life()
    {
        LineEstimate line = Job(Most.WithSeverity(Severity.Stop, Basis.Judgement("made up")), new FewPieces()).Estimate().Lines[0];
        Assert.Equal(CrewActivity.Stop, Assert.Single(line.CrewSteps).Activity);
        Assert.Contains("Ask for a second crew.", line.CrewSteps[0].Text, StringComparison.Ordinal);
        Assert.True(line.LifeHolds);
    }

    [Fact]
    public void A_waiver_covers_a_finding_of_an_own_rule()
    {
        JobEstimate estimate = Job(Most, new FewPieces()).Estimate();
        var day = new DateOnly(2026, 11, 30);
        var sorted = FindingsUnderWaivers.Of(estimate.Findings, [new Waiver(Id, "A-1", "two crews came", "A. Person", day)], day);
        Assert.Equal(Id, Assert.Single(sorted.Waived).Finding.Rule.Id);
    }

    [Fact]
    public void A_rule_that_nobody_judges_by_is_named()
    {
        RuleSet set = Set(Most);
        Assert.Equal([Most], new Job("j", [Line()], Make.TakeOff(), set).UnjudgedRules);
        Assert.Empty(new Job("j", [Line()], Make.TakeOff(), set, [new FewPieces()]).UnjudgedRules);
        Assert.Empty(new Job("j", [Line()], Make.TakeOff()).UnjudgedRules);
    }

    [Fact]
    public void A_job_can_be_judged_under_another_set()
    {
        Job job = Job(Most, new FewPieces());
        RuleSet looser = Set(Most.WithLimit(new Measure(1000, TradeUnit.One), Basis.Judgement("made up")));
        Job under = job.Under(looser);
        Assert.Equal((job.Name, job.Lines, job.TakeOff, job.OwnRules, looser), (under.Name, under.Lines, under.TakeOff, under.OwnRules, under.Rules));
        Assert.Contains(job.Estimate().Findings, static one => one.Rule.Id == Id);
        Assert.DoesNotContain(under.Estimate().Findings, static one => one.Rule.Id == Id);
        Assert.Equal(job.Estimate().TakeOff, under.Estimate().TakeOff);
        Assert.Contains("Nothing to judge by", Assert.Throws<ArgumentException>(() => job.Under(RuleSet.Default)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_rules_that_cannot_be_are_refused()
    {
        Refused("the rule set 'ours' 1 has no rule 'crew.other'", Set(Most), new FewPieces("crew.other"));
        Refused($"'{RuleIds.MinimumLap}' is a rule of the library", RuleSet.Default, new FewPieces(RuleIds.MinimumLap));
        ArgumentException twice = Assert.Throws<ArgumentException>(static () => new Job("j", [Line()], Make.TakeOff(), Set(Most), [new FewPieces(), new FewPieces()]));
        Assert.Contains($"Two pieces of code judge by the rule '{Id}'", twice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_by_another_rule_is_the_hosts_mistake()
    {
        Job job = Job(Most, new Astray());
        Assert.Contains("found something by another rule", Assert.Throws<InvalidOperationException>(job.Estimate).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_own_rule_rejects_in_a_choice()
    {
        StraightPipe pipe = Pipe(168.3, 800);
        TapeChoice Choose(ValueList<IOwnRule> own) => TapeChoice.Among(
            new LineNeeds("A-1", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10))),
            new ChoiceOptions(
                [Stock()],
                [Mm(20)],
                [1],
                [LayMaker.Rings(pipe)],
                new CostPrices([new RollPrice(Stock(), new Money(40, "EUR"))], new LabourRate(new Money(45, "EUR")), [new LabourNorm(LayMaker.Rings(pipe).Labour, LabourMeasure.Pieces, Duration.FromMinutes(3))]),
                Make.TakeOff(),
                rules: Set(Most),
                ownRules: own));
        Assert.Single(Choose([]).Accepted);
        Assert.Equal(Id, Assert.Single(Assert.Single(Choose([new FewPieces()]).Rejected).Findings).Rule.Id);
    }

    [Fact]
    public void A_line_lives_by_its_own_laws()
    {
        var twice = new TwiceAsFast();
        ZincExposure exposure = ZincExposure.FromCategory(CorrosivityCategory.C3);
        var years = Lifetime.Of(Duration.FromYears365(15));
        var lay = new RingLay(Pipe(), Stock(), Mm(20));
        SurveyLine own = new("A-1", lay, exposure, years, laws: [twice]);
        SurveyLine linear = new("A-2", lay, exposure, years, laws: [LinearLoss.Law]);
        SurveyLine usual = new("A-3", lay, exposure, years);
        ValueList<LineEstimate> lines = new Job("j", [own, linear, usual], Make.TakeOff()).Estimate().Lines;
        Near.Equal(lines[1].Life.Earliest.Duration.Years365 / 2, lines[0].Life.Earliest.Duration.Years365, 1e-12);
        Assert.Same(twice, Assert.Single(lines[0].Life.ByLaw).Law);
        Assert.Equal(LawsByMedium.For(exposure), lines[2].Life.ByLaw.Select(static one => one.Law));
        Assert.Null(usual.Laws);
        Assert.Contains("at least one loss law", Assert.Throws<ArgumentException>(() => new LineNeeds("A-1", exposure, years, laws: [])).Message, StringComparison.Ordinal);
    }

    // ceil((800 - 20) / (100 - 20)) = 10 rings.
    private const int Rings = 10;

    private static SurveyLine Line() => new(
        "A-1", new RingLay(Pipe(168.3, 800), Stock(), Mm(20)), ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10)));

    private static RuleSet Set(Rule rule) => RuleSet.Default.With("ours", "1", rule);

    private static Job Job(Rule rule, IOwnRule code) => new("j", [Line()], Make.TakeOff(), Set(rule), [code]);

    private static void Refused(string message, RuleSet set, IOwnRule code)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new Job("j", [Line()], Make.TakeOff(), set, [code]));
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
        Assert.Equal("ownRules", refused.ParamName);
    }

    private sealed class FewPieces(string id = Id) : IOwnRule
    {
        public string RuleId => id;

        public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life)
        {
            if (rule.Judge(new Measure(line.Lay.Strips.Sum(static strip => strip.Count), TradeUnit.One), line.Tag) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private sealed class Astray : IOwnRule
    {
        public string RuleId => Id;

        public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life) => [RuleSet.Default[RuleIds.EdgeJoint].State(line.Tag)];
    }

    private sealed class TwiceAsFast : ILossLaw
    {
        public string Name => "twice as fast";

        public Basis Basis { get; } = Basis.Judgement("made up");

        public Length Loss(CorrosionRate firstYear, Duration time) => LinearLoss.Law.Loss(firstYear, 2 * time);

        public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => LinearLoss.Law.TimeToLoss(firstYear, loss / 2);

        public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) => CorrosionRate.FromMicrometersPerYear(2 * firstYear.MicrometersPerYear);

        public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss) => LinearLoss.Law.ShowTimeToLoss(firstYear, loss / 2);
    }
}
