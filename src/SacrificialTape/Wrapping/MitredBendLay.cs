using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Rings on the straight pieces of a mitred bend, square to each piece, cut along the welds; the tape of each piece
/// reaches past the weld, and that of the two end pieces laps on the straight pipe's.
/// </summary>
/// <remarks>
/// <para>Rings fill the outside of each piece, its longest side. Toward the inside they run out at the weld: a ring that
/// does not go all the way round is cut as a short piece, and every ring is cut off a stated reach past the weld.</para>
/// <para>A piece is a cylinder: the strip lies on it without strain. Past the weld it does not, and is snipped.</para>
/// </remarks>
public sealed record MitredBendLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber weldLapMm;
    private readonly StoredNumber middleLapMm;
    private readonly StoredNumber endPieceLapMm;
    private readonly StoredNumber leastLapMm;

    /// <summary>Lays rings on a mitred bend.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between rings, and on the straight pipe's tape; zero or more, less than the strip is wide.</param>
    /// <param name="weldLap">How far the tape of each piece reaches past the weld; zero or more, at most half of a middle piece's inside.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or a piece takes over 100 000 rings.</exception>
    public MitredBendLay(MitredBend bend, StripStock stock, Length leastLap, Length weldLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(bend);
        ArgumentNullException.ThrowIfNull(stock);
        this.Bend = bend;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        this.weldLapMm = new StoredNumber(AcceptedRange.Between(0, UnitConversions.Millimeters(bend.PieceInside) / 2, "mm")
            .Noting("no more than an end piece is long on the inside of the bend")
            .Check(UnitConversions.Millimeters(weldLap), nameof(weldLap)));
        Solution solved = this.Solve(default(NoSteps));
        this.RingsOnMiddlePiece = solved.Middle.Rings;
        this.RingsOnEndPiece = solved.End.Rings;
        this.middleLapMm = new StoredNumber(solved.Middle.LapMm);
        this.endPieceLapMm = new StoredNumber(solved.End.LapMm);
        this.leastLapMm = new StoredNumber(solved.LeastLapMm);
        this.LayersEverywhere = (int)solved.Layers;
        this.Strips = solved.Pieces.ToStrips(stock, this.Choices.Passes, StripPurpose.Ring, false);
    }

    /// <summary>The bend.</summary>
    public MitredBend Bend { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The least lap that was asked for; the first ring of each end piece laps as much on the straight pipe's tape.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>How far the tape of each piece reaches past the weld; there both pieces' tapes lap on each other by twice this.</summary>
    public Length WeldLap => Length.FromMillimeters(this.weldLapMm.Bare);

    /// <summary>Rings of one pass on a middle piece; 0 when there is none.</summary>
    public int RingsOnMiddlePiece { get; }

    /// <summary>Rings of one pass on an end piece.</summary>
    public int RingsOnEndPiece { get; }

    /// <summary>Lap of rings on a middle piece, made equal; zero where fewer than two lie.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length MiddlePieceLap => Length.FromMillimeters(this.middleLapMm.Bare);

    /// <summary>Lap of rings on an end piece, made equal; zero where one lies.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length EndPieceLap => Length.FromMillimeters(this.endPieceLapMm.Bare);

    Surface ILay.Surface => this.Bend;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(MitredBendFormulas), nameof(MitredBendFormulas.Strip))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Bend);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"rings on a mitred bend: {this.RingsOnMiddlePiece} on each of {this.Bend.Joints - 1} middle piece(s), {this.RingsOnEndPiece} on each end piece, least lap {this.leastLapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Mark along the outside of each piece. End pieces: {Rings(this.RingsOnEndPiece, this.EndSpacingMm)} square to the piece, the first {this.askedLapMm.Bare:0.#} mm onto the tape of the straight pipe, the last {this.weldLapMm.Bare:0.#} mm past the weld.{(this.RingsOnMiddlePiece == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" Each of {this.Bend.Joints - 1} middle piece(s): {Rings(this.RingsOnMiddlePiece, this.MiddleSpacingMm)}, the first and the last {this.weldLapMm.Bare:0.#} mm past their welds."))} Rings that do not go all the way round are short pieces with their middle on the outside. Cut every strip {this.weldLapMm.Bare:0.#} mm past the weld, in line with it, snip that edge every 20 mm or so and press it over the weld onto the next piece. Lap each whole ring {this.Choices.EndLapMm:0.#} mm on itself. Finish one piece before the next; where the bend rises, work from the lower end up.{this.Choices.Repeated}");

    private double MiddleSpacingMm => this.Stock.WidthMm - this.middleLapMm.Bare;

    private double EndSpacingMm => this.Stock.WidthMm - this.endPieceLapMm.Bare;

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
        return steps.Under("Rings on " + this.Bend.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private static string Rings(int count, double spacingMm) => count == 1
        ? "1 ring"
        : string.Create(CultureInfo.InvariantCulture, $"{count} rings, a new one every {spacingMm:0.0} mm");

    private Solution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double lap = this.askedLapMm.Bare;
        double reach = this.weldLapMm.Bare;
        int joints = this.Bend.Joints;
        double turn = BendKernel.JointTurnDegrees(this.Bend.AngleDegrees, joints, steps);
        double piece = BendKernel.PieceOutsideMm(this.Bend.DiameterMm, this.Bend.RadiusMm, turn, steps);
        var pieces = new TrimmedPieces();
        double circumference = PipeKernel.CircumferenceMm(this.Bend.DiameterMm, steps);
        double ring = SpanKernel.RingLengthMm(circumference, this.Choices.EndLapMm, steps);
        var cut = new Cut(this.Bend.DiameterMm, turn, this.Bend.RadiusMm, reach, width, ring, circumference);
        Row middle = default;
        if (joints > 1)
        {
            double span = MitredBendKernel.MiddleSpanMm(piece, reach, steps);
            middle = this.Lap(span, steps);
            cut.Middle(pieces, middle, span, joints - 1, steps);
        }

        Row end = this.Lap(MitredBendKernel.EndSpanMm(piece, reach, lap, steps), steps);
        cut.End(pieces, end, lap, steps);
        double least = MitredBendKernel.LeastLapMm(
            middle.Rings > 1 ? middle.LapMm : width, end.Rings > 1 ? end.LapMm : width, reach, lap, steps);
        double layers = SpanKernel.OpenLayers(this.Choices.Passes, width, this.Choices.WanderMm, width - least, steps);
        (double shortMm, double whole) = pieces.Sum(static one => !one.Whole, static one => one.Whole);
        _ = MitredBendKernel.StripMm(this.Choices.Passes, whole, ring, shortMm, steps);
        _ = MitredBendKernel.TrimMm(this.Choices.Passes, whole, circumference, shortMm, pieces.KeptMm2, width, steps);
        return new(middle, end, least, layers, pieces);
    }

    private Row Lap<TSteps>(double spanMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double count = SpanKernel.OpenCount(spanMm, width, this.askedLapMm.Bare, steps);
        int rings = StripCount.OneByOne(count, width, this.askedLapMm.Bare);
        return new(rings, rings > 1 ? SpanKernel.OpenLapMm(count, width, spanMm, steps) : 0);
    }

    private readonly record struct Row(int Rings, double LapMm);

    private readonly record struct Solution(Row Middle, Row End, double LeastLapMm, double Layers, TrimmedPieces Pieces);

    private readonly record struct Cut(
        double DiameterMm, double TurnDegrees, double RadiusMm, double ReachMm, double WidthMm, double RingMm, double CircumferenceMm)
    {
        private double Tube => this.DiameterMm / 2;

        // From the middle of a piece, or from its tangent, to the weld: a + b cos t.
        private double Mean => this.RadiusMm * Math.Tan(this.TurnDegrees * Math.PI / 360);

        private double Swing => this.Tube * Math.Tan(this.TurnDegrees * Math.PI / 360);

        // Ring after ring from one end of the outside to the other; pieces lie the same on both sides of the middle.
        internal void Middle<TSteps>(TrimmedPieces pieces, Row row, double spanMm, int alike, TSteps steps)
            where TSteps : struct, IStepRecorder
        {
            double first = -Math.Max(spanMm, row.Rings == 1 ? this.WidthMm : 0) / 2;
            bool shown = false;
            for (int i = 0; i < row.Rings; i++)
            {
                double from = first + (i * (this.WidthMm - row.LapMm));
                double to = from + this.WidthMm;
                double anew = i > 0 ? from + row.LapMm : from;
                double near = from > 0 ? from : Math.Max(0, -to);
                double kept = (this.CircumferenceMm * this.WidthMm) - this.Beyond(from, to, this.ReachMm) - this.Beyond(-to, -from, this.ReachMm);
                double cover = (this.CircumferenceMm * (to - anew)) - this.Beyond(anew, to, 0) - this.Beyond(-to, -anew, 0);
                this.Add(pieces, near, alike, cover, kept, ref shown, steps);
            }
        }

        // From a lap on the straight pipe's tape to past the weld.
        internal void End<TSteps>(TrimmedPieces pieces, Row row, double lapMm, TSteps steps)
            where TSteps : struct, IStepRecorder
        {
            bool shown = false;
            for (int i = 0; i < row.Rings; i++)
            {
                double from = -lapMm + (i * (this.WidthMm - row.LapMm));
                double to = from + this.WidthMm;
                double anew = Math.Clamp(i > 0 ? from + row.LapMm : from, 0, Math.Max(0, to));
                double kept = (this.CircumferenceMm * this.WidthMm) - this.Beyond(from, to, this.ReachMm);
                double cover = (this.CircumferenceMm * Math.Max(0, to - anew)) - (to > anew ? this.Beyond(anew, to, 0) : 0);
                this.Add(pieces, Math.Max(0, from), 2, cover, kept, ref shown, steps);
            }
        }

        private double Beyond(double from, double to, double reach) =>
            RingCutKernel.BeyondMm2(this.Tube, from, to, this.Mean + reach, this.Swing);

        private void Add<TSteps>(TrimmedPieces pieces, double near, int count, double cover, double kept, ref bool shown, TSteps steps)
            where TSteps : struct, IStepRecorder
        {
            double middle = this.Mean + this.ReachMm;
            if (near <= middle - this.Swing)
            {
                pieces.Add(new(this.RingMm, count, true, this.RingMm - this.CircumferenceMm, cover, kept));
            }
            else if (shown)
            {
                pieces.Add(new(MitredBendKernel.ShortPieceMm(this.DiameterMm, near, middle, this.Swing, default(NoSteps)), count, false, 0, cover, kept));
            }
            else
            {
                // Of the pieces that stop at the weld the first met on a piece stands for all in the workings.
                shown = true;
                pieces.Add(new(MitredBendKernel.ShortPieceMm(this.DiameterMm, near, middle, this.Swing, steps), count, false, 0, cover, kept));
            }
        }
    }
}
