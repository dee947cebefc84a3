using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>What must hold between the parts of a rule set document, however it came about.</summary>
internal static class RuleSetContents
{
    internal static IEnumerable<string> Faults(RuleSetDocument document) =>
    [
        .. document.Rules.Rules.Select(RuleSanity.Impossible).OfType<string>(),
        .. Contradictions(document.Rules),
        .. document.BasedOn is { } parent ? parent.Rules.Select(rule => Departure(rule, document.Rules)).OfType<string>() : [],
        .. document.BasedOn is { } named && SameNameOtherRules(document.Rules, named) is { } confused ? [confused] : Array.Empty<string>(),
        .. document.Approvals.Where(approval => !document.Rules.TryGet(approval.RuleId, out _)).Select(static approval => $"Rule '{approval.RuleId}' is approved but not in the set."),
        .. document.Approvals.GroupBy(static approval => approval.RuleId, StringComparer.Ordinal).Where(static group => group.Count() > 1).Select(static group => $"Rule '{group.Key}' is approved twice."),
        .. document.Waivers.Where(waiver => !document.Rules.TryGet(waiver.RuleId, out _)).Select(static waiver => $"A waiver names rule '{waiver.RuleId}', which is not in the set."),
        .. document.Cases.GroupBy(static one => one.Id, StringComparer.Ordinal).Where(static group => group.Count() > 1).Select(static group => $"The case '{group.Key}' stands twice."),
    ];

    /// <summary>Two sets of one name and version could not be told apart by whoever reads of one of them.</summary>
    internal static string? SameNameOtherRules(RuleSet rules, RuleSet parent) =>
        rules.Name == parent.Name && rules.Version == parent.Version && !rules.Equals(parent)
            ? $"The set has name and version of its parent, '{parent}', but other rules. Give it a name or a version of its own."
            : null;

    internal static IEnumerable<string> Contradictions(RuleSet rules) => RuleSanity.Contradictions(rules).Select(static pair => Contradiction(pair.Lower, pair.Upper));

    internal static string Contradiction(Rule lower, Rule upper) =>
        $"'{lower.Id}' ({MeasureText.Exact(lower.Limit!.Value)}) is above '{upper.Id}' ({MeasureText.Exact(upper.Limit!.Value)}).";

    private static string? Departure(Rule inherited, RuleSet rules)
    {
        if (!rules.TryGet(inherited.Id, out Rule? rule))
        {
            return $"Rule '{inherited.Id}' of the parent set is missing: a set may change a rule of its parent, not drop it.";
        }

        bool sameKind = rule.Kind == inherited.Kind && rule.Limit?.Key.Unit == inherited.Limit?.Key.Unit;
        return sameKind ? null : $"Rule '{inherited.Id}' is of another kind than in the parent set.";
    }
}
