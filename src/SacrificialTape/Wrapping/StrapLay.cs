using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along a strap, the outer ones folded over its narrow edges.</summary>
/// <remarks>
/// <para>Strips of the outer face span the face and both narrow edges: n = ceil((W - o)/(w - o)), laps made equal. A
/// single strip that is wider is turned in beyond the edges by half of what is left on each side. The narrow edges are not
/// part of the surface: tape on them counts as lap. Strips of the inner face end at its edges; a single one that is wider
/// is trimmed.</para>
/// <para>A strap that goes all round without ends has a lap of its strips on themselves. Folded down a narrow edge the
/// strip must shorten by thickness over outer radius: it puckers.</para>
/// </remarks>
public sealed record StrapLay : ILay, IFolds
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber outerLapMm;
    private readonly StoredNumber turnedInMm;
    private readonly StoredNumber pucker;

    /// <summary>Lays strips along a strap.</summary>
    /// <param name="strap">The strap.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips.</exception>
    public StrapLay(PipeStrap strap, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(strap);
        ArgumentNullException.ThrowIfNull(stock);
        this.Strap = strap;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        var strips = new List<Strip>();
        Solution solved = this.Solve(default(NoSteps), strips);
        this.outerLapMm = new StoredNumber(solved.OuterLapMm);
        this.turnedInMm = new StoredNumber(solved.TurnedInMm);
        this.pucker = new StoredNumber(solved.Pucker);
        this.LayersEverywhere = (int)solved.Layers;
        this.OuterStrips = strips[0].Count / this.Choices.Passes;
        this.InnerStrips = strips.Count > 1 ? strips[1].Count / this.Choices.Passes : 0;
        this.Strips = new ValueList<Strip>(strips);
    }

    /// <summary>The strap.</summary>
    public PipeStrap Strap { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Strips side by side on the outer face and the narrow edges.</summary>
    public int OuterStrips { get; }

    /// <summary>Strips side by side on the inner face; none when it is left out.</summary>
    public int InnerStrips { get; }

    /// <summary>The lap of the strips on the outer face; zero for a single one.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length OuterLap => Length.FromMillimeters(this.outerLapMm.Bare);

    /// <summary>What a single outer strip has left to turn in beyond each narrow edge; zero for several strips.</summary>
    [BasisOf(typeof(StrapLayFormulas), nameof(StrapLayFormulas.TurnedIn))]
    public Length TurnedIn => Length.FromMillimeters(this.turnedInMm.Bare);

    /// <summary>How much too long the strip is where it is folded down a narrow edge.</summary>
    [BasisOf(typeof(StrapLayFormulas), nameof(StrapLayFormulas.Pucker))]
    public EdgeStrain Pucker => EdgeStrain.FromFraction(this.pucker.Bare);

    /// <summary>The two folds of the outer face, their places counted from the first edge of the strips side by side.</summary>
    public ValueList<Fold> Folds
    {
        get
        {
            double first = this.turnedInMm.Bare + this.Strap.ThicknessMm;
            return [new Fold(first, 0, 90, 0, true), new Fold(first + this.Strap.WidthMm, 0, 90, 0, true)];
        }
    }

    /// <summary>Zero: the edges of a strap are described as sharp.</summary>
    public Length SmallestFoldRadius => Length.FromMillimeters(this.Folds.Min(static fold => fold.RadiusMm));

    Surface ILay.Surface => this.Strap;

    /// <inheritdoc/>
    public StripCourse Course => this.Strap.IsClosed ? StripCourse.RoundWithEndLap : StripCourse.Along;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenCount))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Strap);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.OuterStrips} strip(s) on the outer face of the strap and {this.InnerStrips} on the inner, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"{(this.InnerStrips > 0 ? $"Lay {this.InnerStrips} strip(s) along the inner face first, flush with its edges. " : string.Empty)}Lay {this.OuterStrips} strip(s) along the outer face{(this.OuterStrips > 1 ? string.Create(CultureInfo.InvariantCulture, $", lap {this.outerLapMm.Bare:0.0} mm") : string.Empty)}, and fold the outermost edges down both narrow edges of the strap with an edge roller{(this.turnedInMm.Bare > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {this.turnedInMm.Bare:0.0} mm farther, {(this.InnerStrips > 0 ? "over the tape of the inner face" : "on to the tape of the pipe")}") : string.Empty)}. A strap that holds a pipe is taken off only by those licensed to do so.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Finding?[] judged =
        [
            this.OuterStrips > 1 ? rules[RuleIds.MinimumLap].Judge(Measure.Of(this.OuterLap), subject) : null,
            this.Strap.IsClosed ? rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) : null,
            rules[RuleIds.MaximumPucker].Judge(new Measure(this.pucker.Bare * 100, TradeUnit.Percent), subject),
        ];
        return judged.OfType<Finding>();
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps, []);
        return steps.Under("Strips on " + this.Strap.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution Solve<TSteps>(TSteps steps, List<Strip> strips)
        where TSteps : struct, IStepRecorder
    {
        double strip = this.Stock.WidthMm;
        double pucker = StrapLayKernel.Pucker(this.Strap.ThicknessMm, this.Strap.PipeMm, steps);
        double span = StrapLayKernel.OuterSpanMm(this.Strap.WidthMm, this.Strap.ThicknessMm, steps);
        (double count, double outerLap, double layers) = this.SideBySide(span, steps);
        double turned = count > 1 ? 0 : StrapLayKernel.TurnedInMm(strip, span, steps);
        double outer = this.Strap.OuterMm(steps);
        this.Cut(strips, count, outer, 0, steps);
        if (this.Strap.Faces == StrapFaces.Outer)
        {
            return new(outerLap, turned, pucker, layers);
        }

        (double innerCount, _, double innerLayers) = this.SideBySide(this.Strap.WidthMm, steps);
        double aside = innerCount > 1 ? 0 : Math.Max(0, 1 - (this.Strap.WidthMm / strip));
        this.Cut(strips, innerCount, this.Strap.InnerMm(steps), aside, steps);
        return new(outerLap, turned, pucker, Math.Min(layers, innerLayers));
    }

    private (double Count, double LapMm, double Layers) SideBySide<TSteps>(double spanMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = this.Stock.WidthMm;
        double count = SpanKernel.OpenCount(spanMm, strip, this.askedLapMm.Bare, steps);
        if (count < 2)
        {
            return (count, 0, this.Choices.Passes);
        }

        double lap = SpanKernel.OpenLapMm(count, strip, spanMm, steps);
        return (count, lap, SpanKernel.OpenLayers(this.Choices.Passes, strip, this.Choices.WanderMm, strip - lap, steps));
    }

    private void Cut<TSteps>(List<Strip> strips, double count, double faceMm, double trimmedShare, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int whole = StripCount.Whole(count, this.Stock.WidthMm, this.askedLapMm.Bare);
        double length = this.Strap.IsClosed ? SpanKernel.RingLengthMm(faceMm, this.Choices.EndLapMm, steps) : faceMm;
        double cover = faceMm * this.Strap.WidthMm / (whole * this.Stock.WidthMm);
        strips.Add(Strip.Computed(
            this.Stock, length, whole * this.Choices.Passes, StripPurpose.Strap, !this.Strap.IsClosed, cover, length * trimmedShare));
    }

    private readonly record struct Solution(double OuterLapMm, double TurnedInMm, double Pucker, double Layers);
}
