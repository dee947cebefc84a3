using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Dimensions of sections in mm, each with what it rests on. No perimeter is kept: it is always worked out.</summary>
internal static class SectionTable
{
    private static readonly double TaperDegrees = Math.Atan(0.08) * 180 / Math.PI;

    private static readonly Row[] Table =
    [
        I("IPE 80", 80, 46, 3.8, 5.2, 5, SectionSources.OpenProfiles),
        I("IPE 100", 100, 55, 4.1, 5.7, 7, SectionSources.OpenProfiles),
        I("IPE 120", 120, 64, 4.4, 6.3, 7, SectionSources.OpenProfiles),
        I("IPE 140", 140, 73, 4.7, 6.9, 7, SectionSources.OpenProfiles),
        I("IPE 160", 160, 82, 5, 7.4, 9, SectionSources.OpenProfiles),
        I("IPE 180", 180, 91, 5.3, 8, 9, SectionSources.OpenProfiles),
        I("IPE 200", 200, 100, 5.6, 8.5, 12, SectionSources.OpenProfiles),
        I("IPE 220", 220, 110, 5.9, 9.2, 12, SectionSources.OpenProfiles),
        I("IPE 240", 240, 120, 6.2, 9.8, 15, SectionSources.OpenProfiles),
        I("IPE 270", 270, 135, 6.6, 10.2, 15, SectionSources.OpenProfiles),
        I("IPE 300", 300, 150, 7.1, 10.7, 15, SectionSources.OpenProfiles),
        I("IPE 330", 330, 160, 7.5, 11.5, 18, SectionSources.OpenProfiles),
        I("IPE 360", 360, 170, 8, 12.7, 18, SectionSources.OpenProfiles),
        I("IPE 400", 400, 180, 8.6, 13.5, 21, SectionSources.OpenProfiles),
        I("IPE 450", 450, 190, 9.4, 14.6, 21, SectionSources.OpenProfiles),
        I("IPE 500", 500, 200, 10.2, 16, 21, SectionSources.OpenProfiles),
        I("IPE 550", 550, 210, 11.1, 17.2, 24, SectionSources.OpenProfiles),
        I("IPE 600", 600, 220, 12, 19, 24, SectionSources.OpenProfiles),
        I("HEA 100", 96, 100, 5, 8, 12, SectionSources.WideFlange),
        I("HEA 120", 114, 120, 5, 8, 12, SectionSources.WideFlange),
        I("HEA 140", 133, 140, 5.5, 8.5, 12, SectionSources.WideFlange),
        I("HEA 160", 152, 160, 6, 9, 15, SectionSources.WideFlange),
        I("HEA 180", 171, 180, 6, 9.5, 15, SectionSources.WideFlange),
        I("HEA 200", 190, 200, 6.5, 10, 18, SectionSources.WideFlange),
        I("HEA 220", 210, 220, 7, 11, 18, SectionSources.WideFlange),
        I("HEA 240", 230, 240, 7.5, 12, 21, SectionSources.WideFlange),
        I("HEA 260", 250, 260, 7.5, 12.5, 24, SectionSources.WideFlange),
        I("HEA 280", 270, 280, 8, 13, 24, SectionSources.WideFlange),
        I("HEA 300", 290, 300, 8.5, 14, 27, SectionSources.WideFlange),
        I("HEA 320", 310, 300, 9, 15.5, 27, SectionSources.WideFlange),
        I("HEA 340", 330, 300, 9.5, 16.5, 27, SectionSources.WideFlange),
        I("HEA 360", 350, 300, 10, 17.5, 27, SectionSources.WideFlange),
        I("HEA 400", 390, 300, 11, 19, 27, SectionSources.WideFlange),
        I("HEA 450", 440, 300, 11.5, 21, 27, SectionSources.WideFlange),
        I("HEA 500", 490, 300, 12, 23, 27, SectionSources.WideFlange),
        I("HEA 550", 540, 300, 12.5, 24, 27, SectionSources.WideFlange),
        I("HEA 600", 590, 300, 13, 25, 27, SectionSources.WideFlange),
        I("HEB 100", 100, 100, 6, 10, 12, SectionSources.OpenProfiles),
        I("HEB 120", 120, 120, 6.5, 11, 12, SectionSources.OpenProfiles),
        I("HEB 140", 140, 140, 7, 12, 12, SectionSources.OpenProfiles),
        I("HEB 160", 160, 160, 8, 13, 15, SectionSources.OpenProfiles),
        I("HEB 180", 180, 180, 8.5, 14, 15, SectionSources.OpenProfiles),
        I("HEB 200", 200, 200, 9, 15, 18, SectionSources.OpenProfiles),
        I("HEB 220", 220, 220, 9.5, 16, 18, SectionSources.OpenProfiles),
        I("HEB 240", 240, 240, 10, 17, 21, SectionSources.OpenProfiles),
        I("HEB 260", 260, 260, 10, 17.5, 24, SectionSources.OpenProfiles),
        I("HEB 280", 280, 280, 10.5, 18, 24, SectionSources.OpenProfiles),
        I("HEB 300", 300, 300, 11, 19, 27, SectionSources.OpenProfiles),
        I("HEB 320", 320, 300, 11.5, 20.5, 27, SectionSources.OpenProfiles),
        I("HEB 340", 340, 300, 12, 21.5, 27, SectionSources.OpenProfiles),
        I("HEB 360", 360, 300, 12.5, 22.5, 27, SectionSources.OpenProfiles),
        I("HEB 400", 400, 300, 13.5, 24, 27, SectionSources.OpenProfiles),
        I("HEB 450", 450, 300, 14, 26, 27, SectionSources.OpenProfiles),
        I("HEB 500", 500, 300, 14.5, 28, 27, SectionSources.OpenProfiles),
        I("HEB 550", 550, 300, 15, 29, 27, SectionSources.OpenProfiles),
        I("HEB 600", 600, 300, 15.5, 30, 27, SectionSources.OpenProfiles),
        U("UPN 80", 80, 45, 6, 8, 4),
        U("UPN 100", 100, 50, 6, 8.5, 4.5),
        U("UPN 120", 120, 55, 7, 9, 4.5),
        U("UPN 140", 140, 60, 7, 10, 5),
        U("UPN 160", 160, 65, 7.5, 10.5, 5.5),
        U("UPN 180", 180, 70, 8, 11, 5.5),
        U("UPN 200", 200, 75, 8.5, 11.5, 6),
        U("UPN 220", 220, 80, 9, 12.5, 6.5),
        U("UPN 240", 240, 85, 9.5, 13, 6.5),
        U("UPN 260", 260, 90, 10, 14, 7),
        U("UPN 280", 280, 95, 10, 15, 7.5),
        U("UPN 300", 300, 100, 10, 16, 8),
        L("L 40 x 40 x 4", 40, 4, 6, 3),
        L("L 50 x 50 x 5", 50, 5, 7, 3.5),
        L("L 60 x 60 x 6", 60, 6, 8, 4),
        L("L 70 x 70 x 7", 70, 7, 9, 4.5),
        L("L 80 x 80 x 8", 80, 8, 10, 5),
        L("L 100 x 100 x 10", 100, 10, 12, 6),
        L("L 120 x 120 x 12", 120, 12, 13, 6.5),
        L("L 150 x 150 x 15", 150, 15, 16, 8),
        Square("SHS 100 x 100 x 5 cold", 5, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 6 cold", 6, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 8 cold", 8, HollowCorners.ColdFormed, SectionSources.ColdSquare),
        Square("SHS 100 x 100 x 5 hot", 5, HollowCorners.HotFinished, SectionSources.HotSquare),
    ];

    internal static ReadOnlySpan<Row> Rows => Table;

    private static Row I(string designation, double height, double width, double web, double flange, double root, Basis basis) => new(
        designation, basis, (rests, length) => new ISection(Mm(height), Mm(width), Mm(web), Mm(flange), Mm(root), length, rests));

    // The root radius of the series is the flange's thickness.
    private static Row U(string designation, double height, double width, double web, double flange, double toe) => new(
        designation, SectionSources.Catalogue, (rests, length) => new Channel(
            Mm(height), Mm(width), Mm(web), Mm(flange), Mm(flange), Mm(toe), Angle.FromDegrees(TaperDegrees), length, rests));

    private static Row L(string designation, double leg, double thickness, double root, double toe) => new(
        designation, SectionSources.Angles, (rests, length) => new AngleSection(Mm(leg), Mm(leg), Mm(thickness), Mm(root), Mm(toe), length, rests));

    private static Row Square(string designation, double wall, HollowCorners corners, Basis basis) => new(
        designation, basis, (rests, length) => RectangularHollowSection.ByRule(Mm(100), Mm(100), Mm(wall), corners, length, rests));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    internal sealed record Row(string Designation, Basis Basis, Func<Basis, Length, Section> Make);
}
