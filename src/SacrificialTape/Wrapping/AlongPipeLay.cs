using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along a straight pipe, side by side round it, their laps made equal.</summary>
/// <remarks>
/// Strips: n = ceil(C/(w - o)); lap w - C/n, never less than asked; layers everywhere floor((w - wander)/(C/n)). The strips
/// run from end to end and may be spliced.
/// </remarks>
public sealed record AlongPipeLay : ILay
{
    private readonly StraightPipe pipe;
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;
    private readonly ValueList<Strip> strips;

    /// <summary>Lays strips along a pipe.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips.</exception>
    public AlongPipeLay(StraightPipe pipe, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(stock);
        this.pipe = pipe;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedRange.FromBelow(0, stock.WidthMm, "mm (less than the strip is wide)")
            .Check(UnitConversions.Millimeters(leastLap), nameof(leastLap)));
        this.strips = this.Cut(default(NoSteps), out int across, out double lap, out int layers);
        this.StripsRound = across;
        this.lapMm = new StoredNumber(lap);
        this.LayersEverywhere = layers;
    }

    /// <summary>The pipe.</summary>
    public StraightPipe Pipe => this.pipe;

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>Wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>The lap that the strips really get.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Strips round the pipe in one pass.</summary>
    public int StripsRound { get; }

    Surface ILay.Surface => this.pipe;

    /// <inheritdoc/>
    public ValueList<Strip> Strips => this.strips;

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedCount))]
    public AreaRatio LayersOnAverage => this.strips.OnAverage(this.pipe);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.StripsRound} strip(s) along the pipe, lap {this.lapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.StripsRound} strip(s) along the pipe, a new one every {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm round it (lap {this.lapMm.Bare:0.0} mm).");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps, out _, out _, out _);
        return steps.Under("Strips along " + this.pipe.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private ValueList<Strip> Cut<TSteps>(TSteps steps, out int across, out double lapMm, out int layers)
        where TSteps : struct, IStepRecorder
    {
        double height = this.pipe.LengthMm;
        double width = this.Stock.WidthMm;
        double circumference = PipeKernel.CircumferenceMm(this.pipe.DiameterMm, steps);
        double count = SpanKernel.ClosedCount(circumference, width, this.askedLapMm.Bare, steps);
        lapMm = SpanKernel.ClosedLapMm(width, circumference, count, steps);
        layers = (int)SpanKernel.ClosedLayers(
            this.Choices.Passes, width, this.Choices.WanderMm, circumference, count, steps);
        across = StripCount.Whole(count, width, this.askedLapMm.Bare);
        double cover = height * circumference / (count * width);
        return [Strip.Computed(this.Stock, height, across * this.Choices.Passes, StripPurpose.AlongPipe, true, cover, 0)];
    }
}
