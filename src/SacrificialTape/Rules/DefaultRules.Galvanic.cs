using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Zinc beside bare steel.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Galvanic() =>
    [
        Maximum(RuleIds.BareMarginBesideTape, "Bare steel left beside a tape end", 1, TradeUnit.Millimeter, Severity.Warning,
            Basis.Judgement("the zinc at the end carries the demand of that steel and goes first; how fast is worked out from the widths. A millimetre is what a trimmed end leaves"),
            "Cover or paint the steel, or work out the life of the zinc beside it and inspect the ends first."),
        Statement(RuleIds.HolidayLifeMayFallShort, "The earliest life of zinc beside bare steel is shorter than required", Severity.Warning,
            Basis.FirstPrinciples("earliest life against required life"), "Cover the bare steel, or take thicker foil, or narrow the demand by measurement."),
        Statement(RuleIds.HolidayLifeFallsShort, "Even the latest life of zinc beside bare steel is shorter than required", Severity.Stop,
            Basis.FirstPrinciples("latest life against required life"), "Cover the bare steel, or take thicker foil."),
        Statement(RuleIds.CastAlloyCapacity, "The capacity is that of a cast anode alloy, and the zinc is rolled foil", Severity.Warning,
            Basis.Judgement("no capacity of plain rolled foil was found; 95 % of the theoretical one is an upper bound for it"),
            "Have the foil tested, or count its own corrosion separately with the theoretical capacity."),
        Statement(RuleIds.RecalledCapacity, "The capacity rests on a number recalled from a standard", Severity.Note,
            Basis.From(References.DnvCathodicProtection), "Check it against the document before you rely on the life."),
        Statement(RuleIds.OtherElectricalSystems, "Zinc works against everything metallic that is joined to this steel", Severity.Note,
            Basis.Judgement("copper earthing draws on the zinc far more than steel does; a cathodic protection system and stray currents are disturbed by it and disturb it"),
            "Where there is copper earthing, cathodic protection, a DC railway or welding nearby, ask a qualified engineer before anything is bonded."),
        Statement(RuleIds.GapNotProtected, "A bare gap is wider than zinc protects under this film", Severity.Warning,
            Basis.FirstPrinciples("potential in the middle of the gap against the one wanted"), "Tape or paint the gap."),
        Statement(RuleIds.ImmersionCriterionUnderFilm, "A criterion made for immersed or buried steel is used under a thin film", Severity.Warning,
            Basis.From(References.ProtectionCriteria, "no criterion for thin films was found"),
            "Read the reach as a comparison of cases, not as proof of protection; calibrate on exposed panels."),
        Maximum(RuleIds.FilmNotThin, "Film over bare width", 0.1, TradeUnit.One, Severity.Warning,
            Basis.Judgement("the potential is taken as the same through the film; that holds while the film is much thinner than the gap is wide"),
            "Do not use the reach of a thin film here."),
        Statement(RuleIds.PotentialTooLow, "Zinc holds the steel below the lowest potential that its criterion allows", Severity.Stop,
            Basis.From(References.SeawaterCriteria), "High-strength steel can take up hydrogen and crack: ask a qualified engineer first."),
    ];
}
