using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A circular hollow section, covered on its outside.</summary>
/// <remarks>
/// Diameters: 1 mm to 100 m. Lays take it as a pipe: see <see cref="Outside"/>. This type is for lists of sections, and for
/// those who hold an inside diameter.
/// </remarks>
public sealed record CircularHollowSection : Section
{
    private readonly StoredNumber diameterMm;

    private CircularHollowSection(double diameterMm, Length length)
        : base(length, null) => this.diameterMm = new StoredNumber(diameterMm);

    /// <summary>Diameter of the outside.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <summary>Its outside as a pipe, on which spirals, rings and strips along are laid.</summary>
    public StraightPipe Outside => new(this.OutsideDiameter, this.Length);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture, $"hollow section {this.diameterMm.Bare:0.##} mm in diameter outside");

    /// <summary>A section by its outside diameter.</summary>
    /// <param name="outsideDiameter">Diameter of the outside.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CircularHollowSection FromOutside(Length outsideDiameter, Length length) =>
        new(FittingRanges.DiameterMm(outsideDiameter, nameof(outsideDiameter)), length);

    /// <summary>A section by its inside diameter and wall; the outside is worked out.</summary>
    /// <param name="insideDiameter">Diameter of the inside.</param>
    /// <param name="wallThickness">Of the wall, more than 0, at most 1 m.</param>
    /// <param name="length">Along the section.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CircularHollowSection FromInside(Length insideDiameter, Length wallThickness, Length length) => new(
        FittingRanges.DiameterMm(insideDiameter, nameof(insideDiameter))
            + (2 * FittingRanges.ThicknessMm(wallThickness, nameof(wallThickness))),
        length);

    internal override double PerimeterMm<TSteps>(TSteps steps) => SectionKernel.CircularHollowMm(this.diameterMm.Bare, steps);

    internal override SectionOutline? Outline<TSteps>(TSteps steps) => null;
}
