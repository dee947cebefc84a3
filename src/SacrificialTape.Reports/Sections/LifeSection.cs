using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Reports.Sections;

/// <summary>How long the zinc of each line lasts.</summary>
internal static class LifeSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        yield return new HeadingBlock(2, "Life of the zinc");
        yield return new TableBlock(
            "Years (earliest: least foil at the highest rate; the one to design for)",
            [
                new("Line"), new("Exposure"), TableColumn.Of($"Zinc {text.Thin}"), TableColumn.Of("Required"), TableColumn.Of("Earliest"), TableColumn.Of("Latest"), new("Verdict"),
            ],
            [.. pack.Estimate.Lines.Select(line => Row(line, text))]);
    }

    private static IReadOnlyList<string> Row(LineEstimate line, NumberText text)
    {
        LifeEstimate life = line.Life;
        return
        [
            line.Line.Tag,
            life.Exposure.Name,
            text.Micrometres(life.ZincCounted),
            text.Years(line.Line.RequiredLife),
            text.Years(life.Earliest),
            text.Years(life.Latest),
            Verdict(line),
        ];
    }

    private static string Verdict(LineEstimate line) =>
        !line.LifeHolds ? "does not hold: see findings"
        : SummarySection.Stops(line) ? "stops: see findings"
        : line.Findings.Any(static finding => finding.Rule.Id == RuleIds.LifeFallsShort) ? "falls short"
        : line.Findings.Any(static finding => finding.Rule.Id == RuleIds.LifeMayFallShort) ? "may fall short"
        : "lasts";
}
