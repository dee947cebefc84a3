using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Sections;
using SacrificialTape.Reports.Writing;
using SacrificialTape.Rules;

namespace SacrificialTape.Reports;

/// <summary>An estimate as one page that can be printed and handed on.</summary>
/// <remarks>
/// Cautions and what stops work stand first. Numbers are shown in the units and culture of the options and are rounded
/// there only; sentences that come from rules and crew steps state metric numbers as the rule set does. The same estimate
/// and options give the same text, byte for byte.
/// </remarks>
/// <example><code source="JobPackPage.cs" region="pack" /></example>
public sealed record JobPack
{
    private readonly PackPage page;

    /// <summary>Makes the pack of an estimate.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="options">What it holds and how it shows numbers; left out: metric, invariant, no cost, no workings.</param>
    /// <exception cref="ArgumentException">There are waivers but no day to judge them on.</exception>
    /// <exception cref="InvalidOperationException">The minor unit of the currency is not known and no digits are stated.</exception>
    public JobPack(JobEstimate estimate, JobPackOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        this.Estimate = estimate;
        this.Options = options ?? new JobPackOptions();
        if (this.Options is { Waivers.Count: > 0, Day: null })
        {
            throw new ArgumentException("Waivers hold for days: state the day of the pack.", nameof(options));
        }

        this.Findings = FindingsUnderWaivers.Of(estimate.Findings, this.Options.Waivers, this.Options.Day ?? DateOnly.MinValue);
        this.page = PackSections.Of(this);
    }

    /// <summary>The estimate.</summary>
    public JobEstimate Estimate { get; }

    /// <summary>What the pack holds and how it shows numbers.</summary>
    public JobPackOptions Options { get; }

    /// <summary>The findings, those that are waived apart.</summary>
    public FindingsUnderWaivers Findings { get; }

    /// <summary>One page of HTML that needs nothing else: style and pictures stand in it.</summary>
    public string ToHtml() => HtmlPage.Of(this.page);

    /// <summary>The same as Markdown with tables; pictures are told in words.</summary>
    public string ToMarkdown() => MarkdownPage.Of(this.page);

    /// <summary>The job and how many lines.</summary>
    public override string ToString() => FormattableString.Invariant($"job pack of {this.Estimate.Job.Name}, {this.Estimate.Lines.Count} line(s)");
}
