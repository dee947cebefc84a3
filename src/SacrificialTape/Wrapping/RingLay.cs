using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Rings side by side on a straight pipe, their laps made equal so that the last one ends at the end of the pipe.</summary>
/// <remarks>
/// Rings: n = ceil((h - o)/(w - o)), 1 when the pipe is no longer than the strip is wide; lap (n w - h)/(n - 1), never less
/// than asked. A ring is the circumference plus its lap on itself. At the two ends of the pipe lies one ring only.
/// </remarks>
public sealed record RingLay : ILay
{
    private readonly StraightPipe pipe;
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;
    private readonly ValueList<Strip> strips;

    /// <summary>Lays rings.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips.</exception>
    public RingLay(StraightPipe pipe, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(stock);
        this.pipe = pipe;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedRange.FromBelow(0, stock.WidthMm, "mm (less than the strip is wide)")
            .Check(UnitConversions.Millimeters(leastLap), nameof(leastLap)));
        this.strips = this.Cut(default(NoSteps), out int rings, out double lap, out int layers);
        this.Rings = rings;
        this.lapMm = new StoredNumber(lap);
        this.LayersEverywhere = layers;
    }

    /// <summary>The pipe.</summary>
    public StraightPipe Pipe => this.pipe;

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>The lap that the rings really get; zero when there is one ring only.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Rings in one pass.</summary>
    public int Rings { get; }

    Surface ILay.Surface => this.pipe;

    /// <inheritdoc/>
    public ValueList<Strip> Strips => this.strips;

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenCount))]
    public AreaRatio LayersOnAverage => this.strips.OnAverage(this.pipe);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture, $"{this.Rings} ring(s), lap {this.lapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.Rings} ring(s), a new one every {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm{(this.Rings > 1 ? string.Create(CultureInfo.InvariantCulture, $" (lap {this.lapMm.Bare:0.0} mm)") : string.Empty)}, each lapped {this.Choices.EndLapMm:0.#} mm on itself.");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Rings > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        if (rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
        {
            yield return endLap;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps, out _, out _, out _);
        return steps.Under("Rings on " + this.pipe.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private ValueList<Strip> Cut<TSteps>(TSteps steps, out int rings, out double lapMm, out int layers)
        where TSteps : struct, IStepRecorder
    {
        double height = this.pipe.LengthMm;
        double width = this.Stock.WidthMm;
        double circumference = PipeKernel.CircumferenceMm(this.pipe.DiameterMm, steps);
        double count = SpanKernel.OpenCount(height, width, this.askedLapMm.Bare, steps);
        double ring = SpanKernel.RingLengthMm(circumference, this.Choices.EndLapMm, steps);
        double wander = this.Choices.WanderMm;
        rings = StripCount.Whole(count, width, this.askedLapMm.Bare);
        lapMm = 0;
        layers = this.Choices.Passes; // a single ring has no neighbour to wander from
        if (count > 1)
        {
            lapMm = SpanKernel.OpenLapMm(count, width, height, steps);
            layers = (int)SpanKernel.OpenLayers(this.Choices.Passes, width, wander, width - lapMm, steps);
        }

        // A single ring wider than the pipe is long stands over; what stands over is cut off along its whole length.
        double cover = circumference * Math.Min(1, height / (count * width));
        double trim = count > 1 ? 0 : circumference - cover;
        return [Strip.Computed(this.Stock, ring, rings * this.Choices.Passes, StripPurpose.Ring, false, cover, trim)];
    }
}
