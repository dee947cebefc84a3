using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.Rules;

namespace SacrificialTape.Reports.Sections;

/// <summary>The job in a few numbers, and under which rules they were judged.</summary>
internal static class SummarySection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        JobEstimate estimate = pack.Estimate;
        yield return new HeadingBlock(2, "Summary");
        if (pack.Options.Day is { } day)
        {
            yield return new ParagraphBlock($"Made on {text.Day(day)}.");
        }

        yield return new TableBlock(
            "The job in numbers",
            [new("What"), TableColumn.Of("Number")],
            [
                ["Lines", text.Count(estimate.Lines.Count)],
                [$"Steel covered, {text.Square}", text.Area(estimate.Covered)],
                [$"Left clear, {text.Square}", text.Area(estimate.LeftClear)],
                [$"Strip laid and trimmed, {text.Long}", text.Metres(estimate.StripLength)],
                ["Rolls to order", text.Count(estimate.TakeOff.Stocks.Sum(static stock => stock.Rolls))],
                [$"Zinc bought, {text.Heavy}", text.Mass(estimate.TakeOff.ZincBought)],
                [$"Zinc on the steel, {text.Heavy}", text.Mass(estimate.TakeOff.ZincLaid)],
                ["Lines that stop", text.Count(estimate.Lines.Count(Stops))],
                ["Findings open", text.Count(pack.Findings.Open.Count)],
                ["Findings waived", text.Count(pack.Findings.Waived.Count)],
            ]);
        yield return new ParagraphBlock($"Rules: {estimate.Job.Rules}; fingerprint {estimate.RuleSetFingerprint}.");
        yield return new ParagraphBlock("Lives are those of the zinc by calculation; no published life of foil on adhesive was found, so look at the tape. Sentences from rules and crew steps state metric numbers.");
    }

    internal static bool Stops(LineEstimate line) => line.Findings.Any(static finding => finding.Severity == Severity.Stop);
}
