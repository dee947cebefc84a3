using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips folded over the edge of a sheet or the rim of an opening, with their corners.</summary>
/// <remarks>
/// <para>One strip covers front, thickness and back; it is at least as wide as the three together. What it is wider goes on
/// over the back as extra reach. It counts as lap in the ledger, for it covers nothing that was asked for.</para>
/// <para>Each side has a strip of its own. Where sides meet, the thickness is closed by a tab: the strip goes on by the end
/// lap, its parts on the faces are cut away there, and the tab is turned round the corner. On the faces the bands cross at
/// an outside corner and lie on each other. An inside corner leaves a square on each face, which gets a patch that laps on
/// both bands, its part over the opening cut out. Long sides may be spliced; the take-off does so.</para>
/// <para>On the faces round a round opening the strip must stretch by reach over radius. A snipped strip spreads without
/// strain, but leaves open wedges: layers everywhere are promised for a strip that is not snipped.</para>
/// </remarks>
public sealed record EdgeLay : ILay, IFolds
{
    private readonly EdgePlan plan;
    private readonly StoredNumber extraMm;
    private readonly StoredNumber stretch;

    private EdgeLay(EdgePlan plan, StripStock stock, LayChoices? choices)
    {
        ArgumentNullException.ThrowIfNull(stock);
        this.plan = plan;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        double lap = this.Choices.EndLapMm;
        double least = RimKernel.WidthMm(plan.FrontMm, plan.BackMm, plan.ThicknessMm, default(NoSteps));
        double patch = plan.InsideCorners == 0 ? 0 : Math.Max(plan.FrontMm, plan.BackMm) + lap;
        if (!WithAllowance.AtLeast(stock.WidthMm, Math.Max(least, patch)))
        {
            throw AcceptedRange.AtLeast(Math.Max(least, patch), "mm")
                .Noting(least >= patch ? "front reach, thickness and back reach" : "a patch in a corner: reach and lap").Refuse(stock.WidthMm, nameof(stock));
        }

        if (plan.DiameterMm > 0)
        {
            double room = plan.DiameterMm / 2;
            _ = AcceptedRange.Between(0, room, "mm").Noting("the radius of the opening").Check(Math.Max(plan.FrontMm, plan.BackMm), "opening");
            _ = AcceptedRange.Between(least, least + room - plan.BackMm, "mm").Noting("wider ones reach farther than the radius of the opening")
                .Check(Math.Max(stock.WidthMm, least), nameof(stock));
        }

        var strips = new List<Strip>();
        Solution solved = this.Solve(default(NoSteps), strips);
        this.extraMm = new StoredNumber(solved.ExtraMm);
        this.stretch = new StoredNumber(solved.Stretch);
        this.LayersEverywhere = (int)solved.Layers;
        this.Strips = new ValueList<Strip>(strips);
    }

    /// <summary>The edge or rim.</summary>
    public Surface Edge => this.plan.Surface;

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>Lap at corners and ends, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>How far the strip reaches on the front.</summary>
    public Length FrontReach => Length.FromMillimeters(this.plan.FrontMm);

    /// <summary>How far the strip reaches on the back, extra reach included.</summary>
    public Length BackReach => Length.FromMillimeters(this.plan.BackMm + this.extraMm.Bare);

    /// <summary>How much farther than stated the strip reaches on the back.</summary>
    [BasisOf(typeof(EdgeLayFormulas), nameof(EdgeLayFormulas.ExtraReach))]
    public Length ExtraReach => Length.FromMillimeters(this.extraMm.Bare);

    /// <summary>The two folds, their places counted across the strip from its edge on the front.</summary>
    public ValueList<Fold> Folds =>
        [new Fold(this.plan.FrontMm, 0, 90, 0, true), new Fold(this.plan.FrontMm + this.plan.ThicknessMm, 0, 90, 0, true)];

    /// <summary>Zero: the edge of a sheet is described as sharp.</summary>
    public Length SmallestFoldRadius => Length.FromMillimeters(this.Folds.Min(static fold => fold.RadiusMm));

