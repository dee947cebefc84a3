using SacrificialTape.Contact;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What one line of a survey comes to.</summary>
public sealed record LineEstimate : IHasWorkings
{
    internal LineEstimate(SurveyLine line, LifeEstimate life, LineRules rules)
    {
        this.Line = line;
        this.Life = life;
        this.Findings = new(LineEstimator.Judge(line, life, rules));
    }

    /// <summary>The line.</summary>
    public SurveyLine Line { get; }

    /// <summary>The strips to cut, those along welds first. What is cut out over spots that stay clear is trim.</summary>
    public ValueList<Strip> Strips => this.Line.Welds is { } welds
        ? ValueList<Strip>.Owning([.. welds.Strips, .. this.Line.LayStrips])
        : this.Line.LayStrips;

    /// <summary>Steel covered: the surface without what stays clear.</summary>
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.Covered))]
    public Area Covered => Area.FromSquareMeters(this.Line.CoveredM2);

    /// <summary>Steel left clear: spots and bands with their margins.</summary>
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.RectangularSpots))]
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.RoundSpots))]
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.Band))]
    public Area LeftClear => Area.FromSquareMeters(this.Line.SpotM2
        + (this.Line.Lay is InterruptedLay interrupted ? UnitConversions.SquareMeters(interrupted.Pipe.ClearArea) : 0));

    /// <summary>How long the zinc lasts.</summary>
    public LifeEstimate Life { get; }

    /// <summary>How long zinc and the paint over it last together, by each published factor; null where no paint goes over the tape.</summary>
    public DuplexLife? Duplex => this.Line.PaintOver is { } paint ? new DuplexLife(this.Life.Earliest, this.Life.Latest, paint) : null;

    /// <summary>
    /// Whether category and loss laws describe this line at all. False where its findings name a hazard that puts the zinc
    /// outside them: then <see cref="Life"/> is arithmetic, to be relied on by nobody.
    /// </summary>
    public bool LifeHolds => !this.Findings.Any(static finding => HazardRules.VoidsLife(finding.Rule.Id));

    /// <summary>Bare contact, where paint stays under the tape.</summary>
    public BareContact? Contact => this.Line.Contact;

    /// <summary>Contact by places of windows and strips, where the survey gives those of the windows.</summary>
    public LayContact? ProvenContact => this.Line.ProvenContact;

    /// <summary>The rules that do not hold, or whose case arises.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Length of all strips.</summary>
    public Length StripLength => Length.FromMicrometers(this.StripUm);

    /// <summary>What the crew does, in order; where a finding stops the line, that and nothing else. Made anew on each call.</summary>
    public ValueList<CrewStep> CrewSteps => new(Jobs.CrewSteps.For(this.Line, this.Findings));

    internal double StripUm => this.Line.Lay.Strips.TotalUm() + (this.Line.Welds?.Strips.TotalUm() ?? 0);

    /// <summary>
    /// The steps of surface, weld strips, lay, what stays clear, contact, life and paint, in this order. Each part begins
    /// anew with its letters; the parts by themselves are at <see cref="Line"/> and here.
    /// </summary>
    public Workings ShowWorkings() => Workings.Joined(this.Line.Tag, this.Parts());

    /// <summary>Tag and life in a few words.</summary>
    public override string ToString() => $"{this.Line.Tag}: {this.Life}";

    private IEnumerable<IHasWorkings> Parts()
    {
        IHasWorkings?[] parts =
        [
            this.Line.Lay.Surface, this.Line.Welds, this.Line.Lay, .. this.Line.Spots, this.Contact, this.ProvenContact, this.Life, this.Duplex,
        ];
        return parts.OfType<IHasWorkings>();
    }
}
