using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A T section with faces square to each other, as cut from an I section.</summary>
/// <remarks>
/// Height and width: 1 mm to 100 m. The stem is thinner than the flange is wide, the flange thinner than the section is
/// high. Root radius: 0 to what there is room for. A butt-weld fitting is a <see cref="Tee"/>.
/// The first face of the outline is the outside of the flange, the second the edge of the flange.
/// </remarks>
public sealed record TeeSection : Section
{
    private readonly StoredNumber heightMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber stemMm;
    private readonly StoredNumber flangeMm;
    private readonly StoredNumber rootMm;

    /// <summary>Describes a section.</summary>
    /// <param name="height">Over flange and stem.</param>
    /// <param name="width">Of the flange.</param>
    /// <param name="stemThickness">Of the stem.</param>
    /// <param name="flangeThickness">Of the flange.</param>
    /// <param name="rootRadius">Between stem and flange; may be zero.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TeeSection(Length height, Length width, Length stemThickness, Length flangeThickness, Length rootRadius, Length length)
        : base(length, null)
    {
        double h = FittingRanges.DiameterMm(height, nameof(height));
        double b = FittingRanges.DiameterMm(width, nameof(width));
        double stem = FittingRanges.Inside(stemThickness, b, nameof(stemThickness));
        double flange = FittingRanges.Inside(flangeThickness, h, nameof(flangeThickness));
        this.heightMm = new StoredNumber(h);
        this.widthMm = new StoredNumber(b);
        this.stemMm = new StoredNumber(stem);
        this.flangeMm = new StoredNumber(flange);
        this.rootMm = new StoredNumber(FittingRanges.UpTo(rootRadius, Math.Min((b - stem) / 2, h - flange), nameof(rootRadius)));
    }

    /// <summary>Height over flange and stem.</summary>
    public Length Height => Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>Width of the flange.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Thickness of the stem. The perimeter does not depend on it.</summary>
    public Length StemThickness => Length.FromMillimeters(this.stemMm.Bare);

    /// <summary>Thickness of the flange. The perimeter does not depend on it.</summary>
    public Length FlangeThickness => Length.FromMillimeters(this.flangeMm.Bare);

    /// <summary>Radius between stem and flange.</summary>
    public Length RootRadius => Length.FromMillimeters(this.rootMm.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture,
        $"T section {this.heightMm.Bare:0.##} x {this.widthMm.Bare:0.##} x {this.stemMm.Bare:0.##} x {this.flangeMm.Bare:0.##} mm");

    internal override double PerimeterMm<TSteps>(TSteps steps) =>
        SectionKernel.TeeMm(this.heightMm.Bare, this.widthMm.Bare, this.rootMm.Bare, steps);

    internal override SectionOutline Outline<TSteps>(TSteps steps)
    {
        double h = this.heightMm.Bare;
        double b = this.widthMm.Bare / 2;
        double s = this.stemMm.Bare / 2;
        double under = h - this.flangeMm.Bare;
        double r = this.rootMm.Bare;
        return SectionOutline.Walk(
            [(b, h, 0), (-b, h, 0), (-b, under, 0), (-s, under, r), (-s, 0, 0), (s, 0, 0), (s, under, r), (b, under, 0)], steps);
    }
}
