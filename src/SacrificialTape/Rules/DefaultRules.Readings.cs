using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Readings of foil that has been in service, and patches.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Readings() =>
    [
        Statement(RuleIds.ReadingAboveFoil, "A reading is thicker than the foil supplied and its tolerance", Severity.Warning,
            Basis.FirstPrinciples("zinc does not grow: adhesive, facing or corrosion products were measured with it, or layers miscounted"),
            "Clean the sample, count its layers and measure again before anything is made of it."),
        Statement(RuleIds.ReadingNotCleaned, "Corrosion products were not removed before the reading", Severity.Warning,
            Basis.FirstPrinciples("they are measured as if they were zinc and hide its loss"),
            "Clean by a way that spares the zinc and measure again: the life told from this reading is too long."),
        Statement(RuleIds.ReadingOutlier, "A reading lies farther from the others than chance explains", Severity.Warning,
            Basis.From(References.GrubbsTest), "Measure it again and look at the spot: it may be a slip, or the very place that goes first. Decide with both results, and write down why."),
        Statement(RuleIds.SingleReading, "There is a single reading: it has no scatter, confidence or limit", Severity.Warning,
            Basis.FirstPrinciples("scatter needs two readings at least"), "Measure at more spots before a life is told."),
        Statement(RuleIds.LimitBelowRequired, "The lower tolerance limit of the thickness is at or below what is required", Severity.Warning,
            Basis.FirstPrinciples("lower tolerance limit against required thickness"),
            "Look for thin spots and patch them, or take more readings: few and scattered ones make a low limit."),
        Statement(RuleIds.LifeUndetermined, "The readings show no loss, so no remaining life can be told", Severity.Warning,
            Basis.FirstPrinciples("a rate of zero or less is within the error of the readings; it is no proof of a life without end"),
            "Check thickness supplied, cleaning and count of layers; look again at the latest after the longest interval."),
        Statement(RuleIds.FoilUsedUp, "The foil is at or below the thickness required", Severity.Stop,
            Basis.FirstPrinciples("thickness against required thickness"), "Rewrap, or patch what is worn out."),
        Statement(RuleIds.FasterThanPredicted, "Zinc goes faster than was predicted", Severity.Warning,
            Basis.FirstPrinciples("measured range of the rate against the predicted one"),
            "Estimate anew with the exposure from the readings, and find out why: other couples, standing water, another category."),
        Allowance(RuleIds.InspectionLifeShare, "Share of the remaining life after which to look again", 0.5, TradeUnit.One,
            Basis.From(References.ThicknessRates, "made for pressure equipment; using it on tape is a choice"), "Replace it by the owner's rule."),
        Allowance(RuleIds.LongestInspectionInterval, "Longest time to the next inspection", 5, TradeUnit.Year,
            Basis.Judgement("no interval for tape was found; codes for piping set 5 to 10 years by class (recalled, check before use)"), "Replace it by the owner's rule for the class of the line."),
        Minimum(RuleIds.ExtremeSampleShare, "Area sampled for greatest losses", 3, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.ExtremeSampleSize), "Sample more areas before the greatest loss is relied on."),
        Maximum(RuleIds.ExtremeReturnPeriod, "Return period of greatest losses", 500, TradeUnit.One, Severity.Warning,
            Basis.From(References.ExtremeSampleSize), "Take larger sample areas, or tell the greatest loss for a part of the whole."),
    ];

    private static IEnumerable<Rule> Patches() =>
    [
        Statement(RuleIds.PatchBelowLap, "The margin of a patch is less than the lap between strips", Severity.Note,
            Basis.CommonPractice("5 mm round a patch, 10 mm between strips: the trade's own figures differ"),
            "Press the edge down hard; where it stays wet take the ordinary lap."),
        Statement(RuleIds.PatchesOverlap, "Two patches lie over each other", Severity.Warning,
            Basis.FirstPrinciples("one patch would end on the other: its edge stands up, and the strip under it is not the old one"),
            "Cut one hole for both and lay one patch."),
        Statement(RuleIds.PatchWiderThanStrip, "A patch is wider than the strip and is laid from several side by side", Severity.Note,
            Basis.FirstPrinciples("width of the patch against width of the strip"), "Take wider strip, or lay the pieces with the ordinary lap."),
        Maximum(RuleIds.PatchedShare, "Area patched of the area covered", 10, TradeUnit.Percent, Severity.Warning,
            Basis.Judgement("so many edges as to doubt the rest of the tape; no source was found"), "Rewrap, or write down why patching still serves."),
    ];
}
