using System.Text;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>A rule that did not hold, or whose case arose: what, where, by how much, on what basis, what to do.</summary>
/// <remarks>A finding is an answer, not an error: a broken engineering limit never throws.</remarks>
public sealed record Finding
{
    /// <summary>Describes a finding.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="subject">Where, for instance the survey line.</param>
    /// <param name="measured">What was measured, if anything was.</param>
    /// <param name="limit">The limit it was held against, if there is one.</param>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public Finding(Rule rule, string subject, Measure? measured, Measure? limit)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        this.Rule = rule;
        this.Subject = subject;
        this.Measured = measured;
        this.Limit = limit;
    }

    /// <summary>The rule.</summary>
    public Rule Rule { get; }

    /// <summary>Where.</summary>
    public string Subject { get; }

    /// <summary>What was measured, if anything was.</summary>
    public Measure? Measured { get; }

    /// <summary>The limit it was held against, if there is one.</summary>
    public Measure? Limit { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity => this.Rule.Severity;

    /// <summary>The finding without its place: title, numbers, what to do, basis.</summary>
    public string Message
    {
        get
        {
            var text = new StringBuilder(this.Rule.Title);
            if (this.Measured is { } measured)
            {
                text.Append(": ").Append(measured);
            }

            if (this.Limit is { } limit)
            {
                text.Append(this.Measured is null ? ": " : ", ").Append(this.Rule.Kind switch
                {
                    RuleKind.Minimum => "wanted at least ",
                    RuleKind.Maximum => "allowed at most ",
                    RuleKind.Below => "allowed below ",
                    RuleKind.Allowance => "taken as ",
                    _ => "wanted ",
                }).Append(limit);
            }

            return text.Append(". ").Append(this.Rule.Remedy).Append(" Basis: ").Append(this.Rule.Basis).Append('.').ToString();
        }
    }

    /// <summary>Severity, rule, place and message in one line.</summary>
    public override string ToString() => $"{this.Severity} [{this.Rule.Id}] {this.Subject}: {this.Message}";
}
