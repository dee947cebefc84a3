using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A rectangular or square hollow section, covered on its outside.</summary>
/// <remarks>
/// <para>Outside height and width: 1 mm to 100 m. The wall is thinner than half the narrower side. Outside corner radius:
/// 0 to half the narrower side, a tube with round ends.</para>
/// <para>The factory says which dimensions go in: those of the outside, or those of the inside and the wall. The corner
/// radii of the two standards are recalled, check before use; a real corner may differ within wide tolerances.</para>
/// <para>The first face of the outline is the upper side, the second runs down from it.</para>
/// </remarks>
public sealed record RectangularHollowSection : Section
{
    private const double HotFactor = 1.5;
    private const double ColdThinFactor = 2;
    private const double ColdMiddleFactor = 2.5;
    private const double ColdThickFactor = 3;
    private const double ColdThinMm = 6;
    private const double ColdMiddleMm = 10;

    private readonly StoredNumber heightMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber wallMm;
    private readonly StoredNumber cornerMm;
    private readonly HollowCorners corners;

    private RectangularHollowSection(
        double heightMm, double widthMm, double wallMm, double cornerMm, HollowCorners corners, Length length, Basis? sizeBasis)
        : base(length, sizeBasis)
    {
        this.heightMm = new StoredNumber(heightMm);
        this.widthMm = new StoredNumber(widthMm);
        this.wallMm = new StoredNumber(wallMm);
        this.cornerMm = new StoredNumber(cornerMm);
        this.corners = corners;
    }

    /// <summary>Height of the outside.</summary>
    public Length OutsideHeight => Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>Width of the outside.</summary>
    public Length OutsideWidth => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Thickness of the wall.</summary>
    public Length WallThickness => Length.FromMillimeters(this.wallMm.Bare);

    /// <summary>Radius of the corners on the outside.</summary>
    public Length OutsideCornerRadius => Length.FromMillimeters(this.cornerMm.Bare);

