using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Who approved a rule for the team, and when.</summary>
/// <remarks>It belongs to the document, not to the rule: the same numbers approved anew give the same answers and the same fingerprint.</remarks>
public sealed record RuleApproval
{
    /// <summary>Describes an approval.</summary>
    /// <param name="ruleId">The rule.</param>
    /// <param name="person">Who approved it.</param>
    /// <param name="day">When.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public RuleApproval(string ruleId, string person, DateOnly day)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(ruleId);
        ArgumentException.ThrowIfNullOrWhiteSpace(person);
        this.RuleId = ruleId;
        this.Person = person;
        this.Day = day;
    }

    /// <summary>The rule.</summary>
    public string RuleId { get; }

    /// <summary>Who approved it.</summary>
    public string Person { get; }

    /// <summary>When.</summary>
    public DateOnly Day { get; }

    /// <summary>Rule, person and day.</summary>
    public override string ToString() => $"{this.RuleId}: approved by {this.Person} on {ValidityPeriod.Day(this.Day)}";
}