    /// <summary>How much the strip must stretch on the faces round a round opening; none along straight sides.</summary>
    [BasisOf(typeof(EdgeLayFormulas), nameof(EdgeLayFormulas.Stretch))]
    public EdgeStrain Stretch => EdgeStrain.FromFraction(this.stretch.Bare);

    internal ValueList<double> SidesMm => this.plan.SidesMm;

    Surface ILay.Surface => this.plan.Surface;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.Along;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(EdgeLayFormulas), nameof(EdgeLayFormulas.SideStrip))]
    [BasisOf(typeof(EdgeLayFormulas), nameof(EdgeLayFormulas.Patch))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.plan.Surface);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"strip folded over the edge, reach {this.plan.FrontMm:0.#} and {this.plan.BackMm + this.extraMm.Bare:0.#} mm, {this.plan.OutsideCorners} outside and {this.plan.InsideCorners} inside corner(s), {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Break the sharp edge with a file first. Fold the strip {this.plan.FrontMm:0.#} and {this.plan.FrontMm + this.plan.ThicknessMm:0.#} mm from its front edge, set it on the edge of the sheet and press both faces down with an edge roller. {this.Round}{this.Corners}Begin with the lowest side and end with the highest, so that each lap sheds water.{this.Choices.Repeated}");

    /// <summary>Lays the edge of a sheet.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="sides">Lengths of the straight sides in order; left out: all alike. Four corners more of one kind than of the other close the edge.</param>
    /// <param name="choices">Lap at corners and ends, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentException">The sides are not as many as the corners make, or do not add up to the edge.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strip is too narrow to go round the edge, or for a patch.</exception>
    public static EdgeLay OfSheet(SheetEdge edge, StripStock stock, IEnumerable<Length>? sides = null, LayChoices? choices = null) =>
        new(EdgePlan.Of(edge, sides?.Listed()), stock, choices);

    /// <summary>Lays the rim of an opening.</summary>
    /// <param name="opening">The opening.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="choices">Lap at corners and ends, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The strip is too narrow to go round the edge or for a patch, or reaches farther from a round opening than its radius.
    /// </exception>
    public static EdgeLay OfOpening(WindowOpening opening, StripStock stock, LayChoices? choices = null) =>
        new(EdgePlan.Of(opening), stock, choices);

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        bool joined = this.plan.DiameterMm > 0 || this.plan.SidesMm.Count > 1;
        if (joined && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } lap)
        {
            yield return lap;
        }

        if (this.plan.DiameterMm > 0
            && rules[RuleIds.MaximumStretch].Judge(new Measure(this.stretch.Bare * 100, TradeUnit.Percent), subject) is { } stretched)
        {
            yield return stretched;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps, []);
        return steps.Under("Strips on " + this.plan.Surface.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private string Round => this.plan.DiameterMm == 0 ? string.Empty : string.Create(
        CultureInfo.InvariantCulture,
        $"Begin low on the side, not at the lowest point, and lap the ring {this.Choices.EndLapMm:0.#} mm on itself. On the faces it must stretch by {this.stretch.Bare * 100:0.#} %: work it outwards from the fold. If it lifts or tears, snip its faces down to the fold, let them spread, and close the wedges with a second pass whose snips lie between. ");

    private string Corners => (this.plan.OutsideCorners, this.plan.InsideCorners) switch
    {
        (0, 0) => string.Empty,
        (_, 0) => this.Tabs,
        _ => this.Tabs + string.Create(
            CultureInfo.InvariantCulture,
            $"In an inside corner lay a patch on each face, {this.Choices.EndLapMm:0.#} mm larger than the reach, its part over the opening cut out, its inner corner on that of the sheet. "),
    };

    private string Tabs => string.Create(
        CultureInfo.InvariantCulture,
        $"Where sides meet, leave {this.Choices.EndLapMm:0.#} mm more of the strip, cut its faces away there and turn the tab round the corner; the bands on the faces cross at an outside corner. ");

    private double Squares => (this.plan.FrontMm * this.plan.FrontMm) + (this.plan.BackMm * this.plan.BackMm);

    private Solution Solve<TSteps>(TSteps steps, List<Strip> strips)
        where TSteps : struct, IStepRecorder
    {
        double width = RimKernel.WidthMm(this.plan.FrontMm, this.plan.BackMm, this.plan.ThicknessMm, steps);
        double extra = EdgeLayKernel.ExtraReachMm(this.Stock.WidthMm, width, steps);
        if (this.plan.DiameterMm > 0)
        {
            double rim = PipeKernel.CircumferenceMm(this.plan.DiameterMm, steps);
            double ring = SpanKernel.RingLengthMm(rim, this.Choices.EndLapMm, steps);
            double strain = EdgeLayKernel.Stretch(Math.Max(this.plan.FrontMm, this.plan.BackMm + extra), this.plan.DiameterMm, steps);
            strips.Add(Strip.Computed(this.Stock, ring, this.Choices.Passes, StripPurpose.Edge, true, rim * Math.Min(1, width / this.Stock.WidthMm), 0));
            return new(extra, strain, EdgeLayKernel.Layers(this.Choices.Passes, width, this.Choices.EndLapMm, this.Choices.WanderMm, steps));
        }

        this.CutSides(steps, strips, width);
        this.CutPatches(steps, strips);
        double layers = this.plan.SidesMm.Count > 1
            ? EdgeLayKernel.Layers(this.Choices.Passes, width, this.Choices.EndLapMm, this.Choices.WanderMm, steps)
            : this.Choices.Passes; // one side has no joint that could open
        return new(extra, 0, layers);
    }

    private void CutSides<TSteps>(TSteps steps, List<Strip> strips, double widthMm)
        where TSteps : struct, IStepRecorder
    {
        ValueList<double> sides = this.plan.SidesMm;
        double strip = this.Stock.WidthMm;
        double doubled = this.plan.OutsideCorners * this.Squares;
        double share = Math.Min(1, ((sides.Sum() * widthMm) - doubled) / (sides.Sum() * strip));
        double lap = this.Choices.EndLapMm;
        double tabTrim = sides.Count == 1 ? 0 : EdgeLayKernel.TabTrimMm(lap, strip, this.plan.ThicknessMm, steps);

        // Like sides are cut together; the last side of an open edge has no corner to go round.
        IEnumerable<double> withTab = this.plan.IsClosed ? sides : sides.SkipLast(1);
        foreach (IGrouping<double, double> like in withTab.GroupBy(StoredNumber.Key))
        {
            double length = EdgeLayKernel.SideStripMm(like.First(), lap, steps);
            strips.Add(Strip.Computed(
                this.Stock, length, like.Count() * this.Choices.Passes, StripPurpose.Edge, true, like.First() * share, tabTrim));
        }

        if (!this.plan.IsClosed)
        {
            strips.Add(Strip.Computed(this.Stock, sides[^1], this.Choices.Passes, StripPurpose.Edge, true, sides[^1] * share, 0));
        }
    }

    private void CutPatches<TSteps>(TSteps steps, List<Strip> strips)
        where TSteps : struct, IStepRecorder
    {
        if (this.plan.InsideCorners == 0)
        {
            return;
        }

        double strip = this.Stock.WidthMm;
        double lap = this.Choices.EndLapMm;
        foreach (double reach in new[] { this.plan.FrontMm, this.plan.BackMm }.Where(static reach => reach > 0))
        {
            double patch = EdgeLayKernel.PatchMm(reach, lap, steps);
            double cutAway = (patch * Math.Max(0, strip - patch)) + (lap * lap);
            strips.Add(Strip.Computed(
                this.Stock,
                patch,
                this.plan.InsideCorners * this.Choices.Passes,
                StripPurpose.CornerPatch,
                false,
                reach * reach / strip,
                cutAway / strip));
        }
    }

    private readonly record struct Solution(double ExtraMm, double Stretch, double Layers);
}
