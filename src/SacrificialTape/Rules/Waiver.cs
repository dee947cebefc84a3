namespace SacrificialTape.Rules;

/// <summary>Somebody's word that a finding may stand: which rule, where, why, who, when.</summary>
/// <remarks>A waiver hides nothing. The finding stays, with the waiver beside it. A finding of severity Stop can be waived too, and is shown.</remarks>
/// <example><code source="ShareARuleSetPage.cs" region="waive" /></example>
public sealed record Waiver
{
    /// <summary>Describes a waiver.</summary>
    /// <param name="ruleId">The rule whose finding may stand.</param>
    /// <param name="subject">Where, word for word as the finding names its place, for instance the survey line.</param>
    /// <param name="reason">Why.</param>
    /// <param name="person">Who answers for it.</param>
    /// <param name="granted">When it was given.</param>
    /// <param name="until">The last day it holds; null when it has no end.</param>
    /// <exception cref="ArgumentException">A text is empty, or it ends before it is given.</exception>
    public Waiver(string ruleId, string subject, string reason, string person, DateOnly granted, DateOnly? until = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(ruleId);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        ArgumentException.ThrowIfNullOrWhiteSpace(person);
        if (until < granted)
        {
            throw new ArgumentException(
                $"The last day, {ValidityPeriod.Day(until.Value)}, is before the waiver was given, {ValidityPeriod.Day(granted)}.", nameof(until));
        }

        this.RuleId = ruleId;
        this.Subject = subject;
        this.Reason = reason;
        this.Person = person;
        this.Granted = granted;
        this.Until = until;
    }

    /// <summary>The rule whose finding may stand.</summary>
    public string RuleId { get; }

    /// <summary>Where, word for word as the finding names its place.</summary>
    public string Subject { get; }

    /// <summary>Why.</summary>
    public string Reason { get; }

    /// <summary>Who answers for it.</summary>
    public string Person { get; }

    /// <summary>When it was given.</summary>
    public DateOnly Granted { get; }

    /// <summary>The last day it holds; null when it has no end.</summary>
    public DateOnly? Until { get; }

    /// <summary>Whether it waives a finding on a day.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="day">The day of the estimate.</param>
    public bool Covers(Finding finding, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Rule.Id == this.RuleId && finding.Subject == this.Subject && day >= this.Granted && !(day > this.Until);
    }

    /// <summary>Rule, place, person, day and reason in one line.</summary>
    public override string ToString()
    {
        string end = this.Until is { } until ? $", until {ValidityPeriod.Day(until)}" : string.Empty;
        return $"[{this.RuleId}] {this.Subject}: waived by {this.Person} on {ValidityPeriod.Day(this.Granted)}{end}: {this.Reason}";
    }
}
