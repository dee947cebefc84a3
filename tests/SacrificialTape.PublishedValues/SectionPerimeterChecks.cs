using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Area per metre of sections as printed.</summary>
internal static class SectionPerimeterChecks
{
    // Designation, printed m2/m, digits printed, document.
    private static readonly (string Size, double Printed, double Digit, SourceReference Source)[] Rows =
    [
        ("IPE 100", 0.400, 0.001, References.OpenProfileTable),
        ("IPE 200", 0.768, 0.001, References.OpenProfileTable),
        ("IPE 300", 1.160, 0.001, References.SectionsRecalled),
        ("IPE 600", 2.015, 0.001, References.SectionsRecalled),
        ("HEA 100", 0.56, 0.01, References.WideFlangeTable),
        ("HEA 120", 0.68, 0.01, References.WideFlangeTable),
        ("HEA 140", 0.79, 0.01, References.WideFlangeTable),
        ("HEA 160", 0.91, 0.01, References.WideFlangeTable),
        ("HEA 180", 1.02, 0.01, References.WideFlangeTable),
        ("HEA 200", 1.14, 0.01, References.WideFlangeTable),
        ("HEA 220", 1.26, 0.01, References.WideFlangeTable),
        ("HEA 240", 1.37, 0.01, References.WideFlangeTable),
        ("HEA 260", 1.48, 0.01, References.WideFlangeTable),
        ("HEA 280", 1.60, 0.01, References.WideFlangeTable),
        ("HEA 300", 1.72, 0.01, References.WideFlangeTable),
        ("HEA 320", 1.76, 0.01, References.WideFlangeTable),
        ("HEA 340", 1.79, 0.01, References.WideFlangeTable),
        ("HEA 360", 1.83, 0.01, References.WideFlangeTable),
        ("HEA 400", 1.91, 0.01, References.WideFlangeTable),
        ("HEA 450", 2.01, 0.01, References.WideFlangeTable),
        ("HEA 500", 2.11, 0.01, References.WideFlangeTable),
        ("HEA 550", 2.21, 0.01, References.WideFlangeTable),
        ("HEA 600", 2.31, 0.01, References.WideFlangeTable),
        ("HEB 100", 0.567, 0.001, References.OpenProfileTable),
        ("HEB 200", 1.15, 0.01, References.OpenProfileTable),
        ("HEB 300", 1.732, 0.001, References.SectionsRecalled),
        ("UPN 80", 0.312, 0.001, References.SectionsRecalled),
        ("UPN 100", 0.372, 0.001, References.SectionsRecalled),
        ("UPN 120", 0.434, 0.001, References.SectionsRecalled),
        ("UPN 140", 0.489, 0.001, References.SectionsRecalled),
        ("UPN 160", 0.546, 0.001, References.SectionsRecalled),
        ("UPN 180", 0.611, 0.001, References.SectionsRecalled),
        ("UPN 220", 0.718, 0.001, References.SectionsRecalled),
        ("UPN 240", 0.775, 0.001, References.SectionsRecalled),
        ("UPN 260", 0.834, 0.001, References.SectionsRecalled),
        ("UPN 280", 0.890, 0.001, References.SectionsRecalled),
        ("UPN 300", 0.950, 0.001, References.SectionsRecalled),
        ("L 40 x 40 x 4", 0.155, 0.001, References.AnglesRecalled),
        ("L 60 x 60 x 6", 0.233, 0.001, References.AnglesRecalled),
        ("L 70 x 70 x 7", 0.272, 0.001, References.AnglesRecalled),
        ("L 80 x 80 x 8", 0.311, 0.001, References.AnglesRecalled),
        ("L 120 x 120 x 12", 0.469, 0.001, References.AnglesRecalled),
        ("L 150 x 150 x 15", 0.586, 0.001, References.AnglesRecalled),
        ("L 50 x 50 x 5", 0.194, 0.001, References.AnglesRecalled),
        ("L 100 x 100 x 10", 0.390, 0.001, References.AnglesRecalled),
        ("SHS 100 x 100 x 5 cold", 0.383, 0.001, References.ColdSquareHollow),
        ("SHS 100 x 100 x 6 cold", 0.379, 0.001, References.ColdSquareHollow),
        ("SHS 100 x 100 x 8 cold", 0.366, 0.001, References.ColdSquareHollow),
        ("SHS 100 x 100 x 5 hot", 0.387, 0.001, References.HotSquareHollow),
    ];

    private static readonly string[] OffTheirOutline =
        ["UPN 80", "UPN 120", "UPN 140", "UPN 160", "UPN 180", "UPN 240", "UPN 260", "UPN 280", "UPN 300"];

