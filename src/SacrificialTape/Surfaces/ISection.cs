using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>An I or H section with parallel flanges.</summary>
/// <remarks>
/// Height and width: 1 mm to 100 m. The web is thinner than the flanges are wide, both flanges together thinner than the
/// section is high. Root radius: 0 to what there is room for between web and flange edge and between the flanges.
/// The first face of the outline is the outside of the upper flange, the second the edge of that flange.
/// </remarks>
public sealed record ISection : Section
{
    private readonly StoredNumber heightMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber webMm;
    private readonly StoredNumber flangeMm;
    private readonly StoredNumber rootMm;

    /// <summary>Describes a section.</summary>
    /// <param name="height">Over both flanges.</param>
    /// <param name="width">Of a flange.</param>
    /// <param name="webThickness">Of the web.</param>
    /// <param name="flangeThickness">Of a flange.</param>
    /// <param name="rootRadius">Between web and flange; 0 for a section welded from plates, fillets neglected.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ISection(Length height, Length width, Length webThickness, Length flangeThickness, Length rootRadius, Length length)
        : this(height, width, webThickness, flangeThickness, rootRadius, length, null)
    {
    }

    internal ISection(
        Length height, Length width, Length webThickness, Length flangeThickness, Length rootRadius, Length length, Basis? sizeBasis)
        : base(length, sizeBasis)
    {
        double h = FittingRanges.DiameterMm(height, nameof(height));
        double b = FittingRanges.DiameterMm(width, nameof(width));
        double web = FittingRanges.Inside(webThickness, b, nameof(webThickness));
        double flange = FittingRanges.Inside(flangeThickness, h / 2, nameof(flangeThickness));
        this.heightMm = new StoredNumber(h);
        this.widthMm = new StoredNumber(b);
        this.webMm = new StoredNumber(web);
        this.flangeMm = new StoredNumber(flange);
        this.rootMm = new StoredNumber(FittingRanges.UpTo(rootRadius, Math.Min((b - web) / 2, (h / 2) - flange), nameof(rootRadius)));
    }

    /// <summary>Height over both flanges.</summary>
    public Length Height => Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>Width of a flange.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Thickness of the web.</summary>
    public Length WebThickness => Length.FromMillimeters(this.webMm.Bare);

    /// <summary>Thickness of a flange. The perimeter does not depend on it.</summary>
    public Length FlangeThickness => Length.FromMillimeters(this.flangeMm.Bare);

    /// <summary>Radius between web and flange.</summary>
    public Length RootRadius => Length.FromMillimeters(this.rootMm.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture,
        $"I section {this.heightMm.Bare:0.##} x {this.widthMm.Bare:0.##} x {this.webMm.Bare:0.##} x {this.flangeMm.Bare:0.##} mm");

    internal override double PerimeterMm<TSteps>(TSteps steps) =>
        SectionKernel.IMm(this.heightMm.Bare, this.widthMm.Bare, this.webMm.Bare, this.rootMm.Bare, steps);

    internal override SectionOutline Outline<TSteps>(TSteps steps)
    {
        double h = this.heightMm.Bare;
        double b = this.widthMm.Bare / 2;
        double w = this.webMm.Bare / 2;
        double f = this.flangeMm.Bare;
        double r = this.rootMm.Bare;
        return SectionOutline.Walk(
            [(b, h, 0), (-b, h, 0), (-b, h - f, 0), (-w, h - f, r), (-w, f, r), (-b, f, 0), (-b, 0, 0), (b, 0, 0), (b, f, 0), (w, f, r), (w, h - f, r), (b, h - f, 0)],
            steps);
    }
}