    /// <summary>Where the corner radius comes from.</summary>
    public HollowCorners Corners => this.corners;

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture,
        $"hollow section {this.heightMm.Bare:0.##} x {this.widthMm.Bare:0.##} x {this.wallMm.Bare:0.##} mm outside, corners {this.cornerMm.Bare:0.##} mm");

    /// <summary>A section by its outside dimensions and a corner radius that was measured.</summary>
    /// <param name="outsideHeight">Height of the outside.</param>
    /// <param name="outsideWidth">Width of the outside.</param>
    /// <param name="wallThickness">Of the wall.</param>
    /// <param name="outsideCornerRadius">Of the corners, outside; 0 for sharp ones.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RectangularHollowSection FromOutside(
        Length outsideHeight, Length outsideWidth, Length wallThickness, Length outsideCornerRadius, Length length)
    {
        (double height, double width, double wall) = Outside(outsideHeight, outsideWidth, wallThickness);
        double corner = FittingRanges.UpTo(outsideCornerRadius, Math.Min(height, width) / 2, nameof(outsideCornerRadius));
        return new(height, width, wall, corner, HollowCorners.Measured, length, null);
    }

    /// <summary>A section by its inside dimensions, its wall and the inside corner radius; the outside is worked out.</summary>
    /// <param name="insideHeight">Height of the inside.</param>
    /// <param name="insideWidth">Width of the inside.</param>
    /// <param name="wallThickness">Of the wall, more than 0, at most 1 m.</param>
    /// <param name="insideCornerRadius">Of the corners, inside; the outside radius is one wall thickness more.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RectangularHollowSection FromInside(
        Length insideHeight, Length insideWidth, Length wallThickness, Length insideCornerRadius, Length length)
    {
        double height = FittingRanges.DiameterMm(insideHeight, nameof(insideHeight));
        double width = FittingRanges.DiameterMm(insideWidth, nameof(insideWidth));
        double wall = FittingRanges.ThicknessMm(wallThickness, nameof(wallThickness));
        double corner = FittingRanges.UpTo(insideCornerRadius, Math.Min(height, width) / 2, nameof(insideCornerRadius));
        return new(height + (2 * wall), width + (2 * wall), wall, corner + wall, HollowCorners.Measured, length, null);
    }

    /// <summary>A hot-finished section: outside corners of 1.5 T by EN 10210-2 (recalled, check before use).</summary>
    /// <param name="outsideHeight">Height of the outside.</param>
    /// <param name="outsideWidth">Width of the outside.</param>
    /// <param name="wallThickness">T; at most a third of the narrower side.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RectangularHollowSection HotFinished(Length outsideHeight, Length outsideWidth, Length wallThickness, Length length) =>
        ByRule(outsideHeight, outsideWidth, wallThickness, HollowCorners.HotFinished, length, null);

    /// <summary>
    /// A cold-formed section: outside corners of 2.0 T up to 6 mm, 2.5 T up to 10 mm, 3.0 T above, by EN 10219-2
    /// (recalled, check before use).
    /// </summary>
    /// <param name="outsideHeight">Height of the outside.</param>
    /// <param name="outsideWidth">Width of the outside.</param>
    /// <param name="wallThickness">T; its corners must fit the narrower side.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RectangularHollowSection ColdFormed(Length outsideHeight, Length outsideWidth, Length wallThickness, Length length) =>
        ByRule(outsideHeight, outsideWidth, wallThickness, HollowCorners.ColdFormed, length, null);

    internal static RectangularHollowSection ByRule(
        Length outsideHeight, Length outsideWidth, Length wallThickness, HollowCorners corners, Length length, Basis? sizeBasis)
    {
        (double height, double width, double wall) = Outside(outsideHeight, outsideWidth, wallThickness);
        double factor = Factor(corners, wall);
        _ = FittingRanges.UpTo(wallThickness, Math.Min(height, width) / 2 / factor, nameof(wallThickness));
        double corner = SectionKernel.CornerRadiusMm(factor, wall, SectionFormulas.HotCorner, default(NoSteps));
        return new(height, width, wall, corner, corners, length, sizeBasis);
    }

    internal override double PerimeterMm<TSteps>(TSteps steps)
    {
        if (TSteps.Records && this.corners != HollowCorners.Measured)
        {
            Formula rule = this.corners == HollowCorners.HotFinished ? SectionFormulas.HotCorner : SectionFormulas.ColdCorner;
            _ = SectionKernel.CornerRadiusMm(Factor(this.corners, this.wallMm.Bare), this.wallMm.Bare, rule, steps);
        }

        return SectionKernel.RectangularHollowMm(this.heightMm.Bare, this.widthMm.Bare, this.cornerMm.Bare, steps);
    }

    internal override SectionOutline Outline<TSteps>(TSteps steps)
    {
        double h = this.heightMm.Bare;
        double b = this.widthMm.Bare;
        double r = this.cornerMm.Bare;
        return SectionOutline.Walk([(b, h, r), (0, h, r), (0, 0, r), (b, 0, r)], steps);
    }

    private static double Factor(HollowCorners corners, double wallMm) =>
        corners == HollowCorners.HotFinished ? HotFactor
        : wallMm <= ColdThinMm ? ColdThinFactor
        : wallMm <= ColdMiddleMm ? ColdMiddleFactor
        : ColdThickFactor;

    private static (double Height, double Width, double Wall) Outside(Length outsideHeight, Length outsideWidth, Length wallThickness)
    {
        double height = FittingRanges.DiameterMm(outsideHeight, nameof(outsideHeight));
        double width = FittingRanges.DiameterMm(outsideWidth, nameof(outsideWidth));
        return (height, width, FittingRanges.Inside(wallThickness, Math.Min(height, width) / 2, nameof(wallThickness)));
    }
}
