namespace SacrificialTape.Tests.Rules;

public sealed class RuleSetChanges
{
    [Fact]
    public void A_difference_names_each_rule_and_what_differs()
    {
        Rule own = new("team.own", "Wind while laying", RuleKind.Maximum, Measure.Parse("10"), Severity.Warning, Basis.Judgement("foil flaps"), "Wait.");
        Rule lap = RuleSet.Default[RuleIds.MinimumLap].WithLimit(Measure.Parse("15 mm"), Basis.OwnExperience("trial wraps")).WithSeverity(Severity.Stop, Basis.OwnExperience("trial wraps"));
        RuleSet team = RuleSet.Default.With("Estuary team", "3", lap).With("Estuary team", "3", own);
        var forth = RuleSetDifference.Between(RuleSet.Default, team);
        Assert.Equal(
            """
            SacrificialTape common practice, version 1 -> Estuary team, version 3: 2 rule(s) differ
            lap.minimum: limit 10 mm -> 15 mm; severity Warning -> Stop; basis common practice, no source -> own experience: trial wraps
            team.own: added: Wind while laying, 10, Warning
            """.ReplaceLineEndings("\n"), forth.ToString());
        var back = RuleSetDifference.Between(team, RuleSet.Default);
        Assert.Equal(["lap.minimum", "team.own"], back.Changes.Select(static change => change.Id));
        Assert.Equal("team.own: removed: Wind while laying, 10, Warning", back.Changes[1].ToString());
        Assert.Equal((lap, RuleSet.Default[RuleIds.MinimumLap]), (back.Changes[0].Before, back.Changes[0].After));
        Assert.EndsWith(": no rule differs", RuleSetDifference.Between(team, team).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_are_shown_to_their_last_digit_and_other_units_are_no_change()
    {
        RuleSet finer = RuleSet.Default.With("a", "1", RuleSet.Default[RuleIds.MinimumLap].WithLimit(Measure.Parse("10.00000001 mm"), Basis.CommonPractice()));
        Assert.Contains("limit 10 mm -> 10.00000001 mm", RuleSetDifference.Between(RuleSet.Default, finer).ToString(), StringComparison.Ordinal);
        RuleSet cm = RuleSet.Default.With("a", "1", RuleSet.Default[RuleIds.MinimumLap].WithLimit(Measure.Parse("1 cm"), Basis.CommonPractice()));
        Assert.Empty(RuleSetDifference.Between(RuleSet.Default, cm).Changes);
    }

    [Fact]
    public void A_document_described_otherwise_is_a_change()
    {
        SourceReference source = References.All[0];
        var other = new SourceReference(source.Id, source.Document, source.Clause, "something else", source.Reading);
        Rule Own(SourceReference from) => new("team.own", "t", RuleKind.Statement, null, Severity.Note, Basis.From(from), "r");
        RuleChange change = Assert.Single(RuleSetDifference.Between(new RuleSet("a", "1", [Own(source)]), new RuleSet("a", "1", [Own(other)])).Changes);
        Assert.Equal("team.own: basis rests on a document that is described otherwise", change.ToString());
    }

    [Fact]
    public void Rules_are_judged_by_their_days()
    {
        Rule limited = RuleSet.Default[RuleIds.MinimumLap].WithValidity(new ValidityPeriod(new DateOnly(2026, 1, 1), new DateOnly(2026, 12, 31)));
        RuleSet set = RuleSet.Default.With("a", "1", limited);
        Assert.Empty(set.JudgeValidity(new DateOnly(2026, 1, 1)));
        Assert.Empty(set.JudgeValidity(new DateOnly(2026, 12, 31)));
        Finding late = Assert.Single(set.JudgeValidity(new DateOnly(2027, 1, 1)));
        Assert.Equal((RuleIds.RuleOutOfValidity, "rule lap.minimum, valid from 2026-01-01 until 2026-12-31, used on 2027-01-01"), (late.Rule.Id, late.Subject));
        Assert.Single(set.JudgeValidity(new DateOnly(2025, 12, 31)));
        Assert.Equal(limited.Validity, limited.WithLimit(Measure.Parse("12 mm"), Basis.CommonPractice()).WithSeverity(Severity.Stop, Basis.CommonPractice()).Validity);
    }

    [Fact]
    public void A_period_needs_a_day_and_runs_forward()
    {
        Assert.Contains("first day", Assert.Throws<ArgumentException>(static () => new ValidityPeriod(null, null)).Message, StringComparison.Ordinal);
        Assert.Contains("2026-02-01, is after the last, 2026-01-01", Assert.Throws<ArgumentException>(static () => new ValidityPeriod(new DateOnly(2026, 2, 1), new DateOnly(2026, 1, 1))).Message, StringComparison.Ordinal);
    }
}
