using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>A finding as an estimate that is kept in a file states it.</summary>
public sealed record StatedFinding
{
    internal StatedFinding(string ruleId, Severity severity, string subject, Measure? measured, Measure? limit, string message)
    {
        this.RuleId = ruleId;
        this.Severity = severity;
        this.Subject = subject;
        this.Measured = measured;
        this.Limit = limit;
        this.Message = message;
    }

    /// <summary>The rule.</summary>
    public string RuleId { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>Where.</summary>
    public string Subject { get; }

    /// <summary>What was measured, if anything was.</summary>
    public Measure? Measured { get; }

    /// <summary>The limit it was held against, if there is one.</summary>
    public Measure? Limit { get; }

    /// <summary>Title, numbers, what to do and basis, for those who read the file without this library.</summary>
    public string Message { get; }

    /// <summary>Severity, rule, place and message in one line, as a finding has it.</summary>
    public override string ToString() => $"{this.Severity} [{this.RuleId}] {this.Subject}: {this.Message}";

    internal static StatedFinding Of(Finding finding) =>
        new(finding.Rule.Id, finding.Severity, finding.Subject, finding.Measured, finding.Limit, finding.Message);

    // Beside the message, which moves with the wording of the library and not with what was found.
    internal string Found() => $"{this.Severity} [{this.RuleId}] {this.Subject}"
        + (this.Measured is { } measured ? $": {measured}" : string.Empty) + (this.Limit is { } limit ? $" against {limit}" : string.Empty);
}
