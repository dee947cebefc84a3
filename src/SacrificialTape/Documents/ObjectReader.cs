using System.Globalization;
using System.Text.Json;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>
/// Takes the members of one object by name. What is missing, of the wrong kind or unknown becomes a fault, and reading
/// goes on, so that one run tells all faults of a file.
/// </summary>
internal sealed class ObjectReader
{
    private static readonly string[] TimeFormats = ["yyyy-MM-dd'T'HH:mmzzz", DocumentWriter.TimeFormat];

    private readonly FaultList faults;

    // Some twenty names at most, each given by the code that reads: a walk is quicker than a table.
    private readonly List<string> asked = [];

    private ObjectReader(DocumentNode node, FaultList faults)
    {
        this.Node = node;
        this.faults = faults;
    }

    internal DocumentNode Node { get; }

    /// <summary>Opens an object; null, with a fault, when the node is something else.</summary>
    internal static ObjectReader? Open(DocumentNode node, FaultList faults)
    {
        if (node.Kind == JsonValueKind.Object)
        {
            return new ObjectReader(node, faults);
        }

        faults.Add(node, $"Expected an object, not {node.Word}.");
        return null;
    }

    internal bool Has(string name)
    {
        this.Ask(name);
        return this.Node.Members.ContainsKey(name);
    }

    /// <summary>The member, or null without a fault.</summary>
    internal DocumentNode? Optional(string name)
    {
        this.Ask(name);
        return this.Node.Members.GetValueOrDefault(name);
    }

    /// <summary>The member, or null with a fault.</summary>
    internal DocumentNode? Required(string name, string expected)
    {
        if (this.Optional(name) is { } member)
        {
            return member;
        }

        this.faults.Add(this.Node, $"'{name}' is missing: {expected}.");
        return null;
    }

    internal string? Text(string name, string expected) =>
        this.Required(name, expected) is { } member ? this.TextOf(member, name) : null;

    internal string? OptionalText(string name) => this.Optional(name) is { } member ? this.TextOf(member, name) : null;

    /// <summary>A measure; null where it is left out, or cannot be read.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="wanted">A unit of the kind that does here, for what is told of one that is not known; null where any kind does.</param>
    internal Measure? OptionalMeasure(string name, TradeUnit? wanted = null)
    {
        if (this.OptionalText(name) is not { } text)
        {
            return null;
        }

        if (MeasureText.Read(text, null, wanted, out Measure measure) is { } fault)
        {
            this.faults.Add(this.Node.Members[name], fault);
            return null;
        }

        return measure;
    }

    internal Measure? Measure(string name, string expected) => this.Required(name, expected) is null ? null : this.OptionalMeasure(name);

    internal DateOnly? Day(string name, string expected) =>
        this.Text(name, expected) is { } text ? this.DayOf(name, text) : null;

    internal DateOnly? OptionalDay(string name) => this.OptionalText(name) is { } text ? this.DayOf(name, text) : null;

    /// <summary>A time of a day with its distance from UTC.</summary>
    internal DateTimeOffset? Time(string name, string expected) =>
        this.Text(name, expected) is { } text ? this.TimeOf(name, text) : null;

    internal T? OptionalWord<T>(string name, IReadOnlyList<(string Word, T Value)> words)
        where T : struct, Enum => this.OptionalText(name) is { } text ? this.WordOf(name, text, words) : null;

    internal T? Word<T>(string name, IReadOnlyList<(string Word, T Value)> words)
        where T : struct, Enum
    {
        // The words are listed for a fault only.
        string expected = this.Node.Members.ContainsKey(name) ? string.Empty : $"expected {List(words)}";
        return this.Text(name, expected) is { } text ? this.WordOf(name, text, words) : null;
    }

    /// <summary>True where the member stands as true; a member that is left out is false, any other value a fault.</summary>
    internal bool Flag(string name)
    {
        if (this.Optional(name) is not { } member)
        {
            return false;
        }

        if (member.Kind is not (JsonValueKind.True or JsonValueKind.False))
        {
            this.faults.Add(member, $"'{name}' must be true or false, not {member.Word}.");
        }

        return member.Kind == JsonValueKind.True;
    }

    /// <summary>The items of a list; none, with a fault when it is something else.</summary>
    internal IReadOnlyList<DocumentNode> Items(string name)
    {
        if (this.Optional(name) is not { } member)
        {
            return DocumentNode.NoItems;
        }

        if (member.Kind != JsonValueKind.Array)
        {
            this.faults.Add(member, $"Expected a list, not {member.Word}.");
        }

        return member.Items;
    }

    /// <summary>Ends the reading of this object: a member that nobody asked for is a fault.</summary>
    internal void Close()
    {
        foreach ((string name, DocumentNode member) in this.Node.Members)
        {
            if (!this.asked.Contains(name))
            {
                this.faults.Add(member, $"'{DocumentTree.Short(name)}' is not known here. Expected {string.Join(", ", this.asked.Order(StringComparer.Ordinal))}.");
            }
        }
    }

    private void Ask(string name)
    {
        if (!this.asked.Contains(name))
        {
            this.asked.Add(name);
        }
    }

    private static string List<T>(IReadOnlyList<(string Word, T Value)> words) =>
        string.Join(", ", words.Select(static pair => $"'{pair.Word}'"));

    private string? TextOf(DocumentNode member, string name)
    {
        if (member.Kind != JsonValueKind.String)
        {
            string hint = member.Kind == JsonValueKind.Number ? " Write numbers as text with their unit, as in \"20 mm\"." : string.Empty;
            this.faults.Add(member, $"'{name}' must be a text, not {member.Word}.{hint}");
            return null;
        }

        if (string.IsNullOrWhiteSpace(member.Text))
        {
            this.faults.Add(member, $"'{name}' is empty.");
            return null;
        }

        return member.Text;
    }

    private DateOnly? DayOf(string name, string text)
    {
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        this.faults.Add(this.Node.Members[name], $"'{DocumentTree.Short(text)}' is no day. Expected year-month-day, as in 2026-11-30.");
        return null;
    }

    private DateTimeOffset? TimeOf(string name, string text)
    {
        if (DateTimeOffset.TryParseExact(text, TimeFormats, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset time))
        {
            return time;
        }

        this.faults.Add(this.Node.Members[name], $"'{DocumentTree.Short(text)}' is no time of a day. Expected day, time and distance from UTC, as in 2026-11-30T08:15+01:00.");
        return null;
    }

    private T? WordOf<T>(string name, string text, IReadOnlyList<(string Word, T Value)> words)
        where T : struct, Enum
    {
        foreach ((string word, T value) in words)
        {
            if (word == text)
            {
                return value;
            }
        }

        this.faults.Add(this.Node.Members[name], $"'{DocumentTree.Short(text)}' is not known. Expected {List(words)}.");
        return null;
    }
}
