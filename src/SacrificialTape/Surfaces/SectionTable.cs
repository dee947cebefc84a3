using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Dimensions of sections in mm, each with what it rests on. No perimeter is kept: it is always worked out.</summary>
internal static class SectionTable
{
    private static readonly double TaperDegrees = Math.Atan(0.08) * 180 / Math.PI;

    private static readonly Row[] Table =
    [
        I("IPE 100", 100, 55, 4.1, 5.7, 7, SectionSources.OpenProfiles),
        I("IPE 200", 200, 100, 5.6, 8.5, 12, SectionSources.OpenProfiles),
        I("IPE 300", 300, 150, 7.1, 10.7, 15, SectionSources.Catalogue),
        I("IPE 600", 600, 220, 12, 19, 24, SectionSources.Catalogue),
        I("HEA 100", 96, 100, 5, 8, 12, SectionSources.WideFlange),
        I("HEA 200", 190, 200, 6.5, 10, 18, SectionSources.WideFlange),
        I("HEA 300", 290, 300, 8.5, 14, 27, SectionSources.WideFlange),
        I("HEB 100", 100, 100, 6, 10, 12, SectionSources.OpenProfiles),
        I("HEB 200", 200, 200, 9, 15, 18, SectionSources.OpenProfiles),
        I("HEB 300", 300, 300, 11, 19, 27, SectionSources.Catalogue),
        new("UPN 200", SectionSources.Catalogue, static (basis, length) => new Channel(
            Mm(200), Mm(75), Mm(8.5), Mm(11.5), Mm(11.5), Mm(6), Angle.FromDegrees(TaperDegrees), length, basis)),
        L("L 50 x 50 x 5", 50, 5, 7, 3.5),
        L("L 100 x 100 x 10", 100, 10, 12, 6),
        Square("SHS 100 x 100 x 5 cold", 5, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 6 cold", 6, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 8 cold", 8, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 5 hot", 5, HollowCorners.HotFinished, SectionSources.HotSquare),
    ];

    internal static ReadOnlySpan<Row> Rows => Table;

    private static Row I(string designation, double height, double width, double web, double flange, double root, Basis basis) => new(
        designation, basis, (rests, length) => new ISection(Mm(height), Mm(width), Mm(web), Mm(flange), Mm(root), length, rests));

    private static Row L(string designation, double leg, double thickness, double root, double toe) => new(
        designation, SectionSources.Angles, (rests, length) => new AngleSection(Mm(leg), Mm(leg), Mm(thickness), Mm(root), Mm(toe), length, rests));

    private static Row Square(string designation, double wall, HollowCorners corners, Basis basis) => new(
        designation, basis, (rests, length) => RectangularHollowSection.ByRule(Mm(100), Mm(100), Mm(wall), corners, length, rests));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    internal sealed record Row(string Designation, Basis Basis, Func<Basis, Length, Section> Make);
}
