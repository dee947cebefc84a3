using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Jobs;

/// <summary>A combination that does not do, and why: the findings that reject it, or the error when it cannot be made.</summary>
public sealed record RejectedLay
{
    internal RejectedLay(TriedLay tried, ValueList<Finding> findings, string? error)
    {
        this.Tried = tried;
        this.Findings = findings;
        this.Error = error;
    }

    /// <summary>The combination.</summary>
    public TriedLay Tried { get; }

    /// <summary>The findings that reject it, each with rule, measured value and limit; none when it cannot be made.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Why it cannot be made; null when it can.</summary>
    public string? Error { get; }

    /// <summary>Combination and reasons in a few words.</summary>
    public override string ToString() => $"{this.Tried}: {this.Error ?? string.Join("; ", this.Findings.Select(Short))}";

    private static string Short(Finding finding)
    {
        if (finding.Measured is null && finding.Limit is null)
        {
            // Without numbers the id alone would say nothing.
            return $"[{finding.Rule.Id}] {finding.Rule.Title}";
        }

        string measured = finding.Measured is { } value ? $" {value}" : string.Empty;
        string limit = finding.Limit is { } bound ? $" against {bound}" : string.Empty;
        return $"[{finding.Rule.Id}]{measured}{limit}";
    }
}
