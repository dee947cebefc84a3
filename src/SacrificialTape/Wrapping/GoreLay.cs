using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Gores: strips along the meridians, cut narrower toward the crown or the small end, lapping evenly on each other.</summary>
/// <remarks>
/// <para>Half a gore, measured square to its middle: (r/m) tan(m pi/n) with the radius r and the slope m of the surface
/// there, and half the lap. That is the developed gore of a cone, a cylinder and a disc, and never too narrow on a head
/// that bulges outward. The gore is as wide as the strip where it is widest; n is at least 3.</para>
/// <para>A head's gores run under the disc on its crown; those of a reducer or column run past the small end and are
/// trimmed, as at the low edge.</para>
/// </remarks>
public sealed record GoreLay : RevolvedLay
{
    /// <summary>Lays gores.</summary>
    /// <param name="surface">A dished or conical head, a cap, a concentric reducer, or a tapered column without base plate.</param>
    /// <param name="stock">The strip, for the disc too.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentException">The surface is not one of those.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative or not less than the strip is wide, takes over 100 million strips, or the strip is so wide that
    /// the disc on the crown would not lie on the dish.
    /// </exception>
    public GoreLay(Surface surface, StripStock stock, Length leastLap, LayChoices? choices = null)
        : this(RevolvedInput.Accept(surface, stock, leastLap, choices))
    {
    }

    private GoreLay(in RevolvedInput input)
        : this(input, Cut(input, out ValueList<GoreStation> stations, default(NoSteps)), stations)
    {
    }

    private GoreLay(in RevolvedInput input, in RevolvedCut cut, ValueList<GoreStation> stations)
        : base(input, cut) => this.Stations = stations;

    /// <summary>Gores in one pass.</summary>
    public int Gores => this.SideBySide;

    /// <summary>The table by which a gore is cut, straight from one station to the next.</summary>
    public ValueList<GoreStation> Stations { get; }

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Gores} gore(s), lap {this.LapMm:0.#} mm{(this.Closes ? ", disc on the crown" : string.Empty)}, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public override string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Mark the low edge at {this.Gores} even places and draw the meridians. Draw a line along the middle of each strip and cut both sides straight between these widths from it: {string.Join("; ", this.Stations)}. Lay each gore on its meridian from the low edge upward, pressing from the middle outward, each lapping {this.LapMm:0.0} mm on the last; the last one laps on the first.{this.CornerInWords}{(this.Closes ? string.Empty : " Trim both ends flush.")}{this.DiscInWords}{this.Choices.Repeated}");

    /// <inheritdoc/>
    public override StripCourse Course => StripCourse.Along;

    /// <summary>The widest strip whose edges keep within a limit; null where any width lies without strain.</summary>
    /// <param name="surface">What is laid on.</param>
    /// <param name="pucker">Allowed.</param>
    /// <remarks>
    /// By the greatest curvature of the whole surface. A head whose curvature is greatest at the crown, where gores are
    /// narrow, takes somewhat wider strips.
    /// </remarks>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.WidestForPucker))]
    public static Length? WidestStrip(Surface surface, EdgeStrain pucker) => WidestAlong(surface, pucker);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(Measure.Of(this.SmallestLap), subject),
            rules[RuleIds.MaximumPucker].Judge(new Measure(this.Pucker.Fraction * 100, TradeUnit.Percent), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = Cut(this.Input, out _, steps);
        return steps.Under("Gores on " + this.Surface.Description);
    }

    private static RevolvedCut Cut<TSteps>(in RevolvedInput input, out ValueList<GoreStation> stations, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        Meridian meridian = input.Meridian;
        LayChoices choices = input.Choices;
        double width = input.Stock.WidthMm;
        double whole = RevolvedKernel.LengthMm(meridian, steps);
        double opening = RevolvedKernel.DiscOpeningMm(meridian.Closes, width, input.LeastLapMm, steps);
        double count = GoreKernel.Count(input, opening, out GoreOutline outline, steps);
        double lap = GoreKernel.LapMm(width, GoreKernel.WidestHalfMm(outline, count, steps), steps);
        double least = RevolvedKernel.LeastLapMm(lap, meridian.Closes ? (width / 2) - opening : lap, steps);
        double most = meridian.MostSlope == 0 ? StripCount.Most : 1;
        double layers = RevolvedKernel.Layers(choices.Passes, most, width, least, choices.WanderMm, steps);
        double length = RevolvedKernel.FullLengthMm(meridian, opening, count, 1, steps);
        double pucker = RevolvedKernel.WithDisc(meridian, width, GoreKernel.Pucker(meridian, outline, lap, steps), steps);
        int gores = StripCount.Whole(count, width, input.LeastLapMm);
        stations = new ValueList<GoreStation>(outline.Stations.Select(one => new GoreStation(one.AlongMm, one.HalfMm + (lap / 2))));
        double cover = meridian.AreaTo(whole - opening) / (count * width);
        double ends = RevolvedKernel.TrimAtEndsMm(
            meridian, width, outline.Stations[0].HalfMm + (lap / 2), outline.Stations[^1].HalfMm + (lap / 2), length - whole);
        Strip gore = RevolvedKernel.Cut(
            input, length, gores * choices.Passes, StripPurpose.Other, true, cover, length - LaidMm(outline, lap, width) + ends);
        return new(
            gores,
            lap,
            least,
            StripCount.Layers(layers, input.LeastLapMm),
            pucker,
            meridian.Closes ? [gore, RevolvedKernel.Disc(input, opening)] : [gore]);
    }

    // Area of the gore as it is cut, as a length of strip.
    private static double LaidMm(GoreOutline outline, double lapMm, double widthMm)
    {
        double area = 0;
        for (int i = 1; i < outline.Stations.Count; i++)
        {
            GoreOutline.Station low = outline.Stations[i - 1];
            GoreOutline.Station high = outline.Stations[i];
            area += (low.HalfMm + high.HalfMm + lapMm) * (high.AlongMm - low.AlongMm);
        }

        return area / widthMm;
    }
}
