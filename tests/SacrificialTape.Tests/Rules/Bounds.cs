namespace SacrificialTape.Tests.Rules;

public sealed class Bounds
{
    public static TheoryData<string> Judged =>
        [.. RuleSet.Default.Rules.Where(static rule => rule.Kind is RuleKind.Minimum or RuleKind.Maximum).Select(static rule => rule.Id)];

    public static TheoryData<string> Exclusive =>
        [.. RuleSet.Default.Rules.Where(static rule => rule.Kind is RuleKind.Below).Select(static rule => rule.Id)];

    public static TheoryData<string> Others =>
        [.. RuleSet.Default.Rules.Where(static rule => rule.Kind is RuleKind.Allowance or RuleKind.Statement).Select(static rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Judged))]
    public void A_rule_holds_at_its_bound_and_breaks_a_thousandth_beyond(string id)
    {
        Rule rule = RuleSet.Default[id];
        Measure limit = rule.Limit!.Value;
        double beyond = rule.Kind == RuleKind.Maximum ? 1.001 : 1 / 1.001;
        Assert.Null(rule.Judge(limit, "here"));
        Assert.Null(rule.Judge(new Measure(Math.BitIncrement(limit.Number), limit.Unit), "here"));
        Assert.Null(rule.Judge(new Measure(Math.BitDecrement(limit.Number), limit.Unit), "here"));
        Assert.Null(rule.Judge(new Measure(limit.Number / beyond, limit.Unit), "here"));
        var measured = new Measure(limit.Number * beyond, limit.Unit);
        Finding broken = Assert.IsType<Finding>(rule.Judge(measured, "here"));
        Assert.Equal("here", broken.Subject);
        Assert.Equal(measured, broken.Measured);
        Assert.Equal(limit, broken.Limit);
        Assert.Equal(rule.Severity, broken.Severity);
        string said = $"{rule.Title}: {measured}, {(rule.Kind == RuleKind.Maximum ? "allowed at most" : "wanted at least")} {limit}. {rule.Remedy} Basis: {rule.Basis}.";
        Assert.Equal(said, broken.Message);
        Assert.Equal($"{rule.Severity} [{id}] here: {said}", broken.ToString());
    }

    [Theory]
    [MemberData(nameof(Exclusive))]
    public void A_rule_with_an_excluded_bound_breaks_at_it_and_holds_a_thousandth_short(string id)
    {
        Rule rule = RuleSet.Default[id];
        Measure limit = rule.Limit!.Value;
        Assert.Null(rule.Judge(new Measure(limit.Number / 1.001, limit.Unit), "here"));
        Assert.NotNull(rule.Judge(new Measure(Math.BitIncrement(limit.Number), limit.Unit), "here"));
        Assert.NotNull(rule.Judge(new Measure(Math.BitDecrement(limit.Number), limit.Unit), "here"));
        Finding broken = Assert.IsType<Finding>(rule.Judge(limit, "here"));
        Assert.Equal($"{rule.Title}: {limit}, allowed below {limit}. {rule.Remedy} Basis: {rule.Basis}.", broken.Message);
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Nothing_is_measured_against_an_allowance_or_a_statement(string id) => Assert.Contains(
        "nothing is measured against it",
        Assert.Throws<InvalidOperationException>(() => RuleSet.Default[id].Judge(new Measure(1, TradeUnit.One), "here")).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_measure_in_another_unit_of_the_kind_is_judged_by_meaning()
    {
        Rule lap = RuleSet.Default[RuleIds.MinimumLap];
        Assert.Null(lap.Judge(new Measure(1, TradeUnit.Centimeter), "here"));
        Assert.NotNull(lap.Judge(new Measure(0.99, TradeUnit.Centimeter), "here"));
        Assert.Throws<InvalidOperationException>(() => lap.Judge(new Measure(10, TradeUnit.Year), "here"));
    }

    [Fact]
    public void A_teams_own_limit_replaces_the_default_and_leaves_it_alone()
    {
        Rule own = RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(15, TradeUnit.Millimeter), Basis.OwnExperience("trial wraps"));
        RuleSet team = RuleSet.Default.With("ours", "3", own);
        Assert.NotNull(team[RuleIds.MinimumLap].Judge(new Measure(12, TradeUnit.Millimeter), "here"));
        Assert.Null(RuleSet.Default[RuleIds.MinimumLap].Judge(new Measure(12, TradeUnit.Millimeter), "here"));
        Assert.Equal(RuleSet.Default.Rules.Count, team.Rules.Count);
        Assert.Throws<InvalidOperationException>(() => own.WithLimit(new Measure(1, TradeUnit.Year), own.Basis));
        Assert.Throws<InvalidOperationException>(static () => RuleSet.Default[RuleIds.OldPaint].WithLimit(new Measure(1, TradeUnit.One), Basis.CommonPractice()));
    }

    [Fact]
    public void The_order_of_rules_does_not_make_a_set_another()
    {
        var turned = new RuleSet(RuleSet.Default.Name, RuleSet.Default.Version, RuleSet.Default.Rules.Reverse());
        Assert.Equal(RuleSet.Default, turned);
        Assert.Equal(RuleSet.Default.GetHashCode(), turned.GetHashCode());
    }

    [Fact]
    public void Bad_rules_are_refused()
    {
        Rule lap = RuleSet.Default[RuleIds.MinimumLap];
        Assert.Contains("'lap.minimum' stands twice in the set 'x'", Assert.Throws<ArgumentException>(() => new RuleSet("x", "1", [lap, lap])).Message, StringComparison.Ordinal);
        Assert.Contains("needs a limit", Assert.Throws<ArgumentException>(() => new Rule("a", "b", RuleKind.Minimum, null, Severity.Note, lap.Basis, "c")).Message, StringComparison.Ordinal);
        Assert.Contains("takes no limit", Assert.Throws<ArgumentException>(() => new Rule("a", "b", RuleKind.Statement, lap.Limit, Severity.Note, lap.Basis, "c")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new Rule(" ", "b", RuleKind.Statement, null, Severity.Note, lap.Basis, "c"));
        Assert.Contains("has no rule 'nothing'", Assert.Throws<KeyNotFoundException>(static () => RuleSet.Default["nothing"]).Message, StringComparison.Ordinal);
    }
}