    // Designation and printed cross-section in cm2: it bears out the dimensions, from which it is worked out here.
    private static readonly (string Size, double Printed, double Digit)[] CrossSections =
    [
        ("IPE 80", 7.64, 0.01), ("IPE 100", 10.3, 0.1), ("IPE 120", 13.2, 0.1), ("IPE 140", 16.4, 0.1), ("IPE 160", 20.1, 0.1),
        ("IPE 180", 23.9, 0.1), ("IPE 200", 28.5, 0.1), ("IPE 220", 33.4, 0.1), ("IPE 240", 39.1, 0.1), ("IPE 270", 45.9, 0.1),
        ("IPE 300", 53.8, 0.1), ("IPE 330", 62.6, 0.1), ("HEB 100", 26.0, 0.1),
    ];

    internal static CheckGroup Group => new(
        "Sections: area per metre as printed",
        "Printed areas of a metre, to the last digit printed. An open data set that carries these series holds several wrong ones (IPE 300 1.167, IPE 600 2.018, HEB 300 1.746, UPN 200 0.727): the last is more than its outline with sharp corners, 0.683. Such rows were not used.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((string size, double printed, double digit, SourceReference source) in Rows)
        {
            PublishedCase one = Case(size, Evidence.From(source), printed, digit / 2, () => SectionSizes.Find(size).OfLength(Meter).Area.SquareMeters);
            yield return OffTheirOutline.Contains(size)
                ? one with { KnownDisagreement = "up to 1.4 % off the outline of its dimensions; dimensions and printed area are both recalled, check before use" }
                : one;
        }

        foreach ((string size, double printed, double digit) in CrossSections)
        {
            yield return Case(size, Evidence.From(Sources.CrossSections), printed, digit / 2, () => SquareCentimeters((ISection)SectionSizes.Find(size).OfLength(Meter))) with
            {
                Id = "section/cross-section-" + size.ToLowerInvariant().Replace(' ', '-'),
                What = "cross-section by the dimensions of " + size,
                Unit = "cm2",
            };
        }

        yield return Case(
            "UPN 200", Evidence.From(References.SectionsRecalled), 0.661, 0.0005,
            static () => SectionSizes.Find("UPN 200").OfLength(Meter).Area.SquareMeters) with
        {
            KnownDisagreement = "walked round with radii 11.5 and 6 mm and a taper of 8 % the outline is 0.6603; radii, taper and printed area are all recalled",
        };
        foreach ((double mm, double printed) in new[] { (114.3, 0.359), (168.3, 0.529), (323.9, 1.018) })
        {
            yield return Case(
                FormattableString.Invariant($"CHS {mm}"), Evidence.From(Sources.HollowSections), printed, 0.0005,
                () => CircularHollowSection.FromOutside(Length.FromMillimeters(mm), Meter).Area.SquareMeters);
        }

        // The rules as recalled; the printed areas of the square sections above bear out 2.0, 2.5 and 1.5.
        foreach ((double wall, double factor, double radius) in new[] { (5.0, 2.0, 10.0), (6, 2, 12), (8, 2.5, 20), (10, 2.5, 25), (12.5, 3, 37.5) })
        {
            yield return Corner("cold", wall, Evidence.From(References.ColdHollowCorners, FormattableString.Invariant($"{factor} T")), radius,
                () => RectangularHollowSection.ColdFormed(Length.FromMillimeters(200), Length.FromMillimeters(200), Length.FromMillimeters(wall), Meter));
        }

        foreach ((double wall, double radius) in new[] { (5.0, 7.5), (12.5, 18.75) })
        {
            yield return Corner("hot", wall, Evidence.From(References.HotHollowCorners, "1.5 T"), radius,
                () => RectangularHollowSection.HotFinished(Length.FromMillimeters(200), Length.FromMillimeters(200), Length.FromMillimeters(wall), Meter));
        }
    }

    private static Length Meter => Length.FromMeters(1);

    private static PublishedCase Case(string size, Evidence evidence, double printed, double tolerance, Func<double> compute) => new()
    {
        Id = "section/" + size.ToLowerInvariant().Replace(' ', '-'),
        What = "area of 1 m of " + size,
        Evidence = evidence,
        Expected = printed,
        Tolerance = tolerance,
        Unit = "m2",
        Compute = compute,
    };

    // Two flanges, the web between them, four root fillets.
    private static double SquareCentimeters(ISection section)
    {
        double web = section.Height.Millimeters - (2 * section.FlangeThickness.Millimeters);
        double root = section.RootRadius.Millimeters;
        return ((2 * section.Width.Millimeters * section.FlangeThickness.Millimeters)
            + (web * section.WebThickness.Millimeters)
            + ((4 - Math.PI) * root * root)) / 100;
    }

    private static PublishedCase Corner(string kind, double wall, Evidence evidence, double radius, Func<RectangularHollowSection> section) => new()
    {
        Id = FormattableString.Invariant($"section/corner-{kind}-{wall}"),
        What = FormattableString.Invariant($"outside corner radius of a {kind} square section, wall {wall} mm"),
        Evidence = evidence,
        Expected = radius,
        Tolerance = 1e-9,
        Unit = "mm",
        Compute = () => section().OutsideCornerRadius.Millimeters,
    };
}
