using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>What the crew is told at each hold point; limits come from the rule set.</summary>
internal static class HoldPointTexts
{
    internal const string Cautions =
        "Before you begin: hot or pressurised pipe under the site's permit; old paint tested for lead and chromate before anyone brushes or scrapes it; solvents without sparks and with air; foil edges cut; made fast at height. No tape on stainless or high-strength steel without a qualified engineer's word.";

    internal static IEnumerable<HoldPoint> For(ValueList<InspectionPlanLine> lines, RuleSet rules, SamplingScheme? thickness)
    {
        foreach (IGrouping<bool, InspectionPlanLine> alike in lines.GroupBy(static line => line.PaintStays).OrderBy(static group => group.Key))
        {
            yield return Patch(alike.Key, alike);
        }

        foreach (InspectionPlanLine line in lines)
        {
            yield return Cleaning(line, rules);
            if (line.PaintStays)
            {
                yield return new(
                    HoldPointKind.Contact, line.Tag, "Measure the windows of bare metal on any one square metre, the worst you find.",
                    $"at least {Limit(rules, RuleIds.MinimumBareRatio)} of bright metal.", [RuleIds.MinimumBareRatio]);
            }

            if (line.HasWelds)
            {
                yield return new(
                    HoldPointKind.Welds, line.Tag, "Look at every weld.",
                    "a strip lies along each, pressed in at both toes.", [RuleIds.WeldsNotCovered]);
            }

            yield return new(
                HoldPointKind.Laps, line.Tag, "Measure the lap square across the strip where it looks least, and every end lap.",
                $"the least lap is at least {Limit(rules, RuleIds.MinimumLap)}, the least end lap at least {Limit(rules, RuleIds.MinimumEndLap)}.",
                [RuleIds.MinimumLap, RuleIds.MinimumEndLap]);
            yield return new(
                HoldPointKind.RollDown, line.Tag, "Go over every strip and edge with the roller; listen with a light tap for hollow spots.",
                "no edge stands up and nothing sounds hollow.", [RuleIds.NotRolledDown]);
            yield return new(
                HoldPointKind.Creases, line.Tag, "Press creases flat with a blunt hard tool.",
                "no crease is left open.", [RuleIds.OpenCreases]);
            yield return new(
                HoldPointKind.Bubbles, line.Tag, "Prick bubbles with a blade tip, press them down, patch if needed; never cut into the steel.",
                "no bubble is left.", [RuleIds.BubblesLeft]);
            yield return new(
                HoldPointKind.EndDirection, line.Tag, "See where the last edges face: on upright pipe laid from the bottom up, on level pipe down on the side, not at its lowest point.",
                "every last edge faces down.", [RuleIds.EndFacesUp]);
            if (thickness is { } scheme)
            {
                var count = new SamplingCount(scheme, line.Area);
                yield return new(
                    HoldPointKind.Thickness, line.Tag, $"Take {count}. The gauge reads metal and adhesive and counts layers: {FormattableString.Invariant($"{line.Layers}")} everywhere.",
                    "the readings are accepted by the rule chosen.", [RuleIds.TooFewReadings], count.Readings);
            }
        }
    }

    internal static string NameOf(HoldPointKind kind) => kind switch
    {
        HoldPointKind.TrialPatch => "Trial patch",
        HoldPointKind.Cleaning => "Clean and dry",
        HoldPointKind.Contact => "Bare metal under paint",
        HoldPointKind.Welds => "Welds",
        HoldPointKind.Laps => "Laps",
        HoldPointKind.RollDown => "Rolled down",
        HoldPointKind.Creases => "Creases",
        HoldPointKind.Bubbles => "Bubbles",
        HoldPointKind.EndDirection => "Last edges",
        _ => "Thickness",
    };

    private static HoldPoint Patch(bool paintStays, IEnumerable<InspectionPlanLine> lines) => new(
        HoldPointKind.TrialPatch,
        $"{(paintStays ? "over paint" : "bare steel")} ({string.Join(", ", lines.Select(static line => line.Tag))})",
        "Press a patch of this batch on the worst prepared spot, wait the dwell of the data sheet, measure its resistance to the steel, pull it off and look where it parted. Clean the spot again.",
        "peel and resistance meet the figures stated for this job, and neither the surface came clean nor paint or scale came off.",
        [RuleIds.TrialPatchPeel, RuleIds.TrialPatchResistance, RuleIds.TrialPatchOffSurface, RuleIds.TrialPatchTookPaint]);

    private static HoldPoint Cleaning(InspectionPlanLine line, RuleSet rules) => new(
        HoldPointKind.Cleaning,
        line.Tag,
        line.PaintStays
            ? "Degrease, take off loose paint, roughen sound paint, wipe, let dry. No primer. Measure air and surface here."
            : "Degrease before brushing, wipe after it, let dry completely. No primer. Measure air and surface here.",
        $"surface at least {Limit(rules, RuleIds.MinimumDewPointMargin)} above the dew point, {Limit(rules, RuleIds.MinimumApplicationTemperature)} to {Limit(rules, RuleIds.MaximumLayingTemperature)}, humidity below {Limit(rules, RuleIds.MaximumHumidity)}, dust and salts within their limits, nothing left unmeasured.",
        [RuleIds.MinimumDewPointMargin, RuleIds.MaximumHumidity, RuleIds.MinimumApplicationTemperature, RuleIds.MaximumLayingTemperature, RuleIds.SurfaceNotMeasured]);

    private static string Limit(RuleSet rules, string id) => rules[id].Limit!.Value.ToString();
}
