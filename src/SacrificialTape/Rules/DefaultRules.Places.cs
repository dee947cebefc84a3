using SacrificialTape.Provenance;

namespace SacrificialTape.Rules;

/// <content>Rates indoors and in soil.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Places() =>
    [
        Statement(RuleIds.IndoorRate, "The rate is that of an indoor atmosphere of low corrosivity", Severity.Note,
            Basis.Judgement("at such rates the zinc outlasts adhesive and building; condensation, cleaning agents, vapours of acids, pools and salt are outside these categories"),
            "Keep the room dry and as it was when it was classed; read the life as 'the zinc is not what ends first'."),
        Statement(RuleIds.IndoorExample, "The category was taken from a standard's example of a room", Severity.Warning,
            Basis.From(References.IndoorExamples, "two rooms of one kind can differ by a category or two; no measurement stands behind it"),
            "Hang zinc coupons in the room for a year, or take the next worse category."),
        Statement(RuleIds.SoilConstants, "Loss in soil rests on weakly recalled constants", Severity.Warning,
            Basis.From(References.SoilConstants, "rates of galvanized steel 2 to 16 years old scatter by 30 to 60 % of their mean, as NCHRP Report 675 says on page 20"),
            "Take them for an order of size. Bury coupons in that soil and use what they lose."),
        Statement(RuleIds.SoilKind, "Soils differ: grey, poorly aerated soil and clay take more zinc than red or brown, aerated soil and sand", Severity.Note,
            Basis.From(References.SoilColour), "Look at the soil at the depth of the steel, and take the worst along the line."),
    ];
}
