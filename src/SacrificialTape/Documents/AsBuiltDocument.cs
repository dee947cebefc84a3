using System.Text;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>The record of a job as built as a file: its plan, who laid what with which batch, what was read at every hold point, who signed.</summary>
/// <remarks>
/// Format: JSON with the published schema <c>as-built-1.json</c>. It carries what was read off and who signed; the
/// findings are made again by the rules when it is read. A signature whose finding does not arise is refused.
/// </remarks>
/// <example><code source="ExchangeJobsPage.cs" region="as-built" /></example>
public sealed record AsBuiltDocument
{
    /// <summary>The version of the format that this library writes; older ones are read by their version, newer ones refused.</summary>
    public static int SchemaVersion => 1;

    /// <summary>Describes a document.</summary>
    /// <param name="name">Name of the job.</param>
    /// <param name="record">The record.</param>
    /// <param name="statesRules">True to state every rule in the file; false to name the set and its fingerprint.</param>
    /// <param name="given">Measures in the units they were read off in; may be left out.</param>
    /// <param name="rulesDocument">
    /// The rules of the plan as the file states them, with parent set, approvals, waivers and cases; left out: every rule, or
    /// name and fingerprint, as <paramref name="statesRules"/> says.
    /// </param>
    /// <exception cref="ArgumentException">The name is empty, the stated rules are not those of the plan, or they lack some of the library's.</exception>
    public AsBuiltDocument(
        string name, AsBuiltRecord record, bool statesRules = false, IEnumerable<GivenMeasure>? given = null, RuleSetDocument? rulesDocument = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(record);
        this.Name = name;
        this.Record = record;
        this.RulesDocument = RuleReference.Stated(record.Plan.Rules, statesRules, rulesDocument, nameof(statesRules), nameof(rulesDocument));
        this.Given = new ValueList<GivenMeasure>(given ?? []);
    }

    /// <summary>Name of the job.</summary>
    public string Name { get; }

    /// <summary>The record.</summary>
    public AsBuiltRecord Record { get; }

    /// <summary>True where the file states the rules, false where it names the set and its fingerprint.</summary>
    public bool StatesRules => this.RulesDocument is not null;

    /// <summary>
    /// The rules as the file states them: parent set, approvals, waivers and cases too. Null where it names the set and its
    /// fingerprint. A finding of a record is signed; a waiver that stands here answers for none of them.
    /// </summary>
    public RuleSetDocument? RulesDocument { get; }

    /// <summary>Measures in the units they were read off in, where they are not those the library would write.</summary>
    public ValueList<GivenMeasure> Given { get; }

    /// <summary>Reads a document from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="ruleSets">Sets that it may refer to, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static AsBuiltDocument Read(string json, IEnumerable<RuleSet>? ruleSets = null, DocumentLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return ReadUtf8(Encoding.UTF8.GetBytes(json), ruleSets, limits);
    }

    /// <summary>Reads a document from bytes in UTF-8.</summary>
    /// <param name="utf8">The bytes; a byte order mark before them is allowed.</param>
    /// <param name="ruleSets">Sets that it may refer to, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static AsBuiltDocument ReadUtf8(ReadOnlyMemory<byte> utf8, IEnumerable<RuleSet>? ruleSets = null, DocumentLimits? limits = null) =>
        AsBuiltReader.Read(utf8, [RuleSet.Default, .. ruleSets ?? []], limits ?? DocumentLimits.Default);

    /// <summary>The document as JSON text that reads back as an equal document, bit by bit.</summary>
    /// <exception cref="ArgumentException">Thickness readings were judged by other rules than those of the plan, or a text holds half of a surrogate pair, which JSON cannot carry.</exception>
    public string Write() => AsBuiltWriter.Write(this);

    /// <summary>Whether two documents say the same, in whatever units.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(AsBuiltDocument? other) => other is not null
        && this.Name == other.Name && this.Record.Equals(other.Record) && Equals(this.RulesDocument, other.RulesDocument);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Name, this.Record, this.RulesDocument);

    /// <summary>Name and record in a few words.</summary>
    public override string ToString() => $"{this.Name}: {this.Record}";
}
