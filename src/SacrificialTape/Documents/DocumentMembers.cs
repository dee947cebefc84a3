using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace SacrificialTape.Documents;

/// <summary>The members of one object in the order of the file, found by name.</summary>
/// <remarks>
/// Most objects have a few members, and a walk through them is quicker and smaller than a table; a table comes in where
/// there are many, so that a file with a hundred thousand members in one object costs no more than its length.
/// </remarks>
internal sealed class DocumentMembers : IEnumerable<KeyValuePair<string, DocumentNode>>
{
    private const int MostWalked = 12;

    private readonly List<KeyValuePair<string, DocumentNode>> ordered = [];
    private Dictionary<string, DocumentNode>? table;

    internal static DocumentMembers None { get; } = new();

    internal DocumentNode this[string name] =>
        this.TryGetValue(name, out DocumentNode? node) ? node : throw new KeyNotFoundException($"There is no member '{name}'.");

    internal bool ContainsKey(string name) => this.TryGetValue(name, out _);

    internal DocumentNode? GetValueOrDefault(string name) => this.TryGetValue(name, out DocumentNode? node) ? node : null;

    internal bool TryGetValue(string name, [NotNullWhen(true)] out DocumentNode? node)
    {
        if (this.table is not null)
        {
            return this.table.TryGetValue(name, out node);
        }

        foreach (KeyValuePair<string, DocumentNode> member in this.ordered)
        {
            if (member.Key == name)
            {
                node = member.Value;
                return true;
            }
        }

        node = null;
        return false;
    }

    /// <summary>Adds a member; false when its name is taken.</summary>
    internal bool TryAdd(string name, DocumentNode node)
    {
        if (this.ContainsKey(name))
        {
            return false;
        }

        this.ordered.Add(new(name, node));
        if (this.table is not null)
        {
            this.table.Add(name, node);
        }
        else if (this.ordered.Count > MostWalked)
        {
            this.table = new Dictionary<string, DocumentNode>(this.ordered, StringComparer.Ordinal);
        }

        return true;
    }

    public IEnumerator<KeyValuePair<string, DocumentNode>> GetEnumerator() => this.ordered.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => this.GetEnumerator();
}
