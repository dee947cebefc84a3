using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A flat head: parallel strips on its face, rings on its straight flange or rim.</summary>
/// <remarks>
/// Each strip of the face is as long as its longest chord within its own band and trimmed at the edge; rings end at the
/// edge. A strip folded over a curved edge puckers, so the two only meet there: a finding says so.
/// </remarks>
public sealed record FlatHeadLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber faceLapMm;
    private readonly StoredNumber rimLapMm;

    /// <summary>Lays strips on a flat head.</summary>
    /// <param name="head">The head.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap of the rings, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 000 strips.</exception>
    public FlatHeadLay(FlatHead head, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(stock);
        this.Head = head;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        (FaceCut face, ParallelCut? rim) = this.Cut(default(NoSteps));
        this.FaceStrips = face.SideBySide;
        this.faceLapMm = new StoredNumber(face.LapMm);
        this.RimRings = rim?.SideBySide ?? 0;
        this.rimLapMm = new StoredNumber(rim?.LapMm ?? 0);
        this.LayersEverywhere = Math.Min(face.LayersEverywhere, rim?.LayersEverywhere ?? int.MaxValue);
        this.Strips = rim is { } rings ? [.. face.Strips, rings.Strip] : face.Strips;
    }

    /// <summary>The head.</summary>
    public FlatHead Head { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Strips on the face in one pass.</summary>
    public int FaceStrips { get; }

    /// <summary>The lap that strips on the face really get; zero for a single strip.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length FaceLap => Length.FromMillimeters(this.faceLapMm.Bare);

    /// <summary>Rings on the straight flange in one pass; none if there is no flange.</summary>
    public int RimRings { get; }

    /// <summary>The lap that rings really get; zero for a single ring.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length RimLap => Length.FromMillimeters(this.rimLapMm.Bare);

    Surface ILay.Surface => this.Head;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.OnFace;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(FaceFormulas), nameof(FaceFormulas.OnSteel))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Head);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.FaceStrips} strip(s) on a flat head, lap {this.faceLapMm.Bare:0.#} mm, {this.RimRings} ring(s) on its rim, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.OnRim}Snap level lines over the face, {this.Stock.WidthMm - this.faceLapMm.Bare:0.0} mm apart, from its lowest point. Lay {this.FaceStrips} strip(s) to them from the bottom up (lap {this.faceLapMm.Bare:0.0} mm), so that each lap sheds water and the last edge faces down; trim each at the edge, without folding it over. Press the edge down all round.{this.Choices.Repeated}");

    private string OnRim => this.RimRings == 0
        ? string.Empty
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Lay {this.RimRings} ring(s) on the straight flange, a new one every {this.Stock.WidthMm - this.rimLapMm.Bare:0.0} mm from the seam to the edge, each lapped {this.Choices.EndLapMm:0.#} mm on itself, the free end facing down on the side; trim what stands over. ");

    /// <summary>Where each piece of one pass lies on the face, strip by strip.</summary>
    internal IEnumerable<StripPlace> FacePlaces() =>
        from band in FaceKernel.Bands(Face.Disc(this.Head.OutsideDiameterMm), this.FaceStrips, this.Stock.WidthMm, this.faceLapMm.Bare)
        from piece in band.Pieces
        select new StripPlace(piece.From, piece.To, band.LowMm);

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.FaceStrips > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.FaceLap), subject) is { } face)
        {
            yield return face;
        }

        if (this.RimRings > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.RimLap), subject) is { } rim)
        {
            yield return rim;
        }

        if (this.RimRings > 0)
        {
            if (rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
            {
                yield return endLap;
            }

            yield return rules[RuleIds.EdgeJoint].State(subject);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps);
        return steps.Under("Strips on " + this.Head.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private (FaceCut Face, ParallelCut? Rim) Cut<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double diameter = this.Head.OutsideDiameterMm;
        FaceCut face = FaceKernel.Cut(Face.Disc(diameter), this.Stock, this.askedLapMm.Bare, this.Choices, steps);
        ParallelCut? rim = this.Head.StraightFlangeMm > 0
            ? RingKernel.Cut(diameter, this.Head.StraightFlangeMm, this.Stock, this.askedLapMm.Bare, this.Choices, steps)
            : null;
        return (face, rim);
    }
}
