using System.Text;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>An estimate as a file: the whole job, what it came to, by which version of the library, on which day, with its waivers.</summary>
/// <remarks>
/// <para>Format: JSON with the published schema <c>estimate-1.json</c>. Whoever reads it without this library finds the
/// results in it; whoever reads it with the library can work the job out again and see what differs.</para>
/// <para>Reading works nothing out: a file that states an enormous job costs no more than its own length. What needs the
/// job worked out by the library in use is a method, and works it out once.</para>
/// <para>Equality: all that the file states.</para>
/// </remarks>
/// <example><code source="ExchangeJobsPage.cs" region="estimate" /></example>
public sealed record EstimateDocument : IHasWorkings
{
    private readonly Lazy<JobEstimate> estimate;

    /// <summary>The version of the format that this library writes; older ones are read by their version, newer ones refused.</summary>
    public static int SchemaVersion => 1;

    /// <summary>Works a job out and keeps what it comes to.</summary>
    /// <param name="job">The job, with its prices if it is to be costed.</param>
    /// <param name="day">The day of the estimate, by which waivers hold or have ended.</param>
    /// <param name="work">The work to be priced; left out: nothing is costed.</param>
    /// <param name="waivers">Findings that may stand, beside those of the rules that the job states; may be left out.</param>
    /// <exception cref="ArgumentException">Work is given without prices, or a stock or kind of work has none.</exception>
    public EstimateDocument(JobDocument job, DateOnly day, IEnumerable<LabourWork>? work = null, IEnumerable<Waiver>? waivers = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        this.Job = job;
        this.Day = day;
        this.Library = CurrentLibrary;
        this.Work = new ValueList<LabourWork>(work ?? []);
        this.Waivers = Together(job, waivers ?? []);
        this.estimate = new Lazy<JobEstimate>(job.Job.Estimate);
        if (this.Work.Count > 0 && job.Prices is null)
        {
            throw new ArgumentException("The job has no prices, so that its work cannot be costed.", nameof(work));
        }

        this.Results = this.WorkOut();
    }

    internal EstimateDocument(JobDocument job, DateOnly day, string library, ValueList<LabourWork> work, ValueList<Waiver> waivers, StatedResults results)
    {
        this.Job = job;
        this.Day = day;
        this.Library = library;
        this.Work = work;
        this.Waivers = Together(job, waivers);
        this.estimate = new Lazy<JobEstimate>(job.Job.Estimate);
        this.Results = results;
    }

    /// <summary>The job.</summary>
    public JobDocument Job { get; }

    /// <summary>The day of the estimate.</summary>
    public DateOnly Day { get; }

    /// <summary>The version of the library that worked it out.</summary>
    public string Library { get; }

    /// <summary>The work that was priced; empty where nothing was costed.</summary>
    public ValueList<LabourWork> Work { get; }

    /// <summary>
    /// Findings that may stand: the waivers of the rules that the job states, then those given beside them, each once. They
    /// hide nothing: the findings are among the results.
    /// </summary>
    public ValueList<Waiver> Waivers { get; }

    /// <summary>What the job came to, as the file states it.</summary>
    public StatedResults Results { get; }

    private static string CurrentLibrary => typeof(EstimateDocument).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";

    /// <summary>Reads a document from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="ruleSets">Sets that it may refer to, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static EstimateDocument Read(string json, IEnumerable<RuleSet>? ruleSets = null, DocumentForms? forms = null, DocumentLimits? limits = null)
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
    public static EstimateDocument ReadUtf8(
        ReadOnlyMemory<byte> utf8, IEnumerable<RuleSet>? ruleSets = null, DocumentForms? forms = null, DocumentLimits? limits = null) =>
        EstimateReader.Read(utf8, [RuleSet.Default, .. ruleSets ?? []], forms ?? DocumentForms.Library, limits ?? DocumentLimits.Default);

    /// <summary>The document as JSON text that reads back as an equal document, bit by bit.</summary>
    /// <param name="forms">The kinds that are known; left out: <see cref="DocumentForms.Library"/>.</param>
    /// <exception cref="ArgumentException">As for <see cref="JobDocument.Write"/>.</exception>
    public string Write(DocumentForms? forms = null) => EstimateWriter.Write(this, forms ?? DocumentForms.Library);

    /// <summary>Works the job out by the library in use and tells every result that the file states otherwise. Numbers agree to 1e-9 of their size.</summary>
    public ValueList<EstimateDifference> Differences() => new(EstimateComparison.Of(this.Results, this.WorkOut()));

    /// <summary>The estimate by the library in use, worked out once: for a document that was just made, the one its results come from.</summary>
    public JobEstimate Estimate() => this.estimate.Value;

    /// <summary>What the work costs by the library in use; null where nothing was priced.</summary>
    /// <exception cref="ArgumentException">A stock or kind of work has no price.</exception>
    public CostEstimate? Cost() => this.Work.Count > 0 && this.Job.Prices is { } prices
        ? new CostEstimate(this.Estimate().TakeOff, this.Estimate().Covered, this.Work, prices)
        : null;

    /// <summary>The findings by the library in use, those apart that are waived on the day of the estimate.</summary>
    public FindingsUnderWaivers Findings() => FindingsUnderWaivers.Of(this.Estimate().Findings, this.Waivers, this.Day);

    /// <summary>The steps of the job, worked out by the library in use.</summary>
    public Workings ShowWorkings() => this.Estimate().ShowWorkings();

    /// <summary>Whether two documents state the same.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(EstimateDocument? other) => other is not null
        && this.Job.Equals(other.Job)
        && this.Day == other.Day
        && this.Library == other.Library
        && this.Work.Equals(other.Work)
        && this.Waivers.Equals(other.Waivers)
        && this.Results.Equals(other.Results);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Job, this.Day, this.Library, this.Work, this.Waivers, this.Results);

    /// <summary>Name of the job, results, day and library in a few words.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Job.Job.Name}: {this.Results}; {this.Day:yyyy-MM-dd}, library {this.Library}");

    private static ValueList<Waiver> Together(JobDocument job, IEnumerable<Waiver> beside) =>
        new((job.RulesDocument?.Waivers ?? []).Concat(beside).Distinct());

    private StatedResults WorkOut() => StatedResults.Of(this.Estimate(), this.Job.Stocks, this.Cost());
}
