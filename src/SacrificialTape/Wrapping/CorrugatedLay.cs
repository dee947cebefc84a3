using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips on corrugated sheet, along the flutes or across them, their laps made equal.</summary>
/// <remarks>
/// <para>A folded sheet unrolls flat, and so does the strip on it: along the flutes the strips lie side by side over the
/// developed width, across the flutes each is as long as the developed width.</para>
/// <para>A strip may fold over an arris. What it cannot do is bridge a valley: it must be pressed into every inside corner.
/// How many corners one strip reaches over, how narrow the faces are and how wide the valleys open are held against rules.
/// Depth zero is a flat panel.</para>
/// </remarks>
public sealed record CorrugatedLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;

    /// <summary>Lays strips on corrugated sheet.</summary>
    /// <param name="panel">The sheet.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="direction">How the strips run.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips; or the direction is not known.</exception>
    public CorrugatedLay(CorrugatedPanel panel, StripStock stock, CorrugatedDirection direction, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(stock);
        this.Panel = panel;
        this.Stock = stock;
        this.Direction = Enum.IsDefined(direction)
            ? direction
            : throw new ArgumentOutOfRangeException(nameof(direction), direction, "Not a direction known here.");
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        ParallelCut cut = this.Cut(default(NoSteps));
        this.SideBySide = cut.SideBySide;
        this.lapMm = new StoredNumber(cut.LapMm);
        this.LayersEverywhere = cut.LayersEverywhere;
        this.Strips = [cut.Strip];
    }

    /// <summary>The sheet.</summary>
    public CorrugatedPanel Panel { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>How the strips run.</summary>
    public CorrugatedDirection Direction { get; }

    /// <summary>Wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Strips side by side in one pass.</summary>
    public int SideBySide { get; }

    /// <summary>The lap that the strips really get; zero for a single strip.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>The width of the sheet when it is unfolded.</summary>
    [BasisOf(typeof(CorrugatedFormulas), nameof(CorrugatedFormulas.Width))]
    public Length DevelopedWidth => Length.FromMillimeters(
        CorrugatedKernel.WidthMm(this.Panel, CorrugatedKernel.PitchMm(this.Panel, default(NoSteps)), default(NoSteps)));

    /// <summary>The most inside corners that a strip of this width can reach over along the flutes, wherever it begins.</summary>
    [BasisOf(typeof(CorrugatedFormulas), nameof(CorrugatedFormulas.InsideCorners))]
    public int InsideCornersAlongFlutes => (int)CorrugatedKernel.InsideCorners(
        this.Panel, this.Stock.WidthMm, CorrugatedKernel.PitchMm(this.Panel, default(NoSteps)), default(NoSteps));

    Surface ILay.Surface => this.Panel;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.OnFace;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenCount))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Panel);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.SideBySide} strip(s) {(this.Along ? "along" : "across")} the flutes, lap {this.lapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.SideBySide} strip(s) {(this.Along ? "along" : "across")} the flutes, a new one every {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm{(this.Along ? " measured on the steel with a tape pressed into every fold" : string.Empty)} (lap {this.lapMm.Bare:0.0} mm). {this.Folds}{this.Order}{this.Choices.Repeated}");

    private bool Along => this.Direction == CorrugatedDirection.AlongFlutes;

    private string Folds => this.Panel.DepthMm > 0
        ? $"{(this.Along ? "Press each face by face, from the edge laid first to the other" : "Lay each face by face in one run, splices on a crown")}: over every arris, and with an edge roller into every inside corner before the next face; never span a hollow. "
        : string.Empty;

    private string Order => this.Along
        ? "Where the flutes stand, the laps stand up and shed water sideways: begin on the lee side. Where they lie level, work from the bottom up, so that each lap sheds water and the last edge faces down."
        : "Where the flutes stand, work from the bottom up, so that each lap sheds water and the last edge faces down. Where they lie level, the laps stand up: begin on the lee side.";

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.SideBySide > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        if (this.Panel.DepthMm == 0)
        {
            yield break;
        }

        double web = (CorrugatedKernel.PitchMm(this.Panel, default(NoSteps)) - this.Panel.CrownMm - this.Panel.ValleyMm) / 2;
        double narrowest = new[] { this.Panel.CrownMm, this.Panel.ValleyMm, web }.Where(static face => face > 0).Min();
        if (rules[RuleIds.MinimumFoldFace].Judge(new Measure(narrowest, TradeUnit.Millimeter), subject) is { } face)
        {
            yield return face;
        }

        if (rules[RuleIds.MinimumValleyOpening].Judge(new Measure(this.Panel.PitchMm - this.Panel.CrownMm, TradeUnit.Millimeter), subject) is { } mouth)
        {
            yield return mouth;
        }

        if (this.Along && rules[RuleIds.MaximumInsideCorners].Judge(new Measure(this.InsideCornersAlongFlutes, TradeUnit.One), subject) is { } corners)
        {
            yield return corners;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps);
        return steps.Under($"Strips {(this.Along ? "along" : "across")} the flutes of {this.Panel.Description}");
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private ParallelCut Cut<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double pitch = CorrugatedKernel.PitchMm(this.Panel, steps);
        double developed = CorrugatedKernel.WidthMm(this.Panel, pitch, steps);
        _ = CorrugatedKernel.InsideCorners(this.Panel, width, pitch, steps);
        (double span, double length) = this.Along ? (developed, this.Panel.LengthMm) : (this.Panel.LengthMm, developed);
        double count = SpanKernel.OpenCount(span, width, this.askedLapMm.Bare, steps);
        int strips = StripCount.Whole(count, width, this.askedLapMm.Bare);
        double lap = 0;
        double layers = this.Choices.Passes; // a single strip has no neighbour to wander from
        if (strips > 1)
        {
            lap = SpanKernel.OpenLapMm(count, width, span, steps);
            layers = SpanKernel.OpenLayers(this.Choices.Passes, width, this.Choices.WanderMm, width - lap, steps);
        }

        double cover = length * Math.Min(1, span / (count * width));
        double trim = strips > 1 ? 0 : length - cover; // what a single strip stands over is cut off
        return new(strips, lap, (int)layers, Strip.Computed(this.Stock, length, strips * this.Choices.Passes, StripPurpose.Other, true, cover, trim));
    }
}
