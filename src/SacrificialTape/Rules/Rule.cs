using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>One engineering limit as data: what it bounds, its number, how much breaking it matters, on what it rests.</summary>
public sealed record Rule
{
    /// <summary>Describes a rule.</summary>
    /// <param name="id">Short name, for instance <c>lap.minimum</c>.</param>
    /// <param name="title">What it is about, a few words.</param>
    /// <param name="kind">What its number is for.</param>
    /// <param name="limit">Its number; null for a <see cref="RuleKind.Statement"/> and only for that.</param>
    /// <param name="severity">How much breaking it matters.</param>
    /// <param name="basis">On what it rests.</param>
    /// <param name="remedy">What to do when it is broken.</param>
    /// <exception cref="ArgumentException">A text is empty, or the limit does not fit the kind.</exception>
    public Rule(string id, string title, RuleKind kind, Measure? limit, Severity severity, Basis basis, string remedy)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        ArgumentException.ThrowIfNullOrWhiteSpace(remedy);
        ArgumentNullException.ThrowIfNull(basis);
        if (!Enum.IsDefined(kind) || !Enum.IsDefined(severity))
        {
            throw new ArgumentException($"Rule '{id}' is of no known kind or severity.", Enum.IsDefined(kind) ? nameof(severity) : nameof(kind));
        }

        if (limit is null != (kind == RuleKind.Statement))
        {
            throw new ArgumentException(
                $"Rule '{id}' of kind {kind} {(limit is null ? "needs a limit" : "takes no limit")}.", nameof(limit));
        }

        this.Id = id;
        this.Title = title;
        this.Kind = kind;
        this.Limit = limit;
        this.Severity = severity;
        this.Basis = basis;
        this.Remedy = remedy;
    }

    private Rule(Rule rule, ValidityPeriod? validity)
        : this(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, rule.Basis, rule.Remedy) => this.Validity = validity;

    /// <summary>Short name.</summary>
    public string Id { get; }

    /// <summary>What it is about.</summary>
    public string Title { get; }

    /// <summary>What its number is for.</summary>
    public RuleKind Kind { get; }

    /// <summary>Its number, with unit.</summary>
    public Measure? Limit { get; }

    /// <summary>How much breaking it matters.</summary>
    public Severity Severity { get; }

    /// <summary>On what it rests.</summary>
    public Basis Basis { get; }

    /// <summary>What to do when it is broken.</summary>
    public string Remedy { get; }

    /// <summary>When it may be used; null when that is not limited.</summary>
    public ValidityPeriod? Validity { get; }

    /// <summary>The rule with another limit and the basis that the new limit rests on.</summary>
    /// <param name="limit">The new number, of the same kind of quantity.</param>
    /// <param name="basis">On what the new number rests.</param>
    /// <exception cref="InvalidOperationException">The rule takes no limit, or measures another kind of quantity.</exception>
    public Rule WithLimit(Measure limit, Basis basis)
    {
        _ = limit.In((this.Limit ?? throw new InvalidOperationException($"Rule '{this.Id}' takes no limit.")).Unit);
        return new(new Rule(this.Id, this.Title, this.Kind, limit, this.Severity, basis, this.Remedy), this.Validity);
    }

    /// <summary>The rule with another severity and the basis that this rests on.</summary>
    /// <param name="severity">How much breaking it matters.</param>
    /// <param name="basis">On what that rests.</param>
    public Rule WithSeverity(Severity severity, Basis basis) =>
        new(new Rule(this.Id, this.Title, this.Kind, this.Limit, severity, basis, this.Remedy), this.Validity);

    /// <summary>The rule limited to a period, or no longer limited.</summary>
    /// <param name="validity">When it may be used; null when that is not limited.</param>
    public Rule WithValidity(ValidityPeriod? validity) => new(this, validity);

    /// <summary>Holds a measured value against the limit.</summary>
    /// <param name="measured">The measured value, of the limit's kind of quantity.</param>
    /// <param name="subject">What was measured, for instance the survey line.</param>
    /// <returns>Null when the rule holds; the bound itself is allowed, but by <see cref="RuleKind.Below"/>.</returns>
    /// <exception cref="InvalidOperationException">The rule has no bound, or bounds another kind of quantity.</exception>
    public Finding? Judge(Measure measured, string subject)
    {
        if (this.Kind is not (RuleKind.Minimum or RuleKind.Maximum or RuleKind.Below))
        {
            throw new InvalidOperationException($"Rule '{this.Id}' is of kind {this.Kind}: nothing is measured against it.");
        }

        Measure limit = this.Limit!.Value;
        double value = measured.In(limit.Unit);
        bool holds = this.Kind switch
        {
            RuleKind.Minimum => WithAllowance.AtLeast(value, limit.Number),
            RuleKind.Maximum => WithAllowance.AtMost(value, limit.Number),
            _ => WithAllowance.Below(value, limit.Number),
        };
        return holds ? null : new Finding(this, subject, measured, limit);
    }

    /// <summary>States that the case of this rule has arisen.</summary>
    /// <param name="subject">Where, for instance the survey line.</param>
    /// <param name="measured">What was measured, if anything was.</param>
    /// <param name="limit">The limit that the job sets, if it does.</param>
    public Finding State(string subject, Measure? measured = null, Measure? limit = null) =>
        new(this, subject, measured, limit ?? this.Limit);
}
