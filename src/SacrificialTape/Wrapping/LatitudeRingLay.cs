using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Rings round the axis of a head, a reducer or a column, side by side along its meridian.</summary>
/// <remarks>
/// <para>Rings: n = ceil((W - o)/(w - o)) over the meridian W, the last one at the small end or under the disc on the
/// crown; lap (n w - W)/(n - 1). A ring is cut as long as the circle of its wider edge, and its end lap. On a closed
/// head a larger lap can take a little less strip: as many rings then stand nearer to the crown.</para>
/// <para>A straight strip does not lie round a cone or a dish without strain: with its middle on its circle, the edge
/// toward the crown is too long and puckers, by 1 - r_c/r_m; the edge toward the low end is too short and stretches, by
/// r_r/r_m - 1. Near a crown both are large: <see cref="WidestStrip"/> says how far up rings of a width may go.</para>
/// </remarks>
public sealed record LatitudeRingLay : RevolvedLay
{
    private readonly StoredNumber stretch;

    /// <summary>Lays rings.</summary>
    /// <param name="surface">A dished or conical head, a cap, a concentric reducer, or a tapered column without base plate.</param>
    /// <param name="stock">The strip, for the disc too.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentException">The surface is not one of those.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative or not less than the strip is wide, takes over 100 000 rings, or the strip is so wide that the
    /// disc on the crown would not lie on the dish.
    /// </exception>
    public LatitudeRingLay(Surface surface, StripStock stock, Length leastLap, LayChoices? choices = null)
        : this(RevolvedInput.Accept(surface, stock, leastLap, choices))
    {
    }

    private LatitudeRingLay(in RevolvedInput input)
        : this(input, Cut(input, out double stretch, default(NoSteps)), stretch)
    {
    }

    private LatitudeRingLay(in RevolvedInput input, in RevolvedCut cut, double stretch)
        : base(input, cut) => this.stretch = new StoredNumber(stretch);

    /// <summary>Rings in one pass.</summary>
    public int Rings => this.SideBySide;

