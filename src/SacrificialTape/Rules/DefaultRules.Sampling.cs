using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Inspection while and after laying, and batches of tape.</content>
internal static partial class DefaultRules
{
    private const string ForPaint = "a paint rule, used on tape by choice";
    private const string LookAgain = "Find the spot, measure round it, and lay over or strip and lay anew.";

    private static IEnumerable<Rule> Sampling() => [.. ThicknessAcceptance(), .. HoldPoints(), .. Batches()];

    private static IEnumerable<Rule> ThicknessAcceptance() =>
    [
        Statement(RuleIds.NotInspected, "Not inspected", Severity.Warning,
            Basis.FirstPrinciples("what was not looked at is not taken as good"), "Look at it, or sign why not."),
        Statement(RuleIds.TooFewReadings, "Fewer readings than the sampling asks for", Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), "Take the rest, spread over the area."),
        Minimum(RuleIds.EightyTwentyMean, "Mean of the readings over nominal", 100, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), LookAgain),
        Minimum(RuleIds.EightyTwentyLeast, "Least reading over nominal", 80, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), LookAgain),
        Maximum(RuleIds.EightyTwentyShare, "Readings below nominal", 20, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), LookAgain),
        Minimum(RuleIds.NinetyTenLeast, "Least reading over nominal", 90, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), LookAgain),
        Maximum(RuleIds.NinetyTenShare, "Readings below nominal", 10, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingComparison, ForPaint), LookAgain),
        Minimum(RuleIds.SpotLeast, "Least spot over the least thickness", 80, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingPa2, ForPaint), LookAgain),
        Maximum(RuleIds.SpotMost, "Highest spot over the most thickness", 120, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.SamplingPa2, ForPaint), "See whether more layers lie there than planned, or something under them."),
        Statement(RuleIds.AreaMeanOutside, "Mean of the area outside the thicknesses stated", Severity.Warning,
            Basis.From(References.SamplingPa2, ForPaint), LookAgain),
        Statement(RuleIds.ThicknessAboveMost, "A reading above the most that was stated", Severity.Warning,
            Basis.FirstPrinciples("highest reading against the most stated"), "See whether more layers lie there than planned, or something under them."),
    ];

    private static IEnumerable<Rule> HoldPoints() =>
    [
        Statement(RuleIds.TrialPatchPeel, "The trial patch peels too easily", Severity.Stop,
            Basis.FirstPrinciples("peel against what was stated for the job; no limit made for this was found"),
            "Clean better, warm, wait longer, press harder, and pull another; do not begin."),
        Statement(RuleIds.TrialPatchResistance, "The trial patch has too high a contact resistance", Severity.Stop,
            Basis.FirstPrinciples("resistance against what was stated for the job; no limit made for this was found"),
            "Bare the steel better and press harder; do not begin. A fresh contact says nothing of an old one."),
        Statement(RuleIds.TrialPatchOffSurface, "The trial patch came clean off the surface", Severity.Stop,
            Basis.Judgement("adhesive that leaves nothing on the steel never held: oil, wax, silicone, dust or damp"),
            "Find what is on the surface and take it off; do not begin."),
        Statement(RuleIds.TrialPatchTookPaint, "The trial patch took paint, rust or scale with it", Severity.Stop,
            Basis.Judgement("tape holds no better than what it is stuck on"),
            "Take off what is loose and test again. Have old paint tested for lead and chromate first."),
        Statement(RuleIds.WeldsNotCovered, "A weld without its strip", Severity.Warning, Practice, "Lay a strip along every weld before the main lay."),
        Statement(RuleIds.NotRolledDown, "Tape that is not rolled down", Severity.Warning, Practice, "Roll everything down, edges last."),
        Statement(RuleIds.OpenCreases, "Creases left open", Severity.Warning, Practice, "Press them flat with a blunt hard tool, or patch."),
        Statement(RuleIds.BubblesLeft, "Bubbles left", Severity.Warning, Practice, "Prick with a blade tip, press down, patch if needed."),
        Statement(RuleIds.EndFacesUp, "A last edge that faces up", Severity.Warning, Practice, "Turn or cover it, so that dirt and water do not collect."),
    ];

    private static IEnumerable<Rule> Batches() =>
    [
        Statement(RuleIds.BatchUnknown, "The batch of the tape is not known", Severity.Warning,
            Basis.Judgement("a fault of a batch is found later only by its number"), "Note the number from the roll or its core."),
        Statement(RuleIds.BatchExpiryUnknown, "Until when the tape may be laid is not known", Severity.Warning,
            Basis.Judgement("adhesives age on the roll"), "Ask the maker by the batch number, or prove it by a trial patch."),
        Statement(RuleIds.BatchExpired, "Tape laid after its last day", Severity.Stop,
            Basis.Judgement("adhesives age on the roll; the data sheet sets the day"), "Do not lay it without the maker's word and a trial patch."),
        Statement(RuleIds.BatchLaidBeforeMade, "Tape said to be laid before it was made", Severity.Warning,
            Basis.FirstPrinciples("one of the two dates is wrong"), "Correct the record."),
        Statement(RuleIds.BatchStorageUnknown, "How the tape was stored is not known", Severity.Warning,
            Basis.Judgement("heat ages an adhesive and frost can part it from the foil"), "Find out, or prove it by a trial patch."),
        Statement(RuleIds.BatchStorageOutside, "Tape stored outside what its data sheet allows", Severity.Warning,
            Basis.Judgement("heat ages an adhesive and frost can part it from the foil"), "Ask the maker, and prove it by a trial patch."),
    ];
}
