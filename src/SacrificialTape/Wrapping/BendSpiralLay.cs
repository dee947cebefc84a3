using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>
/// A spiral on a bend: the strip of the straight pipe runs on round the bend in whole turns, and on along the pipe beyond.
/// </summary>
/// <remarks>
/// <para>The bend angle goes in proportion to the tube angle. The true lap on the outside, where turns stand farthest apart,
/// is held to at least the one asked for; turns are made whole, so that the strip crosses both tangents on the outside and
/// in the direction of the straight pipe's spiral, which is set to <see cref="SettingOnStraight"/>.</para>
/// <para>A flat strip does not lie there without strain: the surface curves, and unlike a ring the path also curves
/// sideways, most on the two flanks of the bend. Edges are taken half a strip width away from the path along the surface,
/// where they pucker or stretch. Over the limits a finding says to take rings.</para>
/// <para>Strip and layers are those of the bend from tangent to tangent.</para>
/// </remarks>
public sealed record BendSpiralLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber outsideAdvanceMm;
    private readonly StoredNumber insideAdvanceMm;
    private readonly StoredNumber degrees;
    private readonly StoredNumber outsideLapMm;
    private readonly StoredNumber insideLapMm;
    private readonly StoredNumber pucker;
    private readonly StoredNumber stretch;

    /// <summary>Lays a spiral on a bend.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least true lap on the outside; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap gives no spiral on this pipe, the bend is too short for one turn, or the strip is so wide that its edges
    /// would fold (strain of 100 % and more). The message says to take rings.
    /// </exception>
    public BendSpiralLay(Bend bend, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(bend);
        ArgumentNullException.ThrowIfNull(stock);
        this.Bend = bend;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        double circumference = PipeKernel.CircumferenceMm(bend.DiameterMm, default(NoSteps));
        AcceptedRange.Between(Math.Max(0, stock.WidthMm - (circumference * (1 - WithAllowance.RelativeAllowance))), stock.WidthMm, "mm")
            .Noting("with less the strip advances by more than the pipe is round; take rings on this bend")
            .Check(this.askedLapMm.Bare, nameof(leastLap));
        Solution solved = this.Solve(default(NoSteps));
        if (WithAllowance.Below(solved.ArcMm, solved.FullAdvanceMm))
        {
            throw new ArgumentOutOfRangeException(nameof(bend), string.Create(
                CultureInfo.InvariantCulture,
                $"A {bend.Description} is {solved.ArcMm:0.###} mm long on its outside, but one turn of this strip advances {solved.FullAdvanceMm:0.###} mm: fewer than one turn is no spiral. Take rings on this bend."));
        }

        if (!(solved.Pucker < 1 && solved.Stretch < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(stock), string.Create(
                CultureInfo.InvariantCulture,
                $"The edges of a strip {stock.WidthMm:0.######} mm wide would fold in a spiral on this bend (strain {Math.Max(solved.Pucker, solved.Stretch) * 100:0} %). Take rings of a narrower strip."));
        }

        this.Turns = StripCount.Whole(solved.Turns, stock.WidthMm, this.askedLapMm.Bare);
        this.outsideAdvanceMm = new StoredNumber(solved.OutsideAdvanceMm);
        this.insideAdvanceMm = new StoredNumber(solved.InsideAdvanceMm);
        this.degrees = new StoredNumber(solved.AngleDegrees);
        this.outsideLapMm = new StoredNumber(solved.OutsideLapMm);
        this.insideLapMm = new StoredNumber(solved.InsideLapMm);
        this.pucker = new StoredNumber(solved.Pucker);
        this.stretch = new StoredNumber(solved.Stretch);
        this.LayersEverywhere = StripCount.Layers(solved.Layers, this.askedLapMm.Bare);
        this.Strips = [Strip.Computed(
            stock, solved.StripMm, this.Choices.Passes, StripPurpose.Spiral, true, UnitConversions.SquareMeters(bend.Area) * 1e6 / stock.WidthMm, 0)];
    }

    /// <summary>The bend.</summary>
    public Bend Bend { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>Wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The least true lap that was asked for on the outside.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Whole turns on the bend in one pass.</summary>
    public int Turns { get; }

    /// <summary>Advance per turn along the outside of the bend, and along the straight pipe.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.OutsideAdvance))]
    public Length OutsideAdvance => Length.FromMillimeters(this.outsideAdvanceMm.Bare);

    /// <summary>Advance per turn along the inside of the bend.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.InsideAdvance))]
    public Length InsideAdvance => Length.FromMillimeters(this.insideAdvanceMm.Bare);

    /// <summary>Angle between strip and ring on the outside, where it is steepest; the same as on the straight pipe.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.OutsideAngle))]
    public Angle OutsideAngle => Angle.FromDegrees(this.degrees.Bare);

    /// <summary>True lap on the outside, across the strip: the least.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.OutsideLap))]
    public Length OutsideLap => Length.FromMillimeters(this.outsideLapMm.Bare);

    /// <summary>True lap on the inside, across the strip.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.InsideLap))]
    public Length InsideLap => Length.FromMillimeters(this.insideLapMm.Bare);

    /// <summary>The most that either edge is too long anywhere on the bend: it puckers.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.MostPucker))]
    public EdgeStrain Pucker => EdgeStrain.FromFraction(this.pucker.Bare);

    /// <summary>The most that either edge is too short anywhere on the bend: it stretches.</summary>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.MostStretch))]
    public EdgeStrain Stretch => EdgeStrain.FromFraction(this.stretch.Bare);

    /// <summary>How the spiral of the straight pipe is set, before and after the bend, for the strip to run on.</summary>
    public SpiralSetting SettingOnStraight => SpiralSetting.FromAdvance(this.OutsideAdvance);

    Surface ILay.Surface => this.Bend;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.Round;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(BendSpiralFormulas), nameof(BendSpiralFormulas.Strip))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Bend);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"spiral of {this.Turns} turn(s) on a bend, true lap {this.outsideLapMm.Bare:0.#} mm outside and {this.insideLapMm.Bare:0.#} mm inside, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"On the straight pipe set the spiral to advance {this.outsideAdvanceMm.Bare:0.0} mm a turn, so that the middle of the strip meets the tangent on the outside of the bend. From there mark {this.Turns} turn(s) of {this.outsideAdvanceMm.Bare:0.0} mm along the outside and of {this.insideAdvanceMm.Bare:0.0} mm along the inside, the first inside mark half a turn from the tangent; the middle of the strip meets each mark (true lap {this.outsideLapMm.Bare:0.0} mm outside, {this.insideLapMm.Bare:0.0} mm inside). At the other tangent it runs on along the pipe. Press the inside first, then the flanks, and work the puckers of the outside flat toward the edge. Where the bend rises begin at its lower tangent.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding? pucker = rules[RuleIds.MaximumPucker].Judge(new Measure(this.pucker.Bare * 100, TradeUnit.Percent), subject);
        Finding? stretch = rules[RuleIds.MaximumStretch].Judge(new Measure(this.stretch.Bare * 100, TradeUnit.Percent), subject);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumLap].Judge(Measure.Of(this.OutsideLap), subject),
            rules[RuleIds.MaximumSpiralAngle].Judge(new Measure(this.degrees.Bare, TradeUnit.Degree), subject),
            pucker,
            stretch,
            pucker is null && stretch is null ? null : rules[RuleIds.RingsInstead].State(subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Spiral on " + this.Bend.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double tube = this.Bend.DiameterMm / 2;
        double radius = this.Bend.RadiusMm;
        SpiralSolution straight = SpiralKernel.Solve(this.Bend.DiameterMm, width, LapConvention.TrueLap, this.askedLapMm.Bare, steps);
        double arc = BendKernel.OutsideArcMm(this.Bend.DiameterMm, radius, this.Bend.AngleDegrees, steps);
        double turns = BendSpiralKernel.Turns(arc, straight.AdvanceMm, steps);
        double outside = BendSpiralKernel.OutsideAdvanceMm(arc, turns, steps);
        double inside = BendSpiralKernel.InsideAdvanceMm(outside, radius, tube, steps);
        double angle = BendSpiralKernel.AngleDegrees(outside, straight.CircumferenceMm, steps);
        double outsideLap = BendSpiralKernel.LapMm(BendSpiralFormulas.OutsideLap, width, outside, straight.CircumferenceMm, steps);
        double insideLap = BendSpiralKernel.LapMm(BendSpiralFormulas.InsideLap, width, inside, straight.CircumferenceMm, steps);
        double layers = BendSpiralKernel.Layers(this.Choices.Passes, width, outsideLap, this.Choices.WanderMm, steps);
        double ratio = BendSpiralKernel.Ratio(outside, radius, tube, steps);
        double strip = BendSpiralKernel.StripMm(turns, ratio, radius, tube, steps);
        double pucker = BendSpiralKernel.MostStrain(-1, width, ratio, tube, radius, steps);
        double stretch = BendSpiralKernel.MostStrain(1, width, ratio, tube, radius, steps);
        return new(arc, straight.AdvanceMm, turns, outside, inside, angle, outsideLap, insideLap, layers, strip, pucker, stretch);
    }

    private readonly record struct Solution(
        double ArcMm,
        double FullAdvanceMm,
        double Turns,
        double OutsideAdvanceMm,
        double InsideAdvanceMm,
        double AngleDegrees,
        double OutsideLapMm,
        double InsideLapMm,
        double Layers,
        double StripMm,
        double Pucker,
        double Stretch);
}
