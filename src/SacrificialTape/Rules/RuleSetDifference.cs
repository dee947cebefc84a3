using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>What differs between two rule sets, as data and as text.</summary>
public sealed record RuleSetDifference
{
    private RuleSetDifference(RuleSet before, RuleSet after, ValueList<RuleChange> changes)
    {
        this.Before = before;
        this.After = after;
        this.Changes = changes;
    }

    /// <summary>The set as it was.</summary>
    public RuleSet Before { get; }

    /// <summary>The set as it is.</summary>
    public RuleSet After { get; }

    /// <summary>The rules that differ, in the order of their ids. Empty when only name or version differ.</summary>
    public ValueList<RuleChange> Changes { get; }

    /// <summary>Compares two sets.</summary>
    /// <param name="before">The set as it was.</param>
    /// <param name="after">The set as it is.</param>
    public static RuleSetDifference Between(RuleSet before, RuleSet after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        IEnumerable<RuleChange> changes =
            from id in before.Rules.Concat(after.Rules).Select(static rule => rule.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
            let was = before.TryGet(id, out Rule? old) ? old : null
            let now = after.TryGet(id, out Rule? young) ? young : null
            where was != now
            select new RuleChange(id, was, now);
        return new(before, after, new ValueList<RuleChange>(changes));
    }

    /// <summary>A heading with both names, then a line for each rule that differs.</summary>
    public override string ToString()
    {
        string heading = $"{this.Before} -> {this.After}";
        return this.Changes.Count == 0
            ? $"{heading}: no rule differs"
            : string.Join('\n', this.Changes.Select(static change => change.ToString()).Prepend($"{heading}: {this.Changes.Count} rule(s) differ"));
    }
}
