using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Area of flat and corrugated panels.</summary>
internal static class PanelAreaChecks
{
    internal static CheckGroup Group => new(
        "Panels, openings and corrugated sheet",
        "Boxes of ISO 668 freight containers as six plain panels, from outside dimensions in whole mm; panels with openings in place by counting points of a grid; a corrugated sheet walked step by step along its profile.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        // Containers 1CC, 1AA, 1AAA: mm^2 in whole numbers, so that nothing of the sum is the library's.
        foreach ((string name, long length, long width, long height) in new[] { ("1CC", 6058L, 2438L, 2591L), ("1AA", 12_192, 2438, 2591), ("1AAA", 12_192, 2438, 2896) })
        {
            yield return new PublishedCase
            {
                Id = "panel/box-" + name.ToLowerInvariant(),
                What = $"plain box of a container {name}, all six sides",
                Evidence = Evidence.FirstPrinciples("2 (l w + l h + w h) in whole mm2, then divided", Sources.Containers),
                Expected = 2 * ((length * width) + (length * height) + (width * height)) / 1e6,
                Tolerance = 1e-9,
                Unit = "m2",
                Compute = () => 2 * (Flat(length, width) + Flat(length, height) + Flat(width, height)),
            };
            yield return new PublishedCase
            {
                Id = "panel/walls-" + name.ToLowerInvariant(),
                What = $"plain walls of a container {name}",
                Evidence = Evidence.FirstPrinciples("2 h (l + w) in whole mm2, then divided", Sources.Containers),
                Expected = 2 * height * (length + width) / 1e6,
                Tolerance = 1e-9,
                Unit = "m2",
                Compute = () => 2 * (Flat(length, height) + Flat(width, height)),
            };
        }

        PanelOpening door = PanelOpening.Rectangular(Mm(300), Mm(500)).At(Mm(-250), Mm(-100));
        PanelOpening port = PanelOpening.Circular(Mm(260)).At(Mm(300), Mm(120));
        yield return Counted(
            "rectangle", "panel 1200 x 900 mm, rectangle and circle out", 1200, 900,
            static (x, y) => !InDoor(x, y) && !InPort(x, y),
            () => new RectangularPanel(Mm(1200), Mm(900), [door, port]));
        yield return Counted(
            "disc", "disc 1200 mm, rectangle and circle out", 1200, 1200,
            static (x, y) => (x * x) + (y * y) < 600 * 600 && !InDoor(x, y) && !InPort(x, y),
            () => new CircularPanel(Mm(1200), [door, port]));
        yield return Counted(
            "ring", "ring 1200 by 360 mm, circle out", 1200, 1200,
            static (x, y) => (x * x) + (y * y) is < 600 * 600 and > 180 * 180 && !InPort(x, y),
            () => new AnnularPanel(Mm(1200), Mm(360), [port]));

        foreach ((double pitch, double crown, double valley, double depth) in new[] { (278.0, 72.0, 70.0, 36.0), (200, 20, 160, 45), (76, 0, 0, 18) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"panel/corrugation-{pitch}"),
                What = FormattableString.Invariant($"developed width of a corrugation {pitch} mm wide, crown {crown}, valley {valley}, {depth} mm deep"),
                Evidence = Evidence.FirstPrinciples("walked in 400000 steps across the profile, the length of each step added"),
                Expected = Walked(pitch, crown, valley, depth),
                Tolerance = 0.002,
                Unit = "mm",
                Compute = () => new CorrugatedPanel(Mm(pitch), Mm(crown), Mm(valley), Mm(depth), 1, Mm(1000)).DevelopedPitch.Millimeters,
            };
        }
    }

    private static PublishedCase Counted(string id, string what, double width, double height, Func<double, double, bool> steel, Func<Panel> panel) => new()
    {
        Id = "panel/" + id,
        What = what,
        Evidence = Evidence.FirstPrinciples("points of a grid of 0.5 mm that lie on the panel and in no opening"),
        Expected = Grid(width, height, steel),
        Tolerance = 3e-5,
        Unit = "m2",
        Compute = () => panel().Area.SquareMeters,
    };

    private static bool InDoor(double x, double y) => x is > -400 and < -100 && y is > -350 and < 150;

    private static bool InPort(double x, double y) => ((x - 300) * (x - 300)) + ((y - 120) * (y - 120)) < 130 * 130;

    private static double Grid(double width, double height, Func<double, double, bool> steel)
    {
        const double Cell = 0.5;
        long counted = 0;
        for (double x = (Cell - width) / 2; x < width / 2; x += Cell)
        {
            for (double y = (Cell - height) / 2; y < height / 2; y += Cell)
            {
                counted += steel(x, y) ? 1 : 0;
            }
        }

        return counted * Cell * Cell / 1e6;
    }

    // Height of the profile at every station: up the web, along the crown, down the web, along the valley.
    private static double Walked(double pitch, double crown, double valley, double depth)
    {
        const int Steps = 400_000;
        double run = (pitch - crown - valley) / 2;
        double Height(double x) => x < run ? depth * x / run
            : x < run + crown ? depth
            : x < (2 * run) + crown ? depth * ((2 * run) + crown - x) / run
            : 0;
        double length = 0;
        for (int i = 0; i < Steps; i++)
        {
            double rise = Height(pitch * (i + 1) / Steps) - Height(pitch * i / Steps);
            length += Math.Sqrt((pitch / Steps * (pitch / Steps)) + (rise * rise));
        }

        return length;
    }

    private static double Flat(double width, double height) => new RectangularPanel(Mm(width), Mm(height)).Area.SquareMeters;

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
