using System.Diagnostics.CodeAnalysis;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>A named, versioned set of rules: the limits a team works by.</summary>
/// <remarks>Immutable. Two sets are equal when name, version and rules are, whatever the order of the rules.</remarks>
public sealed class RuleSet : IEquatable<RuleSet>
{
    private readonly Dictionary<string, Rule> byId;
    private readonly Lazy<Fingerprint> fingerprint;

    /// <summary>Describes a rule set.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="version">Its version.</param>
    /// <param name="rules">Its rules, each id once.</param>
    /// <exception cref="ArgumentException">Name or version is empty, or an id stands twice.</exception>
    public RuleSet(string name, string version, IEnumerable<Rule> rules)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentException.ThrowIfNullOrWhiteSpace(version);
        this.Name = name;
        this.Version = version;
        this.fingerprint = new Lazy<Fingerprint>(() => RuleSetCanon.Fingerprint(this));
        this.Rules = new ValueList<Rule>(rules);
        this.byId = new Dictionary<string, Rule>(this.Rules.Count, StringComparer.Ordinal);
        foreach (Rule rule in this.Rules)
        {
            if (!this.byId.TryAdd(rule.Id, rule))
            {
                throw new ArgumentException($"Rule '{rule.Id}' stands twice in the set '{name}'.", nameof(rules));
            }
        }
    }

    /// <summary>The library's own set: the common practice of the trade, with the basis of every number.</summary>
    public static RuleSet Default { get; } = new("SacrificialTape common practice", "1", DefaultRules.All());

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its version.</summary>
    public string Version { get; }

    /// <summary>Its rules.</summary>
    public ValueList<Rule> Rules { get; }

    /// <summary>
    /// A hash over all that the set means: equal for two sets exactly when they are equal, however they were written,
    /// ordered, or in which units their limits were stated.
    /// </summary>
    public Fingerprint Fingerprint => this.fingerprint.Value;

    /// <summary>The rule of an id.</summary>
    /// <param name="id">One of <see cref="RuleIds"/>, or a rule of the team's own.</param>
    /// <exception cref="KeyNotFoundException">The set has no such rule.</exception>
    public Rule this[string id] => this.byId.TryGetValue(id, out Rule? rule)
        ? rule
        : throw new KeyNotFoundException($"The rule set '{this.Name}' {this.Version} has no rule '{id}'.");

    /// <summary>The rule of an id, or false.</summary>
    /// <param name="id">The id.</param>
    /// <param name="rule">The rule.</param>
    public bool TryGet(string id, [NotNullWhen(true)] out Rule? rule) => this.byId.TryGetValue(id, out rule);

    /// <summary>A set under a name of its own in which one rule is replaced or added.</summary>
    /// <param name="name">The name of the new set.</param>
    /// <param name="version">The version of the new set.</param>
    /// <param name="rule">The rule that replaces the one of the same id, or is added.</param>
    public RuleSet With(string name, string version, Rule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new(name, version, this.Rules.Where(other => other.Id != rule.Id).Append(rule));
    }

    /// <summary>Which rules may not be used on a day, because their validity has not begun or has ended.</summary>
    /// <param name="day">The day of the estimate.</param>
    public IEnumerable<Finding> JudgeValidity(DateOnly day)
    {
        foreach (Rule rule in this.Rules)
        {
            if (rule.Validity is { } period && !period.Includes(day))
            {
                yield return this[RuleIds.RuleOutOfValidity].State($"rule {rule.Id}, valid {period}, used on {ValidityPeriod.Day(day)}");
            }
        }
    }

    /// <inheritdoc/>
    public bool Equals(RuleSet? other) =>
        other is not null
        && this.Name == other.Name
        && this.Version == other.Version
        && this.Rules.Count == other.Rules.Count
        && this.Rules.All(rule => other.TryGet(rule.Id, out Rule? same) && rule.Equals(same));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => this.Equals(obj as RuleSet);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Name, this.Version, this.Rules.Count);

    /// <summary>Name and version.</summary>
    public override string ToString() => $"{this.Name}, version {this.Version}";

    /// <summary>The number of an allowance, in the unit a kernel wants.</summary>
    internal double Number(string id, TradeUnit unit) =>
        (this[id].Limit ?? throw new InvalidOperationException($"Rule '{id}' has no number.")).In(unit);
}
