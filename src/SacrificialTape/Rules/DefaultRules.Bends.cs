using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Lays on bends, and strips along welds.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Bends() =>
    [
        Statement(RuleIds.RingsInstead, "A spiral strains the strip on this bend more than allowed", Severity.Warning,
            Basis.Judgement("a ring lies along a shortest line and lacks the spiral's sideways bending; the limits themselves are the rules on pucker and stretch"),
            "Lay rings on the bend, or take a narrower strip with a smaller advance."),
        Minimum(RuleIds.MinimumWeldReach, "Reach of a weld strip beyond the weld on each side", 10, TradeUnit.Millimeter, Severity.Warning,
            Basis.Judgement("as far onto clean plate as strips lap on each other"),
            "Take a wider strip along the weld."),
    ];
}
