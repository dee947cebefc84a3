using SacrificialTape.Jobs;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace PlantSurvey.SiteRecords;

/// <summary>What is known of the site: a log of hours and readings of surfaces; either may be missing.</summary>
internal sealed record SiteRecord(SiteLog? Log, IReadOnlyList<LineReading> Readings)
{
    internal static SiteRecord Read(string folder, IReadOnlySet<string> tags, IEnumerable<SurveyLine> lines, List<SurveyFault> faults)
    {
        var service = new Dictionary<string, Temperature?>(StringComparer.Ordinal);
        foreach (SurveyLine line in lines)
        {
            service[line.Tag] = line.Steel.ServiceTemperature;
        }

        return new(SiteLogSheet.Read(folder, faults), ReadinessSheet.Read(folder, tags, service, faults));
    }

    internal bool IsEmpty => this.Log is null && this.Readings.Count == 0;

    internal WorkWindows? Windows(RuleSet rules) => this.Log is { } log ? new WorkWindows(log, rules, "site log") : null;

    internal IEnumerable<SurfaceReadiness> Readiness(RuleSet rules) =>
        this.Readings.Select(one => new SurfaceReadiness(one.Reading, rules, one.Line));
}
