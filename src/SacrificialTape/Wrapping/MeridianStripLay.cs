using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Whole strips along the meridians, uncut; every second one may stop where the rest suffice, in stages.</summary>
/// <remarks>
/// <para>Strips: ceil(C/(w - o)) by the circumference C of the low edge, made a multiple of two for each stage. They lap
/// more and more toward the crown or the small end. A stage begins where half of the strips lap as much as asked.</para>
/// <para>On a cone these are the strips along its generators: they lie on its flat development, without strain.</para>
/// </remarks>
public sealed record MeridianStripLay : RevolvedLay
{
    /// <summary>Lays strips along the meridians.</summary>
    /// <param name="surface">A dished or conical head, a cap, a concentric reducer, or a tapered column without base plate.</param>
    /// <param name="stock">The strip, for the disc too.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="stages">How many times every second strip stops; left out: as often as takes the least tape.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentException">The surface is not one of those.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative or not less than the strip is wide, takes over 100 million strips, the strip is so wide that the
    /// disc on the crown would not lie on the dish, or the stages would leave fewer than three strips.
    /// </exception>
    public MeridianStripLay(Surface surface, StripStock stock, Length leastLap, int? stages = null, LayChoices? choices = null)
        : this(RevolvedInput.Accept(surface, stock, leastLap, choices), stages)
    {
    }

    private MeridianStripLay(in RevolvedInput input, int? stages)
        : this(input, Staged(input, stages))
    {
    }

    private MeridianStripLay(in RevolvedInput input, int stages)
        : this(input, Cut(input, stages, out ValueList<MeridianStage> lengths, default(NoSteps)), lengths)
    {
    }

    private MeridianStripLay(in RevolvedInput input, in RevolvedCut cut, ValueList<MeridianStage> lengths)
        : base(input, cut) => this.Lengths = lengths;

    /// <summary>Strips round the low edge in one pass.</summary>
    public int StripsRound => this.SideBySide;

    /// <summary>How many strips of which length, the shortest first; the last ones reach the crown or the small end.</summary>
    public ValueList<MeridianStage> Lengths { get; }

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.StripsRound} strip(s) along the meridians in {this.Lengths.Count} length(s), lap {this.LapMm:0.#} mm at the low edge{(this.Closes ? ", disc on the crown" : string.Empty)}, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public override string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Mark the low edge at {this.StripsRound} even places and draw the meridians. Cut {string.Join(", ", this.Lengths)}.{(this.Lengths.Count == 1 ? string.Empty : " Of neighbours every second one is of the shortest length; of the rest every second one of the next, and so on.")} Lay the shortest first, each on its meridian from the low edge upward, pressing from the middle outward; the next length covers their ends. At the low edge each laps {this.LapMm:0.0} mm.{this.CornerInWords}{(this.Closes ? string.Empty : " Trim both ends flush.")}{this.DiscInWords}{this.Choices.Repeated}");

    /// <inheritdoc/>
    public override StripCourse Course => StripCourse.Along;

    /// <summary>The widest strip whose edges keep within a limit; null where any width lies without strain.</summary>
    /// <param name="surface">What is laid on.</param>
    /// <param name="pucker">Allowed.</param>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.WidestForPucker))]
    public static Length? WidestStrip(Surface surface, EdgeStrain pucker) => WidestAlong(surface, pucker);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(Measure.Of(this.SmallestLap), subject),
            this.Lengths.Count > 1 ? rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) : null,
            rules[RuleIds.MaximumPucker].Judge(new Measure(this.Pucker.Fraction * 100, TradeUnit.Percent), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = Cut(this.Input, this.Lengths.Count - 1, out _, steps);
        return steps.Under("Strips along the meridians of " + this.Surface.Description);
    }

    private static int Staged(in RevolvedInput input, int? stages)
    {
        if (stages is null)
        {
            double opening = RevolvedKernel.DiscOpeningMm(input.Meridian.Closes, input.Stock.WidthMm, input.LeastLapMm, default(NoSteps));
            return MeridianStripKernel.BestStages(input, opening);
        }

        int most = MeridianStripKernel.MostStages(input);
        return stages >= 0 && stages <= most
            ? stages.Value
            : throw AcceptedRange.Between(0, most, "stages").Noting("three strips must reach the end").Refuse(stages.Value, nameof(stages));
    }

    private static RevolvedCut Cut<TSteps>(in RevolvedInput given, int stages, out ValueList<MeridianStage> lengths, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        RevolvedInput input = given;
        Meridian meridian = input.Meridian;
        LayChoices choices = input.Choices;
        double width = input.Stock.WidthMm;
        double whole = RevolvedKernel.LengthMm(meridian, steps);
        double opening = RevolvedKernel.DiscOpeningMm(meridian.Closes, width, input.LeastLapMm, steps);
        double count = MeridianStripKernel.Count(input, stages, steps);
        double lap = SpanKernel.ClosedLapMm(width, Math.PI * input.DiameterMm, count, steps);
        double elsewhere = Math.Min(stages > 0 ? input.LeastLapMm : lap, meridian.Closes ? (width / 2) - opening : lap);
        double least = RevolvedKernel.LeastLapMm(lap, elsewhere, steps);

        // Beyond half a turn from its middle a strip on a cone is not counted.
        double most = meridian.Closes || stages > 0 ? 1 : meridian.MostSlope == 0 ? StripCount.Most : Math.Floor(count / 2);
        double layers = RevolvedKernel.Layers(choices.Passes, most, width, least, choices.WanderMm, steps);
        List<MeridianStripKernel.Stop> stops =
            MeridianStripKernel.Stops(input, opening, count, stages, Math.Max(1, layers / choices.Passes), steps);
        double curvature = meridian.MostCurvatureTo(whole) * 1e6;
        double pucker = RevolvedKernel.WithDisc(meridian, width, RevolvedKernel.Pucker(width / 2, curvature, steps), steps);
        int round = StripCount.Whole(count, width, input.LeastLapMm);
        lengths = new ValueList<MeridianStage>(stops.Select(static stop => new MeridianStage((int)stop.Count, stop.LengthMm)));
        double low = RevolvedKernel.TrimAtEndsMm(meridian, width, width / 2, 0, 0);
        double ends = RevolvedKernel.TrimAtEndsMm(meridian, width, width / 2, width / 2, Math.Max(0, stops[^1].LengthMm - whole));
        IEnumerable<Strip> strips = stops.Select((stop, at) => RevolvedKernel.Cut(
            input, stop.LengthMm, (int)stop.Count * choices.Passes, StripPurpose.Other, true, stop.CoverMm, at == stops.Count - 1 ? ends : low));
        return new(
            round,
            lap,
            least,
            StripCount.Layers(layers, input.LeastLapMm),
            pucker,
            new ValueList<Strip>(meridian.Closes ? strips.Append(RevolvedKernel.Disc(input, opening)) : strips));
    }
}
