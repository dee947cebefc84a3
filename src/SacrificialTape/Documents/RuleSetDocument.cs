using System.Text;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>
/// A team's rule set as a file: its rules, or what differs from a parent set, who approved them, the waivers given
/// under it, and questions with known answers.
/// </summary>
/// <remarks>
/// <para>Format: JSON with the published schema <c>rule-set-1.json</c>. Quantities are text with their unit, days are
/// year-month-day, every rule that differs says on what it rests.</para>
/// <para>Approvals, waivers and cases stand beside the rules and outside <see cref="RuleSet.Fingerprint"/>.</para>
/// </remarks>
/// <example><code source="ShareARuleSetPage.cs" region="read" /></example>
public sealed record RuleSetDocument
{
    /// <summary>The version of the format that this library writes; older ones are read by their version, newer ones refused.</summary>
    public static int SchemaVersion => 1;

    /// <summary>Describes a document.</summary>
    /// <param name="rules">The rules, all of them.</param>
    /// <param name="basedOn">The parent set, when the file states only what differs; null to state every rule.</param>
    /// <param name="approvals">Who approved which rule; may be left out.</param>
    /// <param name="waivers">The waivers given under the set; may be left out.</param>
    /// <param name="cases">Questions with known answers, each id once; may be left out.</param>
    /// <exception cref="ArgumentException">
    /// An approval or waiver names no rule of the set, a rule is approved twice, a case stands twice, a limit is impossible or contradicts
    /// another, or the set lacks a rule of its parent, gives it another kind, or bears its parent's name and version with other rules.
    /// </exception>
    public RuleSetDocument(
        RuleSet rules,
        RuleSet? basedOn = null,
        IEnumerable<RuleApproval>? approvals = null,
        IEnumerable<Waiver>? waivers = null,
        IEnumerable<VerificationCase>? cases = null)
    {
        ArgumentNullException.ThrowIfNull(rules);
        this.Rules = rules;
        this.BasedOn = basedOn;
        this.Approvals = new ValueList<RuleApproval>((approvals ?? []).OrderBy(static approval => approval.RuleId, StringComparer.Ordinal));
        this.Waivers = new ValueList<Waiver>(waivers ?? []);
        this.Cases = new ValueList<VerificationCase>(cases ?? []);
        if (RuleSetContents.Faults(this).FirstOrDefault() is { } fault)
        {
            throw new ArgumentException(fault);
        }
    }

    /// <summary>The rules, all of them.</summary>
    public RuleSet Rules { get; }

    /// <summary>The parent set; null when every rule is stated.</summary>
    public RuleSet? BasedOn { get; }

    /// <summary>Who approved which rule, in the order of the rules' ids.</summary>
    public ValueList<RuleApproval> Approvals { get; }

    /// <summary>The waivers given under the set.</summary>
    public ValueList<Waiver> Waivers { get; }

    /// <summary>Questions with known answers.</summary>
    public ValueList<VerificationCase> Cases { get; }

    /// <summary>The library's own rules with published checks as its cases: the document to begin from.</summary>
    public static RuleSetDocument Reference { get; } = new(RuleSet.Default, cases: ReferenceCases.All());

    /// <summary>Runs the cases against the library in use: does it still agree with the team?</summary>
    /// <param name="own">A host's own calculations, beside <see cref="CaseCalculations.All"/>; may be left out.</param>
    /// <exception cref="ArgumentException">An own calculation has the name of another.</exception>
    public Verification Verify(IEnumerable<CaseCalculation>? own = null) => Verification.Of(this.Cases, own);

    /// <summary>
    /// Rules of the set that neither the library nor code of the host's own judges by, as <see cref="Job.UnjudgedRules"/> has
    /// them: nobody looks at them. A host that reads another's rule set should say so.
    /// </summary>
    /// <param name="ownRules">The code of the host; left out: none. Code for a rule that the set does not have counts for nothing.</param>
    public ValueList<Rule> UnjudgedRules(IEnumerable<IOwnRule>? ownRules = null) =>
        LineRules.NotJudged(this.Rules, (ownRules ?? []).Select(static one => one.RuleId));

    /// <summary>Reads a document from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="parents">Sets that it may be based on, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static RuleSetDocument Read(string json, IEnumerable<RuleSet>? parents = null, DocumentLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return ReadUtf8(Encoding.UTF8.GetBytes(json), parents, limits);
    }

    /// <summary>Reads a document from bytes in UTF-8.</summary>
    /// <param name="utf8">The bytes; a byte order mark before them is allowed.</param>
    /// <param name="parents">Sets that it may be based on, beside <see cref="RuleSet.Default"/>; may be left out.</param>
    /// <param name="limits">How large it may be; left out: <see cref="DocumentLimits.Default"/>.</param>
    /// <exception cref="DocumentException">The document has faults; it holds all of them.</exception>
    public static RuleSetDocument ReadUtf8(ReadOnlyMemory<byte> utf8, IEnumerable<RuleSet>? parents = null, DocumentLimits? limits = null) =>
        RuleSetReader.Read(utf8, [RuleSet.Default, .. parents ?? []], limits ?? DocumentLimits.Default);

    /// <summary>The document as JSON text that reads back as an equal document.</summary>
    /// <exception cref="ArgumentException">A text holds half of a surrogate pair, which JSON cannot carry.</exception>
    public string Write() => RuleSetWriter.Write(this);

    /// <summary>Name, version and how many rules, approvals, waivers and cases.</summary>
    public override string ToString() =>
        $"{this.Rules}: {this.Rules.Rules.Count} rule(s), {this.Approvals.Count} approval(s), {this.Waivers.Count} waiver(s), {this.Cases.Count} case(s)";
}
