using SacrificialTape.Documents;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Fuzz;

/// <summary>Small documents to begin from. Written anew for each run: a parent's fingerprint follows its rules.</summary>
internal static class Seeds
{
    internal static void Write(string folder)
    {
        Rule lap = RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(15, TradeUnit.Millimeter), Basis.OwnExperience("trial wraps"))
            .WithValidity(new ValidityPeriod(new DateOnly(2026, 1, 1), new DateOnly(2027, 1, 1)));
        var own = new Rule(
            "team.wind", "Wind", RuleKind.Maximum, new Measure(8, TradeUnit.One), Severity.Warning, Basis.From(References.TapingACylinder, "n"), "Wait.");
        RuleSet one = RuleSet.Default.With("t", "1", lap);
        RuleSet both = one.With("t", "1", own);
        Save("small", new RuleSetDocument(one, RuleSet.Default).Write());
        Save("team", new RuleSetDocument(
            both, RuleSet.Default, [new RuleApproval(lap.Id, "A", new DateOnly(2026, 11, 2))],
            [new Waiver(lap.Id, "BR-101", "why", "who", new DateOnly(2026, 1, 1), new DateOnly(2026, 2, 1))], RuleSetDocument.Reference.Cases.Take(1)).Write());
        Save("no-parent", """{"document":"rule set","schema":1,"name":"n","version":"v","rules":[]}""");

        void Save(string name, string text) => File.WriteAllText(Path.Combine(folder, name + ".json"), text);
    }
}
