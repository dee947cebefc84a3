using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;

namespace SacrificialTape.Reports.Sections;

/// <summary>What the crew does on each line, with the points at which it waits for a signature.</summary>
internal static class CrewSection
{
    // After which activity the crew waits. A patch on trial comes before all lines, and thickness is read at the end.
    private static readonly Dictionary<HoldPointKind, CrewActivity> After = new()
    {
        [HoldPointKind.Cleaning] = CrewActivity.Clean,
        [HoldPointKind.Contact] = CrewActivity.Windows,
        [HoldPointKind.Welds] = CrewActivity.Welds,
        [HoldPointKind.Laps] = CrewActivity.Lay,
        [HoldPointKind.RollDown] = CrewActivity.RollDown,
    };

    internal static IEnumerable<PackBlock> Of(JobPack pack)
    {
        InspectionPlan plan = pack.Estimate.PlanInspection(pack.Options.ThicknessSampling);
        ILookup<string, HoldPoint> holds = plan.HoldPoints.ToLookup(static hold => hold.Place, StringComparer.Ordinal);
        var tags = pack.Estimate.Lines.Select(static line => line.Line.Tag).ToHashSet(StringComparer.Ordinal);
        yield return new HeadingBlock(2, "Crew sheets", NewSheet: true);
        HoldPoint[] first = [.. plan.HoldPoints.Where(hold => !tags.Contains(hold.Place))];
        if (first.Length > 0)
        {
            yield return new HeadingBlock(3, "Before any line");
            yield return new ListBlock(true, [.. first.Select(static hold => Item(hold, hold.Place))]);
        }

        foreach (LineEstimate line in pack.Estimate.Lines)
        {
            string tag = line.Line.Tag;
            yield return new HeadingBlock(3, $"{tag}: {line.Line.Lay.Surface.Description}");
            bool stops = line.CrewSteps.Any(static step => step.Activity == CrewActivity.Stop);
            if (pack.Options.WithPictures && !stops && Picture.OfLine(line.Line) is { } picture)
            {
                yield return new PictureBlock(picture);
            }

            yield return new ListBlock(true, [.. Steps(line, stops ? [] : [.. holds[tag]])]);
        }
    }

    // A line that must not be taped has nothing to wait for.
    private static IEnumerable<ListItem> Steps(LineEstimate line, IReadOnlyList<HoldPoint> holds)
    {
        var left = holds.ToList();
        CrewStep[] steps = [.. line.CrewSteps];
        for (int i = 0; i < steps.Length; i++)
        {
            yield return new ListItem(Word(steps[i].Activity), steps[i].Text);
            bool last = i + 1 == steps.Length || steps[i + 1].Activity != steps[i].Activity;
            foreach (HoldPoint hold in last ? left.Where(hold => After.TryGetValue(hold.Kind, out CrewActivity after) && after == steps[i].Activity).ToArray() : [])
            {
                left.Remove(hold);
                yield return Item(hold, string.Empty);
            }
        }

        foreach (HoldPoint hold in left)
        {
            yield return Item(hold, string.Empty);
        }
    }

    private static ListItem Item(HoldPoint hold, string place) => new(
        $"{Word(hold.Kind)}{(place.Length > 0 ? $", {place}" : string.Empty)}", $"{hold.WhatToLookAt} Go on when: {hold.AcceptWhen} Signed: ____________", Hold: true);

    private static string Word(CrewActivity activity) => activity switch
    {
        CrewActivity.MarkClear => "Mark what stays clear",
        CrewActivity.RollDown => "Roll down",
        _ => activity.ToString(),
    };

    private static string Word(HoldPointKind kind) => kind switch
    {
        HoldPointKind.TrialPatch => "trial patch",
        HoldPointKind.Cleaning => "clean and dry",
        HoldPointKind.Contact => "bare metal under paint",
        HoldPointKind.RollDown => "rolled down",
        HoldPointKind.EndDirection => "last edges",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
