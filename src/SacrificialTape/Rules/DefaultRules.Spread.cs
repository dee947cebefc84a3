using SacrificialTape.Provenance;

namespace SacrificialTape.Rules;

/// <content>Lives with their uncertainty.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Spread() =>
    [
        Statement(RuleIds.ConfidenceNotReached, "The required life is reached less surely than wanted", Severity.Warning,
            Basis.FirstPrinciples("probability of reaching the required life against the one wanted"),
            "Take thicker foil or one more layer, or measure the site: a narrower rate is the cheapest certainty."),
        Statement(RuleIds.SpreadIsJudgement, "How widely rate, usable share and thickness are spread is partly a judgement", Severity.Note,
            Basis.Judgement("the standard's s is read as one standard deviation, bounds of a category as quantiles; no source gives the usable share of thin foil. Coupons on the site calibrate it"),
            "Read the percentiles as a comparison of choices, and plan inspections."),
    ];
}
