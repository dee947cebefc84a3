using System.Text;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>A job as a file: its lines with surface, lay and needs, its strips, the choices of the take-off, by which rules it is judged, prices and notes.</summary>
/// <remarks>
/// <para>Format: JSON with the published schema <c>job-1.json</c>. Quantities are text with their unit, counts are
/// whole numbers. What is read and written again says the same to the last bit, in the units its author used.</para>
/// <para>Equality: job, stocks with their names, prices, notes and the rules as they are stated. In which units they were given does not count.</para>
/// </remarks>
/// <example><code source="ExchangeJobsPage.cs" region="read" /></example>
public sealed record JobDocument
{
    /// <summary>The version of the format that this library writes; older ones are read by their version, newer ones refused.</summary>
    public static int SchemaVersion => 1;

    /// <summary>Describes a document.</summary>
    /// <param name="job">The job.</param>
    /// <param name="prices">The user's own prices and norms, with a price for every stock that a line uses; may be left out.</param>
    /// <param name="notes">What people remarked; may be left out.</param>
    /// <param name="stocks">Names for its strips; those left out are numbered.</param>
    /// <param name="statesRules">True to state every rule in the file; false to name the set and its fingerprint.</param>
    /// <param name="given">Measures in the units their author gave; may be left out.</param>
    /// <param name="rulesDocument">
    /// The rules of the job as the file states them, with parent set, approvals, waivers and cases; left out: every rule, or
    /// name and fingerprint, as <paramref name="statesRules"/> says.
    /// </param>
    /// <exception cref="ArgumentException">
    /// A name stands twice, prices are given but a stock that a line uses has none, a note is about a line that there is not, the stated rules are not those of the job, or they
    /// lack some of the library's.
    /// </exception>
    public JobDocument(
        Job job,
        CostPrices? prices = null,
        IEnumerable<JobNote>? notes = null,
        IEnumerable<NamedStock>? stocks = null,
        bool statesRules = false,
        IEnumerable<GivenMeasure>? given = null,
        RuleSetDocument? rulesDocument = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        this.Job = job;
        this.Prices = prices;
        this.Notes = new ValueList<JobNote>(notes ?? []);
        if (prices is not null && JobStocks.Unpriced(job, prices).FirstOrDefault() is { } unpriced)
        {
            throw new ArgumentException($"Prices are given, but none for a roll of {unpriced.Stock}, which line '{unpriced.Tag}' uses.", nameof(prices));
        }

        this.Stocks = JobStocks.Of(job, prices, new ValueList<NamedStock>(stocks ?? []));
        this.Given = new ValueList<GivenMeasure>(given ?? []);
        var tags = new HashSet<string>(job.Lines.Select(static line => line.Tag), StringComparer.Ordinal);
        if (this.Notes.FirstOrDefault(note => note.Tag is not null && !tags.Contains(note.Tag)) is { } note)
        {
            throw new ArgumentException($"The job has no line '{note.Tag}', but a note is about it.", nameof(notes));
        }

        this.RulesDocument = RuleReference.Stated(job.Rules, statesRules, rulesDocument, nameof(statesRules), nameof(rulesDocument));
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The user's own prices and norms, if any.</summary>
    public CostPrices? Prices { get; }

    /// <summary>What people remarked.</summary>
    public ValueList<JobNote> Notes { get; }

    /// <summary>All strips of lays, welds and prices with the names by which the file refers to them.</summary>
    public ValueList<NamedStock> Stocks { get; }

    /// <summary>True where the file states the rules, false where it names the set and its fingerprint.</summary>
    public bool StatesRules => this.RulesDocument is not null;

    /// <summary>
    /// The rules as the file states them: parent set, approvals, waivers and cases too. Null where it names the set and its
    /// fingerprint. Its waivers count in an <see cref="EstimateDocument"/> of the job.
    /// </summary>
    public RuleSetDocument? RulesDocument { get; }

    /// <summary>Measures in the units their author gave, where they are not those the library would write.</summary>
    public ValueList<GivenMeasure> Given { get; }

    /// <summary>
    /// The work of every line, for <see cref="EstimateDocument"/> and <see cref="CostEstimate"/>: what most of its strip is
    /// laid for, as its lay is laid, over the steel that is covered, with all strip and all pieces; welds apart, by hand, over
    /// the steel under their strips.
    /// </summary>
    /// <param name="surface">The word for the surface of a line, as norms have it; left out: the kind by which the file names the surface, for instance <c>pipe</c>.</param>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <exception cref="ArgumentException">A surface has no form, or the word for it is empty.</exception>
    public ValueList<LabourWork> WorkByLine(Func<SurveyLine, string>? surface = null, DocumentForms? forms = null)
    {
        DocumentForms known = forms ?? DocumentForms.Library;
        return new(this.Job.Lines.SelectMany(line => LineWork.Of(line, surface is null ? known.Surfaces.KindOf(line.Lay.Surface) : surface(line))));
    }

    /// <summary>Reads a document from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="ruleSets">Sets that it may refer to, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static JobDocument Read(string json, IEnumerable<RuleSet>? ruleSets = null, DocumentForms? forms = null, DocumentLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return ReadUtf8(Encoding.UTF8.GetBytes(json), ruleSets, forms, limits);
    }

    /// <summary>Reads a document from bytes in UTF-8.</summary>
    /// <param name="utf8">The bytes; a byte order mark before them is allowed.</param>
    /// <param name="ruleSets">Sets that it may refer to, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static JobDocument ReadUtf8(
        ReadOnlyMemory<byte> utf8, IEnumerable<RuleSet>? ruleSets = null, DocumentForms? forms = null, DocumentLimits? limits = null) =>
        JobReader.Read(utf8, [RuleSet.Default, .. ruleSets ?? []], forms ?? DocumentForms.Library, limits ?? DocumentLimits.Default);

    /// <summary>The document as JSON text that reads back as an equal document, bit by bit.</summary>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <exception cref="ArgumentException">
    /// A surface, lay, loss law or cost item has no form, or the code of an own rule is not among the forms, so that it would be lost; or a text holds half of a surrogate pair, which
    /// JSON cannot carry.
    /// </exception>
    public string Write(DocumentForms? forms = null) => JobWriter.Write(this, forms ?? DocumentForms.Library);

    /// <summary>Whether two documents say the same, in whatever units.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(JobDocument? other) => other is not null
        && this.Job.Equals(other.Job)
        && Equals(this.Prices, other.Prices)
        && this.Notes.Equals(other.Notes)
        && this.Stocks.Equals(other.Stocks)
        && Equals(this.RulesDocument, other.RulesDocument);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Job, this.Prices, this.Notes, this.Stocks, this.RulesDocument);

    /// <summary>The job and how many stocks and notes.</summary>
    public override string ToString() =>
        $"{this.Job}, {this.Stocks.Count} stock(s), {this.Notes.Count} note(s){(this.Prices is null ? string.Empty : ", with prices")}";
}