    /// <summary>How much too short an edge comes at the worst spot, toward the low end: it stretches.</summary>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.RingStretch))]
    public EdgeStrain Stretch => EdgeStrain.FromFraction(this.stretch.Bare);

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Rings} ring(s) round the axis, lap {this.LapMm:0.#} mm{(this.Closes ? ", disc on the crown" : string.Empty)}, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public override string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.Rings} ring(s) round the axis, the first flush with the low edge{(this.Rings == 1 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", a new one every {this.Stock.WidthMm - this.LapMm:0.0} mm along the steel (lap {this.LapMm:0.0} mm)"))}. Work from whichever edge lies lower, so that each lap sheds water. Keep the middle of the strip on its circle; work the puckers flat toward the crown's side. Lap each {this.Choices.EndLapMm:0.#} mm or more on itself.{this.CornerInWords}{this.DiscInWords}{this.Choices.Repeated}");

    /// <inheritdoc/>
    public override StripCourse Course => StripCourse.RoundWithEndLap;

    /// <summary>The widest ring about one place whose edges keep within both limits; null where any width does.</summary>
    /// <param name="surface">What is laid on.</param>
    /// <param name="fromLowEdge">Where the middle of the ring lies: 0 to less than the meridian is long.</param>
    /// <param name="pucker">Allowed at the edge toward the crown.</param>
    /// <param name="stretch">Allowed at the edge toward the low end.</param>
    /// <exception cref="ArgumentException">The surface is none that is laid on by rings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the meridian.</exception>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.RingPucker))]
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.RingStretch))]
    public static Length? WidestStrip(Surface surface, Length fromLowEdge, EdgeStrain pucker, EdgeStrain stretch)
    {
        Meridian meridian = Meridian.Of(surface, nameof(surface));
        double middle = AcceptedRange.FromBelow(0, meridian.LengthMm, "mm").Noting("along the meridian")
            .Check(UnitConversions.Millimeters(fromLowEdge), nameof(fromLowEdge));
        double widest = LatitudeRingKernel.WidestMm(meridian, middle, pucker.Fraction, stretch.Fraction);
        return double.IsFinite(widest) ? Length.FromMillimeters(widest) : null;
    }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            this.Rings > 1 || this.Closes ? rules[RuleIds.MinimumLap].Judge(Measure.Of(this.SmallestLap), subject) : null,
            rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject),
            rules[RuleIds.MaximumPucker].Judge(new Measure(this.Pucker.Fraction * 100, TradeUnit.Percent), subject),
            rules[RuleIds.MaximumStretch].Judge(new Measure(this.stretch.Bare * 100, TradeUnit.Percent), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = Cut(this.Input, out _, steps);
        return steps.Under("Rings round the axis of " + this.Surface.Description);
    }

    private static RevolvedCut Cut<TSteps>(in RevolvedInput input, out double stretch, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        Meridian meridian = input.Meridian;
        LayChoices choices = input.Choices;
        double width = input.Stock.WidthMm;
        double opening = RevolvedKernel.DiscOpeningMm(meridian.Closes, width, input.LeastLapMm, steps);
        double span = LatitudeRingKernel.SpanMm(RevolvedKernel.LengthMm(meridian, steps), opening, steps);
        double count = SpanKernel.OpenCount(span, width, input.LeastLapMm, steps);
        int rings = LatitudeRingKernel.Whole(count, input.LeastLapMm);
        double lap = rings == 1 ? 0 : SpanKernel.OpenLapMm(count, width, span, steps);
        double disc = (width / 2) - opening;

        // A single ring on an open surface has no neighbour to wander from.
        double least = rings == 1 ? (meridian.Closes ? disc : 0) : RevolvedKernel.LeastLapMm(lap, meridian.Closes ? disc : lap, steps);
        double layers = rings == 1 && !meridian.Closes
            ? choices.Passes
            : RevolvedKernel.Layers(choices.Passes, 1, width, least, choices.WanderMm, steps);
        double spacing = rings == 1 ? 0 : width - lap;
        var circles = new Circles(meridian, Math.Min(width, span), spacing, rings);
        double pucker = RevolvedKernel.WithDisc(
            meridian, width, LatitudeRingKernel.Pucker(circles.PuckerEdgeMm, circles.PuckerMiddleMm, steps), steps);
        stretch = LatitudeRingKernel.Stretch(circles.StretchEdgeMm, circles.StretchMiddleMm, steps);
        List<Strip> strips = RingByRing(input, span, spacing, rings, steps);
        if (meridian.Closes)
        {
            strips.Add(RevolvedKernel.Disc(input, opening));
        }

        return new(rings, lap, least, (int)layers, pucker, new ValueList<Strip>(strips));
    }

    private static List<Strip> RingByRing<TSteps>(in RevolvedInput input, double spanMm, double spacingMm, int rings, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        // Rings of one length, as on a cylinder, are one line; they share what they cover.
        Meridian meridian = input.Meridian;
        double width = input.Stock.WidthMm;
        var strips = new List<Strip>();
        for (int first = 0; first < rings;)
        {
            double radius = meridian.At(first * spacingMm).RadiusMm;
            int next = first + 1;
            while (next < rings && meridian.At(next * spacingMm).RadiusMm == radius)
            {
                next++;
            }

            double length = LatitudeRingKernel.LengthMm(radius, input.Choices.EndLapMm, steps);
            double end = next == rings ? spanMm : next * spacingMm;
            double cover = (meridian.AreaTo(end) - meridian.AreaTo(first * spacingMm)) / (width * (next - first));

            // A single ring that is wider than the surface stands over; what stands over is cut off along its whole length.
            double trim = rings == 1 && spanMm < width ? 2 * Math.PI * radius * (1 - (spanMm / width)) : 0;
            strips.Add(RevolvedKernel.Cut(input, length, (next - first) * input.Choices.Passes, StripPurpose.Ring, false, cover, trim));
            first = next;
        }

        return strips;
    }

    /// <summary>The circles at the edges and the middle of the rings that strain most.</summary>
    private readonly struct Circles
    {
        internal Circles(Meridian meridian, double widthMm, double spacingMm, int rings)
        {
            double pucker = -1;
            double stretch = -1;
            for (int i = 0; i < rings; i++)
            {
                double low = meridian.At(i * spacingMm).RadiusMm;
                double middle = meridian.At((i * spacingMm) + (widthMm / 2)).RadiusMm;
                double crown = meridian.At((i * spacingMm) + widthMm).RadiusMm;
                if (LatitudeRingKernel.Pucker(crown, middle, default(NoSteps)) > pucker)
                {
                    pucker = LatitudeRingKernel.Pucker(crown, middle, default(NoSteps));
                    (this.PuckerEdgeMm, this.PuckerMiddleMm) = (crown, middle);
                }

                if (LatitudeRingKernel.Stretch(low, middle, default(NoSteps)) > stretch)
                {
                    stretch = LatitudeRingKernel.Stretch(low, middle, default(NoSteps));
                    (this.StretchEdgeMm, this.StretchMiddleMm) = (low, middle);
                }
            }
        }

        internal double PuckerEdgeMm { get; }

        internal double PuckerMiddleMm { get; }

        internal double StretchEdgeMm { get; }

        internal double StretchMiddleMm { get; }
    }
}
