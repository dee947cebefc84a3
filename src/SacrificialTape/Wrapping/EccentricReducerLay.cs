using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along an eccentric reducer, each on a straight line of its wall, side by side round it.</summary>
/// <remarks>
/// <para>The wall is an oblique cone and unrolls: strips lie on it without strain. They are spread evenly round the large
/// end, n = ceil(C/(w - o)), where they lap least; toward the small end they lap more and more. Any spot between two
/// strips is no farther from their middle lines than along the rim, so that the lap along the rim is the least.</para>
/// <para>Each strip is as long as its line, and as the rims within its width reach beyond it, and laps by the end lap on
/// the tape of the pipe at both ends.</para>
/// </remarks>
public sealed record EccentricReducerLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;
    private readonly StoredNumber smallEndLapMm;
    private readonly StoredNumber shortestMm;
    private readonly StoredNumber longestMm;

    /// <summary>Lays strips along a reducer.</summary>
    /// <param name="reducer">The reducer.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours, at the large end; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is outside its range, takes over 100 000 strips, or the strip is so wide that its edges leave the reducer
    /// before its ends.
    /// </exception>
    public EccentricReducerLay(EccentricReducer reducer, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(reducer);
        ArgumentNullException.ThrowIfNull(stock);
        this.Reducer = reducer;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        Solution? solution = this.Solve(default(NoSteps));
        if (solution is not { } solved)
        {
            throw new ArgumentOutOfRangeException(nameof(stock), string.Create(
                CultureInfo.InvariantCulture,
                $"The edges of a strip {stock.WidthMm:0.######} mm wide leave a {reducer.Description} before its ends: the strip must be narrower, well below {Math.PI * reducer.SmallMm:0.###} mm."));
        }

        this.StripsRound = solved.Count;
        this.lapMm = new StoredNumber(solved.LapMm);
        this.smallEndLapMm = new StoredNumber(solved.SmallEndLapMm);
        this.shortestMm = new StoredNumber(solved.ShortestMm);
        this.longestMm = new StoredNumber(solved.LongestMm);
        this.LayersEverywhere = StripCount.Layers(solved.Layers, this.askedLapMm.Bare);
        this.Strips = solved.Pieces.ToStrips(stock, this.Choices.Passes, StripPurpose.AlongPipe, true);
    }

    /// <summary>The reducer.</summary>
    public EccentricReducer Reducer { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The least lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Strips round the reducer in one pass; the first has its middle on the straight side.</summary>
    public int StripsRound { get; }

    /// <summary>Lap along the rim of the large end, made equal: the least.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Lap along the rim of the small end.</summary>
    [BasisOf(typeof(EccentricReducerFormulas), nameof(EccentricReducerFormulas.SmallEndLap))]
    public Length SmallEndLap => Length.FromMillimeters(this.smallEndLapMm.Bare);

    Surface ILay.Surface => this.Reducer;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.Along;

    /// <summary>The strips to cut: first that of the straight side, then pair by pair round to the sloping side.</summary>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(EccentricReducerFormulas), nameof(EccentricReducerFormulas.AllStrips))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Reducer);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.StripsRound} strip(s) along an eccentric reducer, lap {this.lapMm.Bare:0.#} mm at the large end and {this.smallEndLapMm.Bare:0.#} mm at the small end, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Divide both ends into {this.StripsRound} equal parts, beginning on the straight side, and join like marks by straight lines. Lay a strip with its middle on each line, {this.shortestMm.Bare:0} to {this.longestMm.Bare:0} mm long, {this.Choices.EndLapMm:0.#} mm past the reducer onto the tape of the pipe at both ends (lap {this.lapMm.Bare:0.0} mm at the large end, {this.smallEndLapMm.Bare:0.0} mm at the small end). Where the axis is level begin with the lowest line and work up on both sides.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject),
            rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Strips along " + this.Reducer.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution? Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double large = this.Reducer.LargeMm;
        double small = this.Reducer.SmallMm;
        double length = this.Reducer.LengthMm;
        double circumference = PipeKernel.CircumferenceMm(large, steps);
        double round = SpanKernel.ClosedCount(circumference, width, this.askedLapMm.Bare, steps);
        int count = StripCount.OneByOne(round, width, this.askedLapMm.Bare);
        double lap = SpanKernel.ClosedLapMm(width, circumference, count, steps);
        double smallLap = EccentricReducerKernel.SmallEndLapMm(width, small, count, steps);
        double layers = SpanKernel.ClosedLayers(this.Choices.Passes, width, this.Choices.WanderMm, circumference, count, steps);
        var pieces = new TrimmedPieces();
        double shortest = double.MaxValue;
        double longest = 0;
        for (int i = 0; 2 * i <= count; i++)
        {
            // The straight side, and the sloping side of an even number, have one strip; all others come in pairs.
            double at = 2 * Math.PI * i / count;
            if (ObliqueConeKernel.Band(large, small, length, at, width) is not { } band)
            {
                return null;
            }

            double strip = i == 0 || 2 * (i + 1) > count
                ? this.StripMm(at, band, steps)
                : this.StripMm(at, band, default(NoSteps));
            double cover = ReducerKernel.SectorMm2(large, small, length, at - (Math.PI / count), at + (Math.PI / count));
            pieces.Add(new(strip, i == 0 || 2 * i == count ? 1 : 2, true, 2 * this.Choices.EndLapMm, cover, band.AreaMm2));
            shortest = Math.Min(shortest, strip);
            longest = Math.Max(longest, strip);
        }

        (double sum, _) = pieces.Sum(static _ => true, static _ => true);
        double all = EccentricReducerKernel.AllStripsMm(this.Choices.Passes, sum, steps);
        _ = EccentricReducerKernel.TrimMm(all, this.Choices.Passes, count, this.Choices.EndLapMm, pieces.KeptMm2, width, steps);
        return new Solution(count, lap, smallLap, shortest, longest, layers, pieces);
    }

    private double StripMm<TSteps>(double at, in ObliqueBand band, TSteps steps)
        where TSteps : struct, IStepRecorder => EccentricReducerKernel.StripMm(
            ReducerKernel.GeneratorMm(this.Reducer.LargeMm, this.Reducer.SmallMm, this.Reducer.LengthMm, at * 180 / Math.PI, steps),
            band.OverMm,
            this.Choices.EndLapMm,
            steps);

    private readonly record struct Solution(
        int Count, double LapMm, double SmallEndLapMm, double ShortestMm, double LongestMm, double Layers, TrimmedPieces Pieces);
}
