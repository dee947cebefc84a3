using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Snippets;

/// <summary>What docs/rules.md quotes.</summary>
public static class RulesPage
{
    public static void OwnRule()
    {
        #region own-rule
        Rule wander = RuleSet.Default[RuleIds.HandWander].WithLimit(
            new Measure(4, TradeUnit.Millimeter),
            Basis.OwnExperience("invented: trial wrap of 30 turns, widest wander"));
        RuleSet ours = RuleSet.Default.With("Our crew", "2", wander);
        LayChoices choices = LayChoices.FromRules(ours);
        Console.WriteLine($"{ours}: wander {choices.HandWander.Millimeters} mm, {ours[RuleIds.HandWander].Basis}");
        #endregion
    }
}
