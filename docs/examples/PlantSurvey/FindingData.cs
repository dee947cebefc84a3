using SacrificialTape.Rules;

namespace PlantSurvey;

/// <summary>A finding as data.</summary>
internal sealed record FindingData(
    string Rule, string Severity, string Subject, string Message, string? Measured, string? Limit, string Remedy, string Basis)
{
    internal static FindingData Of(Finding finding) => new(
        finding.Rule.Id,
        finding.Severity.ToString(),
        finding.Subject,
        finding.Message,
        finding.Measured?.ToString(),
        finding.Limit?.ToString(),
        finding.Rule.Remedy,
        finding.Rule.Basis.ToString());
}
