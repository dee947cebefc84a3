using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What a job comes to: line by line, in rolls and in total, with every finding.</summary>
public sealed record JobEstimate : IHasWorkings
{
    private JobEstimate(Job job, ValueList<LineEstimate> lines, StripTakeOff takeOff, ValueList<Finding> general)
    {
        this.Job = job;
        this.Lines = lines;
        this.TakeOff = takeOff;
        this.GeneralFindings = general;
        this.Findings = [.. lines.SelectMany(static line => line.Findings), .. general];
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>Which rule set the findings rest on, to the last digit.</summary>
    public Fingerprint RuleSetFingerprint => this.Job.Rules.Fingerprint;

    /// <summary>Line by line, in the order of the survey.</summary>
    public ValueList<LineEstimate> Lines { get; }

    /// <summary>What to order.</summary>
    public StripTakeOff TakeOff { get; }

    /// <summary>Findings that belong to no single line.</summary>
    public ValueList<Finding> GeneralFindings { get; }

    /// <summary>All findings: those of the lines in order, then the general ones.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Steel covered: the surfaces without what stays clear.</summary>
    public Area Covered => Area.FromSquareMeters(this.Lines.Sum(static line => line.Line.CoveredM2));

    /// <summary>Steel left clear: spots and bands with their margins.</summary>
    public Area LeftClear => Area.FromSquareMeters(this.Lines.Sum(static line => UnitConversions.SquareMeters(line.LeftClear)));

    /// <summary>Strip that the lays need, without splices, spare and offcuts.</summary>
    public Length StripLength => Length.FromMicrometers(this.Lines.Sum(static line => line.StripUm));

    /// <summary>What is looked at while the job is laid: the hold points of every line, those over paint and along welds where it has them.</summary>
    /// <param name="thicknessSampling">By which document thickness readings are counted; left out: none are taken.</param>
    /// <exception cref="ArgumentOutOfRangeException">The document does not say how many readings the area of a line takes.</exception>
    public InspectionPlan PlanInspection(SamplingScheme? thicknessSampling = null) => new(
        this.Lines.Select(static line => InspectionPlanLine.FromLay(
            line.Line.Tag,
            line.Line.Lay,
            paintStays: line.Line.Steel.WindowsInPaint is not null || line.Line.Needs.Windows is not null,
            hasWelds: line.Line.Welds is not null)),
        this.Job.Rules,
        thicknessSampling);

    /// <summary>The steps of the lines in their order, then those of the take-off.</summary>
    public Workings ShowWorkings() => Workings.Joined(this.Job.Name, [.. this.Lines, this.TakeOff]);

    internal static JobEstimate Of(Job job)
    {
        var lives = new LifeEstimates(job.Rules);
        var lines = new LineEstimate[job.Lines.Count];
        for (int i = 0; i < lines.Length; i++)
        {
            lines[i] = LineEstimator.Estimate(job.Lines[i], job.JudgedBy, lives);
        }

        StripTakeOff takeOff = StripTakeOff.Of(lines.SelectMany(static line => line.Strips), job.TakeOff);
        return new(job, ValueList<LineEstimate>.Owning(lines), takeOff, new ValueList<Finding>(takeOff.Judge(job.Rules)));
    }

    /// <summary>Name and rolls in a few words.</summary>
    public override string ToString() => $"{this.Job.Name}: {this.TakeOff}";
}
