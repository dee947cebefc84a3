using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Rings on a bend, held to the least lap on its outside, and lapping at both tangents on the tape of the straight pipe.
/// </summary>
/// <remarks>
/// <para>Rings: n = ceil((W + o)/(w - o)) over the arc W along the outside; lap there (n w - W)/(n + 1), never less than
/// asked. They are set at equal angles, so that on the inside they lap more.</para>
/// <para>A flat strip does not lie on a bend without strain: on the outside its edges are too long and pucker, on the
/// inside they are too short and stretch. <see cref="WidestStrip"/> says how wide a strip two limits allow.</para>
/// <para>Layers on average count the first and the last ring whole, with what of them lies on the straight pipe.</para>
/// </remarks>
public sealed record BendRingLay : ILay, IPlacedStrips
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber outsideLapMm;
    private readonly StoredNumber insideLapMm;
    private readonly StoredNumber pucker;
    private readonly StoredNumber stretch;

    /// <summary>Lays rings on a bend.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap on the outside; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative or not less than the strip is wide, the rings are over 100 million, or the strip is so wide
    /// that its edges would fold (strain above 100 %).
    /// </exception>
    public BendRingLay(Bend bend, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(bend);
        ArgumentNullException.ThrowIfNull(stock);
        this.Bend = bend;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        double widest = WidestMm(bend, 1, 1);
        AcceptedRange.Inside(0, widest * (1 - WithAllowance.RelativeAllowance), "mm").Noting("wider strips fold on this bend").Check(stock.WidthMm, nameof(stock));
        Solution solved = this.Solve(default(NoSteps));
        this.Rings = StripCount.Whole(solved.Rings, stock.WidthMm, this.askedLapMm.Bare);
        this.outsideLapMm = new StoredNumber(solved.OutsideLapMm);
        this.insideLapMm = new StoredNumber(solved.InsideLapMm);
        this.pucker = new StoredNumber(solved.Pucker);
        this.stretch = new StoredNumber(solved.Stretch);
        this.LayersEverywhere = (int)solved.Layers;
        double cover = UnitConversions.SquareMeters(bend.Area) * 1e6 / (this.Rings * stock.WidthMm);
        this.Strips = [Strip.Computed(
            stock, solved.RingMm, this.Rings * this.Choices.Passes, StripPurpose.Ring, false, cover, 0)];
    }

    /// <summary>The bend.</summary>
    public Bend Bend { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for on the outside.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Rings in one pass.</summary>
    public int Rings { get; }

    /// <summary>Lap on the outside of the bend: of rings on each other, and of the first and last on the straight pipe's tape.</summary>
    [BasisOf(typeof(BendRingFormulas), nameof(BendRingFormulas.OutsideLap))]
    public Length OutsideLap => Length.FromMillimeters(this.outsideLapMm.Bare);

    /// <summary>Lap on the inside of the bend.</summary>
    [BasisOf(typeof(BendRingFormulas), nameof(BendRingFormulas.InsideLap))]
    public Length InsideLap => Length.FromMillimeters(this.insideLapMm.Bare);

    /// <summary>How much too long the edges are on the outside: they pucker.</summary>
    [BasisOf(typeof(StrainFormulas), nameof(StrainFormulas.Pucker))]
    public EdgeStrain Pucker => EdgeStrain.FromFraction(this.pucker.Bare);

    /// <summary>How much too short the edges are on the inside: they stretch.</summary>
    [BasisOf(typeof(StrainFormulas), nameof(StrainFormulas.Stretch))]
    public EdgeStrain Stretch => EdgeStrain.FromFraction(this.stretch.Bare);

    Surface ILay.Surface => this.Bend;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(BendRingFormulas), nameof(BendRingFormulas.Rings))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Bend);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Rings} ring(s) on a bend, lap {this.outsideLapMm.Bare:0.#} mm outside and {this.insideLapMm.Bare:0.#} mm inside, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.Rings} ring(s) square round the bend, a new one every {this.Stock.WidthMm - this.outsideLapMm.Bare:0.0} mm along its outside (lap {this.outsideLapMm.Bare:0.0} mm there, {this.insideLapMm.Bare:0.0} mm inside). The first and the last lap {this.outsideLapMm.Bare:0.0} mm on the tape of the straight pipe. Lap each {this.Choices.EndLapMm:0.#} mm on itself. Press the inside first, work the puckers of the outside flat toward the edge.{this.Choices.Repeated}");

    /// <summary>The widest strip whose edges keep within both limits; the narrower of the two.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="pucker">Allowed on the outside.</param>
    /// <param name="stretch">Allowed on the inside.</param>
    [BasisOf(typeof(StrainFormulas), nameof(StrainFormulas.WidestForPucker))]
    [BasisOf(typeof(StrainFormulas), nameof(StrainFormulas.WidestForStretch))]
    public static Length WidestStrip(Bend bend, EdgeStrain pucker, EdgeStrain stretch)
    {
        ArgumentNullException.ThrowIfNull(bend);
        return Length.FromMillimeters(WidestMm(bend, pucker.Fraction, stretch.Fraction));
    }

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(Measure.Of(this.OutsideLap), subject),
            rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject),
            rules[RuleIds.MaximumPucker].Judge(new Measure(this.pucker.Bare * 100, TradeUnit.Percent), subject),
            rules[RuleIds.MaximumStretch].Judge(new Measure(this.stretch.Bare * 100, TradeUnit.Percent), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public ValueList<PlacedStrip> PlaceStrips() => StripPlacing.Rings(
        this.Choices.Passes,
        this.Rings,
        -this.outsideLapMm.Bare, // the first laps on the tape of the straight pipe
        this.Stock.WidthMm - this.outsideLapMm.Bare,
        this.Stock.WidthMm,
        this.Strips[0].LengthUm / 1e3);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Rings on " + this.Bend.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private static double WidestMm(Bend bend, double pucker, double stretch)
    {
        double tube = bend.DiameterMm / 2;
        return Math.Min(
            StrainKernel.WidestForPuckerMm(tube, bend.RadiusMm, pucker),
            StrainKernel.WidestForStretchMm(tube, bend.RadiusMm, stretch));
    }

    private Solution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double tube = this.Bend.DiameterMm / 2;
        double radius = this.Bend.RadiusMm;
        double arc = BendKernel.OutsideArcMm(this.Bend.DiameterMm, radius, this.Bend.AngleDegrees, steps);
        double count = BendRingKernel.Count(arc, this.askedLapMm.Bare, width, steps);
        double outside = BendRingKernel.OutsideLapMm(count, width, arc, steps);
        double inside = BendRingKernel.InsideLapMm(width, outside, radius, tube, steps);
        double circumference = PipeKernel.CircumferenceMm(this.Bend.DiameterMm, steps);
        double ring = SpanKernel.RingLengthMm(circumference, this.Choices.EndLapMm, steps);
        double layers = SpanKernel.OpenLayers(this.Choices.Passes, width, this.Choices.WanderMm, width - outside, steps);
        double pucker = StrainKernel.Pucker(width, tube, radius, steps);
        double stretch = StrainKernel.Stretch(width, tube, radius, steps);
        return new(count, outside, inside, ring, layers, pucker, stretch);
    }

    private readonly record struct Solution(
        double Rings, double OutsideLapMm, double InsideLapMm, double RingMm, double Layers, double Pucker, double Stretch);
}
