using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A straight pipe with bands all round that stay clear. To the tape it is as many pipes as it has spans.</summary>
/// <remarks>
/// Bands: all with a place, or none; without places they part the pipe into equal spans. With their margins they lie
/// within the pipe and do not overlap (touching is allowed, to a billionth), and leave something to cover.
/// <see cref="Area"/> is what is covered.
/// </remarks>
public sealed record InterruptedPipe : Surface
{
    private readonly StoredNumber bandsMm;

    /// <summary>Describes a pipe with bands.</summary>
    /// <param name="pipe">The whole pipe.</param>
    /// <param name="bands">At least one; no spots.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bands with their margins are not shorter than the pipe.</exception>
    /// <exception cref="ArgumentException">There is no band, one is a spot, only some have places, or a place does not fit.</exception>
    public InterruptedPipe(StraightPipe pipe, IEnumerable<StayClear> bands)
    {
        ValueList<StayClear> allBands = bands.Listed();
        ArgumentNullException.ThrowIfNull(pipe);
        if (allBands.Count == 0)
        {
            throw new ArgumentException("There is no band: lay the pipe as it is.", nameof(bands));
        }

        if (allBands.FirstOrDefault(static one => !one.IsBand) is { } spot)
        {
            throw new ArgumentException($"Not a band: {spot}. State spots on the survey line.", nameof(bands));
        }

        this.Pipe = pipe;
        this.Bands = allBands;
        double clear = 0;
        foreach (StayClear band in allBands)
        {
            clear = StayClearKernel.AllBandsMm(clear, band.BandMm, default(NoSteps));
        }

        if (WithAllowance.AtLeast(clear, pipe.LengthMm))
        {
            throw AcceptedRange.Inside(0, pipe.LengthMm, "mm").Noting("bands with their margins must be shorter than the pipe").Refuse(clear, nameof(bands));
        }

        this.bandsMm = new StoredNumber(clear);
        int placed = allBands.Count(static band => band.IsPlaced);
        if (placed != 0 && placed != allBands.Count)
        {
            throw new ArgumentException("Some bands have a place and some have none: state all places, or none for equal spans.", nameof(bands));
        }

        this.Spans = ValueList<PipeSpan>.Owning([.. placed == 0 ? this.Equal() : this.Placed()]);
    }

    /// <summary>The whole pipe.</summary>
    public StraightPipe Pipe { get; }

    /// <summary>What stays clear.</summary>
    public ValueList<StayClear> Bands { get; }

    /// <summary>The lengths that are covered, from the start of the pipe on.</summary>
    public ValueList<PipeSpan> Spans { get; }

    /// <summary>Length of all bands with their margins.</summary>
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.Band))]
    public Length ClearLength => Length.FromMillimeters(this.bandsMm.Bare);

    /// <summary>Area of the bands with their margins.</summary>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Area))]
    public Area ClearArea => Area.FromSquareMeters(PipeKernel.SquareMeters(this.Pipe.DiameterMm, this.bandsMm.Bare, default(NoSteps)));

    /// <summary>Area of the whole pipe, bands included.</summary>
    public Area GrossArea => this.Pipe.Area;

    /// <inheritdoc/>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Pipe.Description}, {this.BandCount} band(s) left clear, {this.Spans.Count} span(s)");

    private int BandCount => this.Bands.Sum(static band => band.Count);

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        double clear = 0;
        foreach (StayClear band in this.Bands)
        {
            clear = StayClearKernel.AllBandsMm(clear, band.ExtentOf(steps), steps);
        }

        if (!this.Bands[0].IsPlaced)
        {
            _ = StayClearKernel.EqualSpanMm(this.Pipe.LengthMm, this.bandsMm.Bare, this.BandCount, steps);
        }

        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => PipeKernel.SquareMeters(
            this.Pipe.DiameterMm, StayClearKernel.CoveredMm(this.Pipe.LengthMm, this.bandsMm.Bare, steps), steps);

    private IEnumerable<PipeSpan> Equal()
    {
        double length = StayClearKernel.EqualSpanMm(this.Pipe.LengthMm, this.bandsMm.Bare, this.BandCount, default(NoSteps));

        // One pipe for all of them: what is laid on it is worked out once.
        var one = new StraightPipe(this.Pipe.OutsideDiameter, Length.FromMillimeters(length));
        double from = 0;
        foreach (StayClear band in this.Bands)
        {
            for (int i = 0; i < band.Count; i++)
            {
                yield return new PipeSpan(from, from + length, one);
                from += length + band.OneBandMm;
            }
        }

        yield return new PipeSpan(from, this.Pipe.LengthMm, one);
    }

    private IEnumerable<PipeSpan> Placed()
    {
        double at = 0;
        foreach (StayClear band in this.Bands.OrderBy(static band => band.MiddleMm))
        {
            double from = band.MiddleMm - (band.BandMm / 2);
            if (WithAllowance.Below(from + this.Pipe.LengthMm, at + this.Pipe.LengthMm))
            {
                throw new ArgumentException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"With its margins this band begins at {from:0.###} mm, where {(at == 0 ? "the pipe has not begun" : $"the one before it goes to {at:0.###} mm")}: {band}."), "bands");
            }

            if (this.IsSpan(at, from))
            {
                yield return this.Span(at, from);
            }

            at = from + band.BandMm;
            if (WithAllowance.Above(at, this.Pipe.LengthMm))
            {
                throw new ArgumentException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"With its margins this band goes to {at:0.###} mm, past the end of the pipe at {this.Pipe.LengthMm:0.###} mm: {band}."), "bands");
            }
        }

        if (this.IsSpan(at, this.Pipe.LengthMm))
        {
            yield return this.Span(at, this.Pipe.LengthMm);
        }
    }

    // What is left between bands that touch is rounding.
    private bool IsSpan(double fromMm, double toMm) => WithAllowance.Above(toMm - fromMm + this.Pipe.LengthMm, this.Pipe.LengthMm);

    private PipeSpan Span(double fromMm, double toMm) =>
        new(fromMm, toMm, new StraightPipe(this.Pipe.OutsideDiameter, Length.FromMillimeters(toMm - fromMm)));
}
