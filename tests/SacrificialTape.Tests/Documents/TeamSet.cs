using FsCheck;
using FsCheck.Fluent;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>An invented team's rule set: limits moved, severities raised, rules of its own, approvals and waivers.</summary>
internal static class TeamSet
{
    private static readonly string[] Texts = ["plain", "with \"quotes\" and \\", "zinc \u03BCm \u00B0C", "two\nlines\tand a tab", "\U0001F600 <b>&amp;", "\u0000 and \u001F"];

    internal static RuleSet Small { get; } = RuleSet.Default.With(
        "Estuary team", "2026.2", RuleSet.Default[RuleIds.MinimumLap].WithLimit(Measure.Parse("15 mm"), Basis.OwnExperience("trial wraps of May")));

    /// <summary>A set as it stands within another document, with all that may stand beside its rules; null where it is only named.</summary>
    internal static RuleSetDocument? Stated(Random random, RuleSet rules) => random.Next(3) == 0 ? null : new(
        rules,
        random.Next(2) == 0 ? RuleSet.Default : null,
        [new RuleApproval(RuleIds.MinimumLap, Texts[random.Next(Texts.Length)], new DateOnly(2026, 3, 4))],
        [new Waiver(RuleIds.MinimumLap, "L-0 plain", "why", "who", new DateOnly(2026, 5, 6), random.Next(2) == 0 ? null : new DateOnly(2035, 5, 6))],
        RuleSetDocument.Reference.Cases.Take(random.Next(3)));

    /// <summary>Rule sets that differ from the library's in many ways, for properties.</summary>
    internal static Gen<RuleSet> Sets { get; } =
        from name in Gen.Elements(Texts)
        from version in Gen.Elements("1", "2026.2", "b")
        from changed in Gen.ListOf(Changed())
        from own in Gen.ListOf(Own())
        select new RuleSet(name, version, Merge([.. changed, .. own]));

    internal static Gen<RuleSetDocument> Files { get; } =
        from rules in Sets
        from based in Gen.Elements(true, false)
        from approved in Gen.SubListOf<Rule>(rules.Rules)
        from person in Gen.Elements(Texts)
        from waivers in Gen.ListOf(Given(rules))
        from cases in Gen.SubListOf<VerificationCase>(RuleSetDocument.Reference.Cases)
        select new RuleSetDocument(rules, based ? RuleSet.Default : null, approved.Select(rule => new RuleApproval(rule.Id, person, new DateOnly(2026, 3, 4))), waivers, cases);

    internal static Arbitrary<RuleSetDocument> AnyFile => Arb.From(Files);

    private static Gen<Rule> Changed() =>
        from rule in Gen.Elements<Rule>(RuleSet.Default.Rules)
        from factor in Gen.Choose(0, 20)
        from severity in Gen.Elements(Severity.Note, Severity.Warning, Severity.Stop)
        from basis in Bases()
        from validity in Periods()
        select Moved(rule, factor, severity, basis).WithValidity(validity);

    private static Rule Moved(Rule rule, int step, Severity severity, Basis basis)
    {
        // Not more than a hundredth: further could make pairs of limits contradict each other, which has tests of its own.
        Rule same = rule.WithSeverity(severity, basis);
        return rule.Limit is { } limit ? same.WithLimit(new Measure(limit.Number * (1 - (step * 0.0005)), limit.Unit), basis) : same;
    }

    private static Gen<Rule> Own() =>
        from id in Gen.Elements("team.a", "team.b", "team.c")
        from title in Gen.Elements(Texts)
        from remedy in Gen.Elements(Texts)
        from kind in Gen.Elements(RuleKind.Minimum, RuleKind.Maximum, RuleKind.Below, RuleKind.Allowance, RuleKind.Statement)
        from number in Gen.Choose(0, 1_000_000)
        from unit in Gen.Elements(TradeUnit.Millimeter, TradeUnit.Inch, TradeUnit.DegreeCelsius, TradeUnit.One, TradeUnit.Percent)
        from severity in Gen.Elements(Severity.Note, Severity.Warning, Severity.Stop)
        from basis in Bases()
        from validity in Periods()
        select new Rule(id, title, kind, kind == RuleKind.Statement ? null : new Measure(number / 7.0, unit), severity, basis, remedy).WithValidity(validity);

    private static Gen<Basis> Bases() =>
        from note in Gen.Elements(Texts)
        from source in Gen.Elements<SourceReference>(References.All)
        from basis in Gen.Elements(
            Basis.CommonPractice(), Basis.CommonPractice(note), Basis.Judgement(note), Basis.OwnExperience(note), Basis.FirstPrinciples(note),
            Basis.From(source), Basis.From(source, note))
        select basis;

    private static Gen<ValidityPeriod?> Periods() => Gen.Elements(
        null, new ValidityPeriod(new DateOnly(2026, 1, 1), null), new ValidityPeriod(null, new DateOnly(2026, 12, 31)),
        new ValidityPeriod(new DateOnly(2026, 1, 1), new DateOnly(2026, 1, 1)));

    private static Gen<Waiver> Given(RuleSet rules) =>
        from rule in Gen.Elements<Rule>(rules.Rules)
        from text in Gen.Elements(Texts)
        from ends in Gen.Elements(true, false)
        select new Waiver(rule.Id, text, text, text, new DateOnly(2026, 5, 6), ends ? new DateOnly(2026, 5, 6) : null);

    private static IEnumerable<Rule> Merge(IReadOnlyList<Rule> changed)
    {
        Dictionary<string, Rule> byId = RuleSet.Default.Rules.ToDictionary(static rule => rule.Id, StringComparer.Ordinal);
        foreach (Rule rule in changed)
        {
            byId[rule.Id] = rule;
        }

        return byId.Values;
    }
}
