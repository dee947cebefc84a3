using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.SiteConditions;

/// <summary>Whether a surface may be taped, with every reason.</summary>
/// <remarks>
/// A broken rule of severity warning or stop makes it not ready. Something that was not measured never counts as good: it
/// leaves a finding <c>surface.not-measured</c>, and readiness cannot be said. A note changes nothing.
/// </remarks>
public sealed record SurfaceReadiness
{
    /// <summary>Holds a surface against the rules.</summary>
    /// <param name="reading">What was measured and seen.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public SurfaceReadiness(SurfaceReading reading, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        this.Reading = reading;
        this.Subject = subject;
        this.Findings = new ValueList<Finding>(ReadinessRules.Judge(reading, rules, subject));
        this.Verdict = this.Findings.Any(static one => one.Severity != Severity.Note && one.Rule.Id != RuleIds.SurfaceNotMeasured)
            ? ReadinessVerdict.NotReady
            : this.Findings.Any(static one => one.Rule.Id == RuleIds.SurfaceNotMeasured)
                ? ReadinessVerdict.CannotBeSaid
                : ReadinessVerdict.Ready;
    }

    /// <summary>What was measured and seen.</summary>
    public SurfaceReading Reading { get; }

    /// <summary>Where.</summary>
    public string Subject { get; }

    /// <summary>The verdict.</summary>
    public ReadinessVerdict Verdict { get; }

    /// <summary>Every reason.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>The place, the verdict and how many findings.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Subject}: {this.Verdict}, {this.Findings.Count} finding(s)");
}
