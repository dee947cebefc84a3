using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Lays on flat, corrugated and large curved steel.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> Faces() =>
    [
        Minimum(RuleIds.MinimumFoldFace, "Width of the narrowest face between two folds", 10, TradeUnit.Millimeter, Severity.Warning,
            Basis.Judgement("an edge roller finds no room on a narrower face; calibrate with a trial strip"),
            "Press a trial strip on first; where it does not hold, paint instead of taping."),
        Minimum(RuleIds.MinimumValleyOpening, "Mouth of a valley between two crowns", 25, TradeUnit.Millimeter, Severity.Warning,
            Basis.Judgement("a hand roller must reach the floor of the valley; replace it by the width of your own tool"),
            "Press a trial strip on first; where the roller does not reach, paint instead of taping."),
        Maximum(RuleIds.MaximumInsideCorners, "Inside corners under one strip along the flutes", 1, TradeUnit.One, Severity.Warning,
            Basis.Judgement("a long strip pressed into a second corner pulls out of the first: it folds over an arris, but bridges a valley"),
            "Take a strip that ends on the floor of the valley, or lay across the flutes. A strip that spans a hollow tears and holds water: cut it out."),
        Statement(RuleIds.EdgeJoint, "Tape of two faces meets at an edge without a lap", Severity.Warning,
            Basis.FirstPrinciples("a strip that is folded over a curved edge puckers, so each face is trimmed at the edge"),
            "Press both edges down hard and seal the joint, or see that neither is left open to water."),
        Statement(RuleIds.FlangedJoint, "Tape on a flange of a bolted joint", Severity.Warning,
            Basis.CommonPractice("a flanged joint must stay workable"),
            "Keep gasket seat, bolts, nuts and the faces they bear on free of tape; never open or slacken a joint to tape it. Work on joints belongs to those licensed for it."),
        Statement(RuleIds.OpeningsWithoutPlace, "Openings without a place are laid over and cut out", Severity.Note,
            Basis.FirstPrinciples("without a place only the average is known: they take tape as any other spot of the surface does"),
            "State where they are if strips are to be interrupted there."),
        Statement(RuleIds.TapeByMeasuredArea, "Tape by a measured area, without a lay", Severity.Warning,
            Basis.Judgement("area, allowance and lap share are the user's own; no strip has a place, so no cover is proved"),
            "Measure the shape where it can be measured, and check the tape left over after the first day."),
    ];
}
