using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;

namespace PlantSurvey.SiteRecords;

/// <summary>Site conditions as data.</summary>
internal sealed record SiteData(IReadOnlyList<OpenHoursData> Windows, double? OpenHours, IReadOnlyList<ReadinessData> Readiness)
{
    internal static SiteData? Of(SiteRecord site, RuleSet rules)
    {
        if (site.IsEmpty)
        {
            return null;
        }

        WorkWindows? windows = site.Windows(rules);
        return new(
            windows is null ? [] : [.. windows.Windows.Select(static one => new OpenHoursData(one.Start, one.End))],
            windows?.Open.Hours,
            [.. site.Readiness(rules).Select(static one => new ReadinessData(one.Subject, one.Verdict.ToString(), [.. one.Findings.Select(FindingData.Of)]))]);
    }
}

/// <summary>Hours in which laying may go on.</summary>
internal sealed record OpenHoursData(DateTimeOffset From, DateTimeOffset To);

/// <summary>Whether a surface may be taped.</summary>
internal sealed record ReadinessData(string Line, string Verdict, IReadOnlyList<FindingData> Findings);
