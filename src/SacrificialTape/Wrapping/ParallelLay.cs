using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Like strips side by side on a straight pipe, their laps made equal.</summary>
public abstract record ParallelLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;

    private protected ParallelLay(in ParallelInput input, in ParallelCut cut)
    {
        this.Pipe = input.Pipe;
        this.Stock = input.Stock;
        this.Choices = input.Choices;
        this.askedLapMm = new StoredNumber(input.LeastLapMm);
        this.lapMm = new StoredNumber(cut.LapMm);
        this.SideBySide = cut.SideBySide;
        this.LayersEverywhere = cut.LayersEverywhere;
        this.Strips = [cut.Strip];
    }

    /// <summary>The pipe.</summary>
    public StraightPipe Pipe { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>The lap that the strips really get; zero when there is one strip with open sides.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedLap))]
    public Length Lap => Length.FromMillimeters(this.LapMm);

    Surface ILay.Surface => this.Pipe;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenCount))]
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedCount))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Pipe);

    /// <inheritdoc/>
    public abstract string Description { get; }

    /// <inheritdoc/>
    public abstract string Instruction { get; }

    /// <inheritdoc/>
    public abstract StripCourse Course { get; }

    private protected int SideBySide { get; }

    private protected double LapMm => this.lapMm.Bare;

    private protected double SpacingMm => this.Stock.WidthMm - this.LapMm;

    private protected ParallelInput Input => new(this.Pipe, this.Stock, this.askedLapMm.Bare, this.Choices);

    /// <inheritdoc/>
    public abstract IEnumerable<Finding> Judge(RuleSet rules, string subject);

    /// <inheritdoc/>
    public abstract Workings ShowWorkings();

    /// <summary>The description.</summary>
    public sealed override string ToString() => this.Description;
}
