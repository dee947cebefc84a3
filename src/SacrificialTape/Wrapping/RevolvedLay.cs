using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A lay on a surface of revolution: a dished or conical head, a cap, a concentric reducer, a tapered column.</summary>
/// <remarks>
/// <para>Distances are measured along the steel, from the low edge: the rim of a head, the large end of a reducer, the foot
/// of a column. A head is closed at its crown by a disc as wide as the strip; on a pointed cone the disc is slit to its
/// centre and lapped, and so lies without strain.</para>
/// <para>A flat head is a disc, and the faces of a base plate are panels: neither is laid on here.</para>
/// </remarks>
public abstract record RevolvedLay : ILay
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;
    private readonly StoredNumber leastLapMm;
    private readonly StoredNumber pucker;

    private protected RevolvedLay(in RevolvedInput input, in RevolvedCut cut)
    {
        this.Surface = input.Surface;
        this.Stock = input.Stock;
        this.Choices = input.Choices;
        this.Closes = input.Meridian.Closes;
        this.EndsInTip = input.Meridian.EndsInTip;
        this.HasCorner = input.Meridian.HasCorner;
        this.askedLapMm = new StoredNumber(input.LeastLapMm);
        this.lapMm = new StoredNumber(cut.LapMm);
        this.leastLapMm = new StoredNumber(cut.LeastLapMm);
        this.pucker = new StoredNumber(cut.Pucker);
        this.SideBySide = cut.SideBySide;
        this.LayersEverywhere = cut.LayersEverywhere;
        this.Strips = cut.Strips;
    }

    /// <inheritdoc/>
    public Surface Surface { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Lap between neighbours, made equal: of strips at the low edge, of gores and rings everywhere.</summary>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.GoreLap))]
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedLap))]
    public Length Lap => Length.FromMillimeters(this.LapMm);

    /// <summary>The least lap anywhere, under the disc on the crown and where strips stop included.</summary>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.LeastLap))]
    public Length SmallestLap => Length.FromMillimeters(this.LeastLapMm);

    /// <summary>How much too long an edge comes at the worst spot: it puckers.</summary>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.MostPucker))]
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.RingPucker))]
    public EdgeStrain Pucker => EdgeStrain.FromFraction(this.pucker.Bare);

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(RevolvedFormulas), nameof(RevolvedFormulas.Length))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Surface);

    /// <inheritdoc/>
    public abstract string Description { get; }

    /// <inheritdoc/>
    public abstract string Instruction { get; }

    /// <inheritdoc/>
    public abstract StripCourse Course { get; }

    private protected int SideBySide { get; }

    private protected bool Closes { get; }

    private protected bool EndsInTip { get; }

    private protected bool HasCorner { get; }

    private protected double LapMm => this.lapMm.Bare;

    private protected double LeastLapMm => this.leastLapMm.Bare;

    private protected RevolvedInput Input => new(
        this.Surface, Meridian.Of(this.Surface, nameof(this.Surface)), this.Stock, this.askedLapMm.Bare, this.Choices);

    /// <summary>What is said of the crown.</summary>
    private protected string DiscInWords => !this.Closes
        ? string.Empty
        : string.Create(
            CultureInfo.InvariantCulture,
            $" Close the crown with a disc {this.Stock.WidthMm:0.#} mm wide{(this.EndsInTip ? ", slit to its centre and lapped on itself" : string.Empty)}: last when the crown faces up, first when it faces down, so that what lies higher laps over what lies lower.");

    /// <summary>What is said of a corner of the section.</summary>
    private protected string CornerInWords => this.HasCorner
        ? " Snip the edges where the section has its corner, so that the tape lies flat on both sides of it."
        : string.Empty;

    /// <inheritdoc/>
    public abstract IEnumerable<Finding> Judge(RuleSet rules, string subject);

    /// <inheritdoc/>
    public abstract Workings ShowWorkings();

    /// <summary>The description.</summary>
    public sealed override string ToString() => this.Description;

    private protected static Length? WidestAlong(Surface surface, EdgeStrain pucker)
    {
        Meridian meridian = Meridian.Of(surface, nameof(surface));
        double curvature = meridian.MostCurvatureTo(meridian.LengthMm);
        return curvature == 0
            ? null
            : Length.FromMillimeters(RevolvedKernel.WidestForPuckerMm(pucker.Fraction, curvature * 1e6));
    }
}
