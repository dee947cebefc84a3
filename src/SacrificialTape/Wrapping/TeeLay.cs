using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Rings on the run and on the branch of a tee, both cut to their true saddle line; the branch's strips reach past it and
/// lap on the run all round.
/// </summary>
/// <remarks>
/// <para>Run first: rings from tape to tape of the straight pipe. A ring that the branch cuts through over its whole width
/// is left open and ends at the saddle line on both sides; others are cut out. Then the branch from the lowest point of
/// the saddle line up: the lowest strips lie on its two flanks only, the others go round it and are cut to the line.</para>
/// <para>Both cylinders unroll: strips lie on them without strain. The flap on the run does not, and is snipped.</para>
/// </remarks>
public sealed record TeeLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber saddleLapMm;
    private readonly StoredNumber runLapMm;
    private readonly StoredNumber branchLapMm;
    private readonly StoredNumber flapMm;
    private readonly StoredNumber leastLapMm;

    /// <summary>Lays rings on a tee.</summary>
    /// <param name="tee">The tee.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between rings, and on the tape of the branch pipe; zero or more, less than the strip is wide.</param>
    /// <param name="saddleLap">How far the branch's strips reach onto the run, square to the saddle line: zero to half of the run's diameter.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or run or branch takes over 100 000 rings.</exception>
    public TeeLay(Tee tee, StripStock stock, Length leastLap, Length saddleLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(tee);
        ArgumentNullException.ThrowIfNull(stock);
        this.Tee = tee;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        this.saddleLapMm = new StoredNumber(AcceptedRange.Between(0, tee.RunMm / 2, "mm").Noting("half of the run's diameter")
            .Check(UnitConversions.Millimeters(saddleLap), nameof(saddleLap)));
        Solution solved = this.Solve(default(NoSteps));
        this.RunRings = solved.Run.Count;
        this.BranchRings = solved.Branch.Count;
        this.runLapMm = new StoredNumber(solved.Run.LapMm);
        this.branchLapMm = new StoredNumber(solved.Branch.LapMm);
        this.flapMm = new StoredNumber(solved.FlapMm);
        this.leastLapMm = new StoredNumber(solved.LeastLapMm);
        this.LayersEverywhere = (int)solved.Layers;
        this.Strips =
        [
            .. solved.OnRun.ToStrips(stock, this.Choices.Passes, StripPurpose.Ring, false),
            .. solved.OnBranch.ToStrips(stock, this.Choices.Passes, StripPurpose.Ring, false),
        ];
    }

    /// <summary>The tee.</summary>
    public Tee Tee { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The least lap that was asked for; the last ring of the branch laps as much on the branch pipe's tape.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>How far the branch's strips reach onto the run, square to the saddle line.</summary>
    public Length SaddleLap => Length.FromMillimeters(this.saddleLapMm.Bare);

    /// <summary>Rings of one pass on the run, open ones counted.</summary>
    public int RunRings { get; }

    /// <summary>Rings of one pass on the branch; the lowest may be two strips, one on each flank.</summary>
    public int BranchRings { get; }

    /// <summary>Lap of rings on the run, made equal; so much lap the first and the last on the straight pipe's tape.</summary>
    [BasisOf(typeof(TeeLayFormulas), nameof(TeeLayFormulas.RunLap))]
    public Length RunLap => Length.FromMillimeters(this.runLapMm.Bare);

    /// <summary>Lap of rings on the branch, made equal; zero where one lies.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length BranchLap => Length.FromMillimeters(this.branchLapMm.Bare);

    /// <summary>How far below the saddle line the branch's strips are cut, measured down the branch.</summary>
    [BasisOf(typeof(TeeLayFormulas), nameof(TeeLayFormulas.Flap))]
    public Length Flap => Length.FromMillimeters(this.flapMm.Bare);

    Surface ILay.Surface => this.Tee;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(TeeLayFormulas), nameof(TeeLayFormulas.Strip))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Tee);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"rings on a tee: {this.RunRings} on the run, {this.BranchRings} on the branch, {this.saddleLapMm.Bare:0.#} mm onto the run round the saddle line, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Run first: {this.RunRings} ring(s) square to the run, a new one every {this.Stock.WidthMm - this.runLapMm.Bare:0.0} mm (lap {this.runLapMm.Bare:0.0} mm), the first and the last lapping as much on the tape of the straight pipe. Cut them out along the saddle line; rings that lie over the branch's whole width end there on both sides. Lap each closed ring {this.Choices.EndLapMm:0.#} mm on itself, away from the branch. Then the branch: {this.BranchRings} ring(s){(this.BranchRings > 1 ? string.Create(CultureInfo.InvariantCulture, $", a new one every {this.Stock.WidthMm - this.branchLapMm.Bare:0.0} mm (lap {this.branchLapMm.Bare:0.0} mm)") : string.Empty)}, from the lowest point of the saddle line, on the flanks, up to {this.askedLapMm.Bare:0.#} mm on the tape of the branch pipe. Draw the saddle line on each strip, cut it {this.flapMm.Bare:0.0} mm below, snip that flap every 20 mm or so up to the line and press it onto the run: it reaches {this.saddleLapMm.Bare:0.#} mm square to the line all round. Where the branch hangs down, lay the run over the branch's flap instead, so that the edge faces down.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(new Measure(this.leastLapMm.Bare, TradeUnit.Millimeter), subject),
            rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Rings on " + this.Tee.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double lap = this.askedLapMm.Bare;
        int passes = this.Choices.Passes;
        double saddle = this.saddleLapMm.Bare;
        double runs = TeeLayKernel.RunRings(this.Tee.RunCentreToEndMm, lap, width, steps);
        int runRings = StripCount.OneByOne(runs, width, lap);
        var run = new Row(runRings, TeeLayKernel.RunLapMm(runs, width, this.Tee.RunCentreToEndMm, steps));
        double flap = TeeLayKernel.FlapMm(saddle, this.Tee.BranchMm, this.Tee.RunMm, steps);
        double span = TeeLayKernel.BranchSpanMm(this.Tee.BranchCentreToEndMm, this.Tee.RunMm, this.Tee.BranchMm, flap, lap, steps);
        double count = SpanKernel.OpenCount(span, width, lap, steps);
        int branchRings = StripCount.OneByOne(count, width, lap);
        var branch = new Row(branchRings, branchRings > 1 ? SpanKernel.OpenLapMm(count, width, span, steps) : 0);
        double least = TeeLayKernel.LeastLapMm(run.LapMm, branchRings > 1 ? branch.LapMm : width, saddle, lap, steps);
        double layers = SpanKernel.OpenLayers(passes, width, this.Choices.WanderMm, width - least, steps);
        TrimmedPieces onRun = this.CutRun(run, steps);
        TrimmedPieces onBranch = this.CutBranch(branch, flap, steps);
        (double runMm, double runEnds) = onRun.Sum(static _ => true, static one => one.Whole);
        (double branchMm, double branchEnds) = onBranch.Sum(static _ => true, static one => one.Whole);
        double strip = TeeLayKernel.StripMm(passes, runMm, branchMm, steps);
        _ = TeeLayKernel.TrimMm(strip, passes, (runEnds + branchEnds) * this.Choices.EndLapMm, onRun.KeptMm2 + onBranch.KeptMm2, width, steps);
        return new(run, branch, flap, least, layers, onRun, onBranch);
    }

    private TrimmedPieces CutRun<TSteps>(Row row, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double run = this.Tee.RunMm;
        double branch = this.Tee.BranchMm;
        double end = this.Tee.RunCentreToEndMm;
        double circumference = PipeKernel.CircumferenceMm(run, steps);
        var pieces = new TrimmedPieces();
        double shortest = double.MaxValue;
        double shortestEdge = 0;
        for (int i = 0; i < row.Count; i++)
        {
            double from = -end - row.LapMm + (i * (width - row.LapMm));
            double to = from + width;
            double anew = Math.Min(end, i > 0 ? from + row.LapMm : -end);
            double last = Math.Min(to, end);
            double cover = (circumference * (last - anew)) - TeeLayKernel.HoleMm2(run, branch, anew, last);
            double kept = (circumference * width) - TeeLayKernel.HoleMm2(run, branch, from, to);
            double far = Math.Max(Math.Abs(from), Math.Abs(to));
            if (far < branch / 2)
            {
                double open = TeeLayKernel.OpenRingMm(circumference, run, branch, far, default(NoSteps));
                (shortest, shortestEdge) = open < shortest ? (open, far) : (shortest, shortestEdge);
                pieces.Add(new(open, 1, false, 0, cover, kept));
            }
            else
            {
                pieces.Add(new(circumference + this.Choices.EndLapMm, 1, true, this.Choices.EndLapMm, cover, kept));
            }
        }

        if (TSteps.Records && shortest < double.MaxValue)
        {
            _ = TeeLayKernel.OpenRingMm(circumference, run, branch, shortestEdge, steps);
        }

        return pieces;
    }

    private TrimmedPieces CutBranch<TSteps>(Row row, double flapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double run = this.Tee.RunMm;
        double branch = this.Tee.BranchMm;
        double end = this.Tee.BranchCentreToEndMm;
        double circumference = PipeKernel.CircumferenceMm(branch, steps);
        double ring = SpanKernel.RingLengthMm(circumference, this.Choices.EndLapMm, steps);
        double bottom = TeeLayKernel.LowestMm(run, branch) - flapMm;
        var pieces = new TrimmedPieces();
        for (int i = 0; i < row.Count; i++)
        {
            double from = bottom + (i * (width - row.LapMm));
            double to = from + width;
            double anew = Math.Min(end, i > 0 ? from + row.LapMm : from);
            double last = Math.Min(to, end);
            double cover = (circumference * (last - anew)) - TeeLayKernel.BelowMm2(run, branch, 0, anew, last);
            double kept = (circumference * width) - TeeLayKernel.BelowMm2(run, branch, flapMm, from, to);
            if (to + flapMm < run / 2)
            {
                double crescent = TeeLayKernel.CrescentMm(branch, run, to + flapMm, default(NoSteps));
                if (TSteps.Records && i == 0)
                {
                    _ = TeeLayKernel.CrescentMm(branch, run, to + flapMm, steps);
                }

                pieces.Add(new(crescent, 2, false, 0, cover / 2, kept / 2));
            }
            else
            {
                pieces.Add(new(ring, 1, true, this.Choices.EndLapMm, cover, kept));
            }
        }

        return pieces;
    }

    private readonly record struct Row(int Count, double LapMm);

    private readonly record struct Solution(
        Row Run, Row Branch, double FlapMm, double LeastLapMm, double Layers, TrimmedPieces OnRun, TrimmedPieces OnBranch);
}
