using System.Text;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Readings of an inspection as a file, so that the next one can be held against them.</summary>
/// <remarks>
/// Format: JSON with the published schema <c>inspection-1.json</c>. It carries what was read off, not what was made of
/// it: outliers and statistics are worked out anew.
/// </remarks>
public sealed record InspectionDocument
{
    /// <summary>The version of the format that this library writes; older ones are read by their version, newer ones refused.</summary>
    public static int SchemaVersion => 1;

    /// <summary>Describes a document.</summary>
    /// <param name="name">Name of the inspection.</param>
    /// <param name="sets">The readings, set by set, each place once.</param>
    /// <param name="given">Measures in the units they were read off in; may be left out.</param>
    /// <exception cref="ArgumentException">The name is empty, there is no set, or a place stands twice.</exception>
    public InspectionDocument(string name, IEnumerable<ReadingSet> sets, IEnumerable<GivenMeasure>? given = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        this.Name = name;
        this.Sets = new ValueList<ReadingSet>(sets);
        this.Given = new ValueList<GivenMeasure>(given ?? []);
        if (this.Sets.Count == 0)
        {
            throw new ArgumentException("An inspection has at least one set of readings.", nameof(sets));
        }

        if (this.Sets.GroupBy(static set => set.Place, StringComparer.Ordinal).FirstOrDefault(static group => group.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"The place '{twice.Key}' stands twice.", nameof(sets));
        }
    }

    /// <summary>Name of the inspection.</summary>
    public string Name { get; }

    /// <summary>The readings, set by set.</summary>
    public ValueList<ReadingSet> Sets { get; }

    /// <summary>Measures in the units they were read off in, where they are not those the library would write.</summary>
    public ValueList<GivenMeasure> Given { get; }

    /// <summary>Reads a document from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static InspectionDocument Read(string json, DocumentLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return ReadUtf8(Encoding.UTF8.GetBytes(json), limits);
    }

    /// <summary>Reads a document from bytes in UTF-8.</summary>
    /// <param name="utf8">The bytes; a byte order mark before them is allowed.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static InspectionDocument ReadUtf8(ReadOnlyMemory<byte> utf8, DocumentLimits? limits = null) =>
        InspectionReader.Read(utf8, limits ?? DocumentLimits.Default);

    /// <summary>The document as JSON text that reads back as an equal document, bit by bit.</summary>
    /// <exception cref="ArgumentException">A text holds half of a surrogate pair, which JSON cannot carry.</exception>
    public string Write() => InspectionWriter.Write(this);

    /// <summary>Whether two documents say the same, in whatever units.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(InspectionDocument? other) => other is not null && this.Name == other.Name && this.Sets.Equals(other.Sets);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Name, this.Sets);

    /// <summary>Name and number of sets.</summary>
    public override string ToString() => $"{this.Name}: {this.Sets.Count} set(s) of readings";
}
