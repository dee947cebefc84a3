using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Rules;

namespace SacrificialTape.Reports.Sections;

/// <summary>What stops the work, and what may hurt someone.</summary>
internal static class CautionSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack)
    {
        yield return new HeadingBlock(2, "Before anyone begins");
        Finding[] stops = [.. pack.Findings.Open.Where(static finding => finding.Severity == Severity.Stop)];
        if (stops.Length > 0)
        {
            yield return new CautionBlock("These lines must not be taped as they stand", [.. stops
                .GroupBy(static finding => finding.Message)
                .Select(static same => $"{string.Join(", ", same.Select(static finding => finding.Subject).Distinct())}: {same.Key}")]);
        }

        string[] cautions = [.. pack.Estimate.Lines
            .SelectMany(static line => line.CrewSteps.Where(static step => step.Activity == CrewActivity.Cautions))
            .Select(static step => step.Text).Distinct()];
        yield return new CautionBlock("Cautions", [InspectionPlan.Cautions, .. cautions]);

        yield return new ParagraphBlock("Local codes, the site's permit and licensed practice go before this page.");
    }
}
