using System.Globalization;
using System.Text;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>What is looked at, measured and accepted on a job, line by line, in the order of the work.</summary>
/// <remarks>
/// The order is the trade's: a trial patch first, then clean, contact windows, welds, the main lay, roll down, creases and
/// bubbles, the way the ends face; last, thickness readings where a scheme was chosen. Sampling schemes are paint documents.
/// </remarks>
/// <example><code source="InspectionPlanPage.cs" region="plan" /></example>
public sealed record InspectionPlan
{
    /// <summary>Makes a plan.</summary>
    /// <param name="lines">The lines, at least one, each name once.</param>
    /// <param name="rules">The rule set, whose limits the plan tells the crew.</param>
    /// <param name="thicknessSampling">How many thickness readings to take; left out: none, since a whole roll is measured before it is laid.</param>
    /// <exception cref="ArgumentException">No line, or a name stands twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scheme does not cover the area of a line.</exception>
    public InspectionPlan(IEnumerable<InspectionPlanLine> lines, RuleSet rules, SamplingScheme? thicknessSampling = null)
    {
        ArgumentNullException.ThrowIfNull(rules);
        this.Lines = new ValueList<InspectionPlanLine>(lines);
        if (this.Lines.Count == 0)
        {
            throw new ArgumentException("A plan has at least one line.", nameof(lines));
        }

        if (this.Lines.GroupBy(static line => line.Tag, StringComparer.Ordinal).FirstOrDefault(static same => same.Skip(1).Any()) is { } twice)
        {
            throw new ArgumentException($"Line '{twice.Key}' stands twice.", nameof(lines));
        }

        this.Rules = rules;
        this.ThicknessSampling = thicknessSampling;
        this.HoldPoints = new ValueList<HoldPoint>(HoldPointTexts.For(this.Lines, rules, thicknessSampling));
    }

    /// <summary>The lines.</summary>
    public ValueList<InspectionPlanLine> Lines { get; }

    /// <summary>The rule set.</summary>
    public RuleSet Rules { get; }

    /// <summary>What to mind before any of it, in the words that the plan begins with.</summary>
    public static string Cautions => HoldPointTexts.Cautions;

    /// <summary>The scheme of thickness readings, if one was chosen.</summary>
    public SamplingScheme? ThicknessSampling { get; }

    /// <summary>Every hold point in the order of the work.</summary>
    public ValueList<HoldPoint> HoldPoints { get; }

    /// <summary>The plan as text for the crew: cautions, then a numbered line for each hold point with room to sign.</summary>
    public string ToText()
    {
        var text = new StringBuilder("Inspection plan. Wait at each point until it is signed.\n");
        text.Append(HoldPointTexts.Cautions).Append('\n');
        for (int i = 0; i < this.HoldPoints.Count; i++)
        {
            HoldPoint point = this.HoldPoints[i];
            text.Append(CultureInfo.InvariantCulture, $"{i + 1}. {HoldPointTexts.NameOf(point.Kind)}, {point.Place}: {point.WhatToLookAt} Go on when: {point.AcceptWhen} Signed: ____\n");
        }

        return text.ToString();
    }

    /// <summary>How many lines and hold points.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Lines.Count} line(s), {this.HoldPoints.Count} hold point(s)");
}
