using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>How one rule differs between two sets.</summary>
public sealed record RuleChange
{
    internal RuleChange(string id, Rule? before, Rule? after)
    {
        this.Id = id;
        this.Before = before;
        this.After = after;
    }

    /// <summary>The rule's name.</summary>
    public string Id { get; }

    /// <summary>The rule as it was; null when it was added.</summary>
    public Rule? Before { get; }

    /// <summary>The rule as it is; null when it is gone.</summary>
    public Rule? After { get; }

    /// <summary>What differs, a line for each: first the number, then how much it matters, on what it rests, the words.</summary>
    public ValueList<string> Details => new(this.Differences());

    /// <summary>Name and differences in one line.</summary>
    public override string ToString() => $"{this.Id}: {string.Join("; ", this.Details)}";

    private List<string> Differences()
    {
        if (this.Before is not { } before)
        {
            return [$"added: {Stated(this.After!)}"];
        }

        if (this.After is not { } after)
        {
            return [$"removed: {Stated(before)}"];
        }

        (string Name, string Was, string Is)[] parts =
        [
            ("limit", Limit(before), Limit(after)),
            ("kind", before.Kind.ToString(), after.Kind.ToString()),
            ("severity", before.Severity.ToString(), after.Severity.ToString()),
            ("validity", before.Validity?.ToString() ?? "always", after.Validity?.ToString() ?? "always"),
            ("basis", before.Basis.ToString(), after.Basis.ToString()),
            ("title", before.Title, after.Title),
            ("remedy", before.Remedy, after.Remedy),
        ];
        List<string> lines = [.. parts.Where(static part => part.Was != part.Is).Select(static part => $"{part.Name} {part.Was} -> {part.Is}")];

        // A basis can differ in what its document is said to hold, which its words do not show.
        if (lines.Count == 0)
        {
            lines.Add("basis rests on a document that is described otherwise");
        }

        return lines;
    }

    private static string Stated(Rule rule) => $"{rule.Title}, {Limit(rule)}, {rule.Severity}";

    // Written in full: two limits that differ in the tenth digit must not look alike.
    private static string Limit(Rule rule) => rule.Limit is { } limit ? MeasureText.Exact(limit) : "no limit";
}
