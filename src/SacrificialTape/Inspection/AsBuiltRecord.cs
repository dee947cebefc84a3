using System.Text;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>The record of a job as built: its lines, every finding, and who signed which.</summary>
/// <remarks>
/// A line of the plan that is not in the record, and a hold point without a reading, are findings. A signature takes a
/// finding off the open list and never out of the record.
/// </remarks>
/// <example><code source="InspectionPlanPage.cs" region="as-built" /></example>
public sealed record AsBuiltRecord
{
    /// <summary>Makes a record without signatures.</summary>
    /// <param name="plan">The plan of the job.</param>
    /// <param name="lines">The lines as built, each once and each in the plan.</param>
    /// <exception cref="ArgumentException">A line stands twice or is not in the plan.</exception>
    public AsBuiltRecord(InspectionPlan plan, IEnumerable<AsBuiltLine> lines)
        : this(plan, new ValueList<AsBuiltLine>(lines), [])
    {
        foreach (AsBuiltLine line in this.Lines)
        {
            if (plan.Lines.All(planned => planned.Tag != line.Tag))
            {
                throw new ArgumentException($"Line '{line.Tag}' is not in the plan.", nameof(lines));
            }

            if (this.Lines.Count(other => other.Tag == line.Tag) > 1)
            {
                throw new ArgumentException($"Line '{line.Tag}' stands twice.", nameof(lines));
            }
        }
    }

    private AsBuiltRecord(InspectionPlan plan, ValueList<AsBuiltLine> lines, ValueList<AsBuiltSignature> signatures)
    {
        ArgumentNullException.ThrowIfNull(plan);
        this.Plan = plan;
        this.Lines = lines;
        this.Signatures = signatures;
        this.Findings = new ValueList<Finding>(Judge(plan, lines));
    }

    /// <summary>The plan of the job.</summary>
    public InspectionPlan Plan { get; }

    /// <summary>The lines as built.</summary>
    public ValueList<AsBuiltLine> Lines { get; }

    /// <summary>Who signed which finding.</summary>
    public ValueList<AsBuiltSignature> Signatures { get; }

    /// <summary>Every finding, signed or not.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Findings that nobody signed.</summary>
    public ValueList<Finding> OpenFindings => new(this.Findings.Where(finding => this.Signatures.All(signed => !signed.Finding.Equals(finding))));

    /// <summary>The record with one more finding signed.</summary>
    /// <param name="finding">One of the open findings.</param>
    /// <param name="by">Who signs.</param>
    /// <param name="at">When.</param>
    /// <param name="word">What was done, or why it may stay.</param>
    /// <exception cref="ArgumentException">The finding is not an open one of this record, or a text is empty.</exception>
    public AsBuiltRecord Sign(Finding finding, string by, DateTimeOffset at, string word)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return this.OpenFindings.Contains(finding)
            ? new(this.Plan, this.Lines, [.. this.Signatures, new AsBuiltSignature(finding, by, at, word)])
            : throw new ArgumentException($"'[{finding.Rule.Id}] {finding.Subject}' is not an open finding of this record.", nameof(finding));
    }

    /// <summary>The record as text: each line with batches and readings, then signed and open findings.</summary>
    public string ToText()
    {
        var text = new StringBuilder("As built\n");
        foreach (AsBuiltLine line in this.Lines)
        {
            text.Append(line).Append('\n');
            foreach (TapeBatch batch in line.Batches)
            {
                text.Append("  ").Append(batch).Append('\n');
            }

            foreach (HoldPointReading reading in line.Readings)
            {
                text.Append("  ").Append(reading).Append('\n');
            }
        }

        foreach (AsBuiltSignature signature in this.Signatures)
        {
            text.Append("Signed ").Append(signature).Append('\n');
        }

        foreach (Finding finding in this.OpenFindings)
        {
            text.Append("Open ").Append(finding).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>How many lines and findings.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Lines.Count} of {this.Plan.Lines.Count} line(s), {this.OpenFindings.Count} open finding(s) of {this.Findings.Count}");

    private static IEnumerable<Finding> Judge(InspectionPlan plan, ValueList<AsBuiltLine> lines)
    {
        RuleSet rules = plan.Rules;
        foreach (HoldPoint patch in plan.HoldPoints.Where(static point => point.Kind == HoldPointKind.TrialPatch))
        {
            bool overPaint = patch.Place.StartsWith("over paint", StringComparison.Ordinal);
            IEnumerable<string> alike = plan.Lines.Where(line => line.PaintStays == overPaint).Select(static line => line.Tag);
            if (!lines.Any(line => alike.Contains(line.Tag) && line.Readings.Any(static reading => reading.Kind == HoldPointKind.TrialPatch)))
            {
                yield return rules[RuleIds.NotInspected].State($"{patch.Place}, {HoldPointTexts.NameOf(patch.Kind)}");
            }
        }

        foreach (InspectionPlanLine planned in plan.Lines)
        {
            if (lines.FirstOrDefault(line => line.Tag == planned.Tag) is not { } built)
            {
                yield return rules[RuleIds.NotInspected].State($"{planned.Tag}, the whole line");
                continue;
            }

            foreach (Finding finding in built.Judge(plan, rules))
            {
                yield return finding;
            }
        }
    }
}
