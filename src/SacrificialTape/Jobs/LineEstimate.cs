using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What one line of a survey comes to.</summary>
public sealed record LineEstimate
{
    internal LineEstimate(SurveyLine line, ValueList<Strip> strips, LifeEstimate life, BareContact? contact, ValueList<Finding> findings)
    {
        this.Line = line;
        this.Strips = strips;
        this.Life = life;
        this.Contact = contact;
        this.Findings = findings;
    }

    /// <summary>The line.</summary>
    public SurveyLine Line { get; }

    /// <summary>The strips to cut, those along welds first.</summary>
    public ValueList<Strip> Strips { get; }

    /// <summary>How long the zinc lasts.</summary>
    public LifeEstimate Life { get; }

    /// <summary>Bare contact, where paint stays under the tape.</summary>
    public BareContact? Contact { get; }

    /// <summary>The rules that do not hold, or whose case arises.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Length of all strips.</summary>
    public Length StripLength => Length.FromMicrometers(this.StripUm);

    /// <summary>What the crew does, in order. Made anew on each call.</summary>
    public ValueList<CrewStep> CrewSteps => new(Jobs.CrewSteps.For(this.Line));

    internal double StripUm => this.Strips.Sum(static strip => (double)strip.LengthUm * strip.Count);

    /// <summary>Tag and life in a few words.</summary>
    public override string ToString() => $"{this.Line.Tag}: {this.Life}";
}
