using SacrificialTape.Provenance;

namespace SacrificialTape.Rules;

/// <content>Rules about the rule set itself.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Sets() =>
    [
        Statement(RuleIds.RuleOutOfValidity, "A rule is used outside its validity", Severity.Warning,
            Basis.FirstPrinciples("the day of use against the days that the team set"),
            "Ask whoever approved the rule whether it still stands, and give it a new period."),
        Statement(RuleIds.WaiverUnused, "A waiver that waives nothing here", Severity.Note,
            Basis.FirstPrinciples("no finding has its rule and place, or it had ended by then"),
            "Remove it, or correct its rule, its place or its last day."),
    ];
}
