using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>The edge of a sheet with a band on both faces, as one folded strip covers it.</summary>
/// <remarks>
/// <para>Edge length: 1 mm to 1000 m, round all corners. Thickness: more than 0, at most 1 m. Reach: 0 or more on each
/// face. Corners are right angles. At an outside corner the bands of both sides share a square of the reach, which is
/// counted once; at an inside corner (of a notch) a square between them is added.</para>
/// <para>Sharp foil edges cut: the fold must lie close round the edge of the sheet.</para>
/// </remarks>
public sealed record SheetEdge : Surface
{
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber frontMm;
    private readonly StoredNumber backMm;

    /// <summary>Describes an edge.</summary>
    /// <param name="edgeLength">Along the edge, all sides added.</param>
    /// <param name="thickness">Of the sheet.</param>
    /// <param name="frontReach">Width of the band on the front.</param>
    /// <param name="backReach">Width of the band on the back.</param>
    /// <param name="outsideCorners">Right-angled outside corners along the edge; a whole rectangle has four. There must be twice the reach of edge for each.</param>
    /// <param name="insideCorners">Right-angled inside corners along the edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or a reach is too large for the edge and its corners.</exception>
    public SheetEdge(
        Length edgeLength, Length thickness, Length frontReach, Length backReach, int outsideCorners = 0, int insideCorners = 0)
    {
        double length = FittingRanges.ExtentMm(edgeLength, nameof(edgeLength));
        ArgumentOutOfRangeException.ThrowIfNegative(outsideCorners);
        ArgumentOutOfRangeException.ThrowIfNegative(insideCorners);
        double most = outsideCorners == 0 ? RimRanges.MostReachMm : Math.Min(RimRanges.MostReachMm, length / 2 / outsideCorners);
        this.lengthMm = new StoredNumber(length);
        this.thicknessMm = new StoredNumber(FittingRanges.ThicknessMm(thickness, nameof(thickness)));
        this.frontMm = new StoredNumber(FittingRanges.UpTo(frontReach, most, nameof(frontReach)));
        this.backMm = new StoredNumber(FittingRanges.UpTo(backReach, most, nameof(backReach)));
        this.OutsideCorners = outsideCorners;
        this.InsideCorners = insideCorners;
    }

    /// <summary>Length along the edge.</summary>
    public Length EdgeLength => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Thickness of the sheet.</summary>
    public Length Thickness => Length.FromMillimeters(this.thicknessMm.Bare);

    /// <summary>Width of the band on the front.</summary>
    public Length FrontReach => Length.FromMillimeters(this.frontMm.Bare);

    /// <summary>Width of the band on the back.</summary>
    public Length BackReach => Length.FromMillimeters(this.backMm.Bare);

    /// <summary>Right-angled outside corners.</summary>
    public int OutsideCorners { get; }

    /// <summary>Right-angled inside corners.</summary>
    public int InsideCorners { get; }

    /// <summary>Width of a strip that reaches round the edge: both bands and the thickness.</summary>
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.Width))]
    public Length StripWidth => Length.FromMillimeters(
        RimKernel.WidthMm(this.frontMm.Bare, this.backMm.Bare, this.thicknessMm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.EdgeArea))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"sheet edge {this.lengthMm.Bare / 1000:0.###} m long, {this.thicknessMm.Bare:0.##} mm thick, reach {this.frontMm.Bare:0.##} and {this.backMm.Bare:0.##} mm, {this.OutsideCorners} outside and {this.InsideCorners} inside corner(s)");

    internal double LengthMm => this.lengthMm.Bare;

    internal double ThicknessMm => this.thicknessMm.Bare;

    internal double FrontMm => this.frontMm.Bare;

    internal double BackMm => this.backMm.Bare;

    /// <summary>The whole edge of a rectangular sheet.</summary>
    /// <param name="width">Of the sheet.</param>
    /// <param name="height">Of the sheet.</param>
    /// <param name="thickness">Of the sheet.</param>
    /// <param name="frontReach">Width of the band on the front, at most half the shorter side.</param>
    /// <param name="backReach">Width of the band on the back, at most half the shorter side.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or a reach is larger than the sheet has room for.</exception>
    public static SheetEdge AroundRectangle(Length width, Length height, Length thickness, Length frontReach, Length backReach)
    {
        double w = FittingRanges.DiameterMm(width, nameof(width));
        double h = FittingRanges.DiameterMm(height, nameof(height));
        _ = FittingRanges.UpTo(frontReach, Math.Min(w, h) / 2, nameof(frontReach));
        _ = FittingRanges.UpTo(backReach, Math.Min(w, h) / 2, nameof(backReach));
        return new(Length.FromMillimeters(2 * (w + h)), thickness, frontReach, backReach, 4);
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = RimKernel.WidthMm(this.frontMm.Bare, this.backMm.Bare, this.thicknessMm.Bare, steps);
        return RimKernel.EdgeSquareMeters(
            this.lengthMm.Bare, width, this.InsideCorners - this.OutsideCorners, this.frontMm.Bare, this.backMm.Bare, steps);
    }
}
