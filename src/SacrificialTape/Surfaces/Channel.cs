using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A channel, with parallel or tapered flanges.</summary>
/// <remarks>
/// Height and width: 1 mm to 100 m. The web is thinner than the flanges are wide, both flanges together thinner than the
/// section is high. Taper: 0 up to but not 45 degrees, and the toe keeps some thickness. Radii: 0 to what there is room for.
/// The first face of the outline is the back of the web, the second the outside of a flange.
/// </remarks>
public sealed record Channel : Section
{
    private const double MostTaper = 45;

    private readonly StoredNumber heightMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber webMm;
    private readonly StoredNumber flangeMm;
    private readonly StoredNumber rootMm;
    private readonly StoredNumber toeMm;
    private readonly StoredNumber taperDegrees;

    internal Channel(
        Length height,
        Length width,
        Length webThickness,
        Length flangeThickness,
        Length rootRadius,
        Length toeRadius,
        Angle taper,
        Length length,
        Basis? sizeBasis)
        : base(length, sizeBasis)
    {
        double h = FittingRanges.DiameterMm(height, nameof(height));
        double b = FittingRanges.DiameterMm(width, nameof(width));
        double web = FittingRanges.Inside(webThickness, b, nameof(webThickness));
        double flange = FittingRanges.Inside(flangeThickness, h / 2, nameof(flangeThickness));
        double degrees = AcceptedRange.FromBelow(0, MostTaper, "deg").Check(UnitConversions.Degrees(taper), nameof(taper));
        double slope = Math.Tan(degrees * Math.PI / 180);

        // The flange is measured half-way along its width: thinner at the toe, thicker at the web.
        double toeHeight = flange - (slope * b / 2);
        double inside = h - (2 * (flange + (slope * ((b / 2) - web))));
        if (!(toeHeight > 0 && inside > 0))
        {
            double most = Math.Min(2 * flange / b, b > 2 * web ? (h - (2 * flange)) / (b - (2 * web)) : double.MaxValue);
            throw AcceptedRange.FromBelow(0, Math.Atan(most) * 180 / Math.PI, "deg")
                .Noting("the flanges must have some thickness at the toe and leave some web between them")
                .Refuse(degrees, nameof(taper));
        }

        // A corner takes its radius times the tangent of half its turn from both faces that meet in it.
        double taken = Math.Tan((90 - degrees) * Math.PI / 360);
        double face = (b - web) * double.Hypot(1, slope) / taken;
        double toe = FittingRanges.UpTo(toeRadius, Math.Min(toeHeight / taken, face), nameof(toeRadius));
        this.heightMm = new StoredNumber(h);
        this.widthMm = new StoredNumber(b);
        this.webMm = new StoredNumber(web);
        this.flangeMm = new StoredNumber(flange);
        this.taperDegrees = new StoredNumber(degrees);
        this.toeMm = new StoredNumber(toe);
        this.rootMm = new StoredNumber(FittingRanges.UpTo(rootRadius, Math.Min(inside / 2 / taken, Math.Max(0, face - toe)), nameof(rootRadius)));
    }

    /// <summary>Height over both flanges.</summary>
    public Length Height => Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>Width of a flange, from the back of the web.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Thickness of the web.</summary>
    public Length WebThickness => Length.FromMillimeters(this.webMm.Bare);

    /// <summary>Thickness of a flange half-way along its width. The perimeter does not depend on it.</summary>
    public Length FlangeThickness => Length.FromMillimeters(this.flangeMm.Bare);

    /// <summary>Radius between web and flange.</summary>
    public Length RootRadius => Length.FromMillimeters(this.rootMm.Bare);

    /// <summary>Radius at the inner edge of a flange.</summary>
    public Length ToeRadius => Length.FromMillimeters(this.toeMm.Bare);

    /// <summary>Angle of the inner faces of the flanges to the outer ones.</summary>
    public Angle Taper => Angle.FromDegrees(this.taperDegrees.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture,
        $"channel {this.heightMm.Bare:0.##} x {this.widthMm.Bare:0.##} x {this.webMm.Bare:0.##} x {this.flangeMm.Bare:0.##} mm");

    /// <summary>A channel whose flanges have the same thickness all over.</summary>
    /// <param name="height">Over both flanges.</param>
    /// <param name="width">Of a flange, from the back of the web.</param>
    /// <param name="webThickness">Of the web.</param>
    /// <param name="flangeThickness">Of a flange.</param>
    /// <param name="rootRadius">Between web and flange; may be zero.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Channel WithParallelFlanges(
        Length height, Length width, Length webThickness, Length flangeThickness, Length rootRadius, Length length) =>
        new(height, width, webThickness, flangeThickness, rootRadius, Length.Zero, Angle.Zero, length, null);

    /// <summary>A channel whose flanges are thicker at the web.</summary>
    /// <param name="height">Over both flanges.</param>
    /// <param name="width">Of a flange, from the back of the web.</param>
    /// <param name="webThickness">Of the web.</param>
    /// <param name="flangeThickness">Of a flange, half-way along its width.</param>
    /// <param name="rootRadius">Between web and flange; may be zero.</param>
    /// <param name="toeRadius">At the inner edge of a flange; may be zero.</param>
    /// <param name="taper">Angle between inner and outer face of a flange; a taper of 8 % is 4.574 degrees.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Channel WithTaperedFlanges(
        Length height,
        Length width,
        Length webThickness,
        Length flangeThickness,
        Length rootRadius,
        Length toeRadius,
        Angle taper,
        Length length) =>
        new(height, width, webThickness, flangeThickness, rootRadius, toeRadius, taper, length, null);

    internal override double PerimeterMm<TSteps>(TSteps steps) => SectionKernel.ChannelMm(
        this.heightMm.Bare, this.widthMm.Bare, this.webMm.Bare, this.rootMm.Bare, this.toeMm.Bare, this.taperDegrees.Bare, steps);

    internal override SectionOutline Outline<TSteps>(TSteps steps)
    {
        double h = this.heightMm.Bare;
        double b = this.widthMm.Bare;
        double w = this.webMm.Bare;
        double slope = Math.Tan(this.taperDegrees.Bare * Math.PI / 180);
        double thin = this.flangeMm.Bare - (slope * b / 2);
        double thick = this.flangeMm.Bare + (slope * ((b / 2) - w));
        double root = this.rootMm.Bare;
        double toe = this.toeMm.Bare;
        return SectionOutline.Walk(
            [(0, h, 0), (0, 0, 0), (b, 0, 0), (b, thin, toe), (w, thick, root), (w, h - thick, root), (b, h - thin, toe), (b, h, 0)], steps);
    }
}
