using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>An equal or unequal angle, its heel sharp, its toes rounded on the inside.</summary>
/// <remarks>
/// Legs: 1 mm to 100 m. The thickness is less than either leg. Toe radius: 0 to the thickness. Root and toe radius
/// together fit on the inside of the shorter leg.
/// The first face of the outline is the outside of the long leg down to the heel, the second the outside of the short leg.
/// </remarks>
public sealed record AngleSection : Section
{
    private readonly StoredNumber longMm;
    private readonly StoredNumber shortMm;
    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber rootMm;
    private readonly StoredNumber toeMm;

    /// <summary>Describes an angle.</summary>
    /// <param name="longLeg">Outside length of the longer leg.</param>
    /// <param name="shortLeg">Outside length of the shorter leg; the same for an equal angle, and never more.</param>
    /// <param name="thickness">Of both legs.</param>
    /// <param name="rootRadius">Between the legs, inside; may be zero.</param>
    /// <param name="toeRadius">At the inner edge of each leg; may be zero.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AngleSection(Length longLeg, Length shortLeg, Length thickness, Length rootRadius, Length toeRadius, Length length)
        : this(longLeg, shortLeg, thickness, rootRadius, toeRadius, length, null)
    {
    }

    internal AngleSection(
        Length longLeg, Length shortLeg, Length thickness, Length rootRadius, Length toeRadius, Length length, Basis? sizeBasis)
        : base(length, sizeBasis)
    {
        double a = FittingRanges.DiameterMm(longLeg, nameof(longLeg));
        double b = FittingRanges.Within(UnitConversions.Millimeters(shortLeg), 1, a, nameof(shortLeg));
        double t = FittingRanges.Inside(thickness, b, nameof(thickness));
        double toe = FittingRanges.UpTo(toeRadius, Math.Min(t, b - t), nameof(toeRadius));
        this.longMm = new StoredNumber(a);
        this.shortMm = new StoredNumber(b);
        this.thicknessMm = new StoredNumber(t);
        this.toeMm = new StoredNumber(toe);
        this.rootMm = new StoredNumber(FittingRanges.UpTo(rootRadius, Math.Max(0, b - t - toe), nameof(rootRadius)));
    }

    /// <summary>Outside length of the longer leg.</summary>
    public Length LongLeg => Length.FromMillimeters(this.longMm.Bare);

    /// <summary>Outside length of the shorter leg.</summary>
    public Length ShortLeg => Length.FromMillimeters(this.shortMm.Bare);

    /// <summary>Thickness of both legs. The perimeter does not depend on it.</summary>
    public Length Thickness => Length.FromMillimeters(this.thicknessMm.Bare);

    /// <summary>Radius between the legs, inside.</summary>
    public Length RootRadius => Length.FromMillimeters(this.rootMm.Bare);

    /// <summary>Radius at the inner edge of each leg.</summary>
    public Length ToeRadius => Length.FromMillimeters(this.toeMm.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture, $"angle {this.longMm.Bare:0.##} x {this.shortMm.Bare:0.##} x {this.thicknessMm.Bare:0.##} mm");

    internal override double PerimeterMm<TSteps>(TSteps steps) =>
        SectionKernel.AngleMm(this.longMm.Bare, this.shortMm.Bare, this.rootMm.Bare, this.toeMm.Bare, steps);

    internal override SectionOutline Outline<TSteps>(TSteps steps)
    {
        double a = this.longMm.Bare;
        double b = this.shortMm.Bare;
        double t = this.thicknessMm.Bare;
        double toe = this.toeMm.Bare;
        return SectionOutline.Walk([(0, a, 0), (0, 0, 0), (b, 0, 0), (b, t, toe), (t, t, this.rootMm.Bare), (t, a, toe)], steps);
    }
}
