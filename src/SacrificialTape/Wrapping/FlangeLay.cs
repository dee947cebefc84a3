using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A flange: rings on its rim, parallel strips on its back and on its front, whichever are covered.</summary>
/// <remarks>
/// <para>Strips of a face are as long as the longest chord within their band, interrupted where they lie wholly within the
/// width of hub or raised face, else cut to fit round it; bolt holes are cut out. A rim narrower than the strip is one
/// ring, trimmed at both edges.</para>
/// <para>Bolts, nuts, what they bear on and the gasket seat stay clear of tape. What nuts bear on is part of the surface's
/// area, so that a little less tape is laid than is counted here.</para>
/// </remarks>
public sealed record FlangeLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber rimLapMm;
    private readonly StoredNumber backLapMm;
    private readonly StoredNumber frontLapMm;

    /// <summary>Lays strips on a flange.</summary>
    /// <param name="flange">The flange; its parts say what is covered.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap of the rings, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 000 strips.</exception>
    public FlangeLay(Flange flange, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(flange);
        ArgumentNullException.ThrowIfNull(stock);
        this.Flange = flange;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        (ParallelCut? rim, FaceCut? back, FaceCut? front) = this.Cut(default(NoSteps));
        this.RimRings = rim?.SideBySide ?? 0;
        this.BackStrips = back?.SideBySide ?? 0;
        this.FrontStrips = front?.SideBySide ?? 0;
        this.rimLapMm = new StoredNumber(rim?.LapMm ?? 0);
        this.backLapMm = new StoredNumber(back?.LapMm ?? 0);
        this.frontLapMm = new StoredNumber(front?.LapMm ?? 0);
        this.LayersEverywhere = Math.Min(
            rim?.LayersEverywhere ?? int.MaxValue, Math.Min(back?.LayersEverywhere ?? int.MaxValue, front?.LayersEverywhere ?? int.MaxValue));
        var strips = new List<Strip>();
        if (rim is { } rings)
        {
            strips.Add(rings.Strip);
        }

        this.Strips = [.. strips, .. back?.Strips ?? [], .. front?.Strips ?? []];
    }

    /// <summary>The flange.</summary>
    public Flange Flange { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Rings on the rim in one pass; none where it is left out.</summary>
    public int RimRings { get; }

    /// <summary>Strips on the back in one pass, interrupted or not; none where it is left out.</summary>
    public int BackStrips { get; }

    /// <summary>Strips on the front in one pass, interrupted or not; none where it is left out.</summary>
    public int FrontStrips { get; }

    /// <summary>The lap of rings on the rim; zero for a single ring.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length RimLap => Length.FromMillimeters(this.rimLapMm.Bare);

    /// <summary>The lap of strips on the back; zero for a single strip.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length BackLap => Length.FromMillimeters(this.backLapMm.Bare);

    /// <summary>The lap of strips on the front; zero for a single strip.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length FrontLap => Length.FromMillimeters(this.frontLapMm.Bare);

    Surface ILay.Surface => this.Flange;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.OnFace;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(FaceFormulas), nameof(FaceFormulas.OnSteel))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Flange);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"flange: {this.RimRings} ring(s) on the rim, {this.BackStrips} strip(s) on the back, {this.FrontStrips} strip(s) on the front, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction =>
        $"{this.OnFace("back", this.BackStrips, this.backLapMm.Bare, "hub")}{this.OnFace("front", this.FrontStrips, this.frontLapMm.Bare, "raised face")}{this.OnRim}Keep gasket seat, bolts and nuts and what they bear on free of tape: the joint must stay workable. Do not open or slacken it.{this.Choices.Repeated}";

    private string OnRim => this.RimRings == 0
        ? string.Empty
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Lay {this.RimRings} ring(s) on the rim, a new one every {this.Stock.WidthMm - this.rimLapMm.Bare:0.0} mm, each lapped {this.Choices.EndLapMm:0.#} mm on itself, the free end facing down on the side; trim at both edges and leave the gap of the joint open. ");

    /// <summary>Where each piece of one pass lies on the back, strip by strip.</summary>
    internal IEnumerable<StripPlace> BackPlaces() => this.Places(this.Back, this.BackStrips, this.backLapMm.Bare);

    /// <summary>Where each piece of one pass lies on the front, strip by strip.</summary>
    internal IEnumerable<StripPlace> FrontPlaces() => this.Places(this.Front, this.FrontStrips, this.frontLapMm.Bare);

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        foreach ((int count, Length lap) in new[] { (this.RimRings, this.RimLap), (this.BackStrips, this.BackLap), (this.FrontStrips, this.FrontLap) })
        {
            if (count > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(lap), subject) is { } narrow)
            {
                yield return narrow;
            }
        }

        if (this.RimRings > 0 && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
        {
            yield return endLap;
        }

        if (this.RimRings > 0 && this.BackStrips + this.FrontStrips > 0)
        {
            yield return rules[RuleIds.EdgeJoint].State(subject);
        }

        yield return rules[RuleIds.FlangedJoint].State(subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps);
        return steps.Under("Strips on " + this.Flange.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Face Back => Face.Ring(this.Flange.OutsideMm, this.Flange.HubMm, this.Flange.BoltHoles, this.Flange.BoltHoleMm);

    private Face Front => Face.Ring(this.Flange.OutsideMm, this.Flange.FaceMm, this.Flange.BoltHoles, this.Flange.BoltHoleMm);

    private string OnFace(string face, int strips, double lapMm, string middle) => strips == 0
        ? string.Empty
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Cut {strips} level strip(s) for the {face} to a paper template, with the {middle} and the bolt holes cut out; lay them from the bottom up, a new one every {this.Stock.WidthMm - lapMm:0.0} mm (lap {lapMm:0.0} mm), so that each lap sheds water, and trim at the rim. ");

    private IEnumerable<StripPlace> Places(Face face, int strips, double lapMm) =>
        from band in FaceKernel.Bands(face, strips, this.Stock.WidthMm, lapMm)
        from piece in band.Pieces
        select new StripPlace(piece.From, piece.To, band.LowMm);

    private (ParallelCut? Rim, FaceCut? Back, FaceCut? Front) Cut<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        FlangeParts parts = this.Flange.Parts;
        double asked = this.askedLapMm.Bare;
        ParallelCut? rim = parts.HasFlag(FlangeParts.Rim)
            ? RingKernel.Cut(this.Flange.OutsideMm, this.Flange.RimMm, this.Stock, asked, this.Choices, steps)
            : null;
        FaceCut? back = parts.HasFlag(FlangeParts.Back) ? FaceKernel.Cut(this.Back, this.Stock, asked, this.Choices, steps) : null;
        FaceCut? front = parts.HasFlag(FlangeParts.Front) ? FaceKernel.Cut(this.Front, this.Stock, asked, this.Choices, steps) : null;
        return (rim, back, front);
    }
}
