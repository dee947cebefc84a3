using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Sheet edges, rims, straps and columns.</summary>
internal static class EdgeAndSupportChecks
{
    internal static CheckGroup Group => new(
        "Sheet edges, rims, straps and columns",
        "Bands by counting points of a grid that lie on the sheet within reach of its edge; straps by chords along both faces; a column's wall in narrow rings.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        // Front 40, back 25, sheet 8 mm. The band on each face is counted, the thickness added by hand.
        yield return Case(
            "edge-round-rectangle", "edge of a sheet 600 x 400 x 8 mm, reach 40 and 25 mm",
            (Band(600, 400, static (x, y, a) => Math.Min(300 - Math.Abs(x), 200 - Math.Abs(y)) < a, 40)
                + Band(600, 400, static (x, y, a) => Math.Min(300 - Math.Abs(x), 200 - Math.Abs(y)) < a, 25)
                + (2000 * 8)) / 1e6,
            1e-6, "points of a grid of 0.5 mm nearer to an edge than the reach",
            static () => SheetEdge.AroundRectangle(Mm(600), Mm(400), Mm(8), Mm(40), Mm(25)));

        // An L of 600 x 400 with a notch of 200 x 150 at one corner: five outside corners and an inside one. There the band
        // is square: it is within reach of both sides of the notch, sides carried on.
        yield return Case(
            "edge-notched", "edge of an L-shaped sheet 600 x 400 x 8 mm, notch 200 x 150 mm, reach 40 and 25 mm",
            (Band(600, 400, InNotchedBand, 40) + Band(600, 400, InNotchedBand, 25) + (2000 * 8)) / 1e6,
            1e-6, "points of a grid of 0.5 mm within the reach of the L's sides",
            static () => new SheetEdge(Mm(2000), Mm(8), Mm(40), Mm(25), 5, 1));
        yield return Case(
            "window", "rim of an opening 500 x 300 mm in a sheet of 8 mm, reach 40 and 25 mm",
            (Band(600, 400, static (x, y, a) => InFrame(x, y, a), 40) + Band(600, 400, static (x, y, a) => InFrame(x, y, a), 25) + (1600 * 8)) / 1e6,
            1e-6, "points of a grid of 0.5 mm outside the opening and inside it grown by the reach",
            static () => WindowOpening.Rectangular(Mm(500), Mm(300), Mm(8), Mm(40), Mm(25)));
        yield return Case(
            "porthole", "rim of a round opening 300 mm in a sheet of 8 mm, reach 40 and 25 mm",
            (Band(400, 400, static (x, y, a) => InRing(x, y, a), 40) + Band(400, 400, static (x, y, a) => InRing(x, y, a), 25) + (300 * Math.PI * 8)) / 1e6,
            5e-5, "points of a grid of 0.5 mm (good to some 20 mm2 on circles of this size) outside the circle and inside it grown by the reach",
            static () => WindowOpening.Circular(Mm(300), Mm(8), Mm(40), Mm(25)));

        yield return Case(
            "strap", "strap 50 x 6 mm, 200 degrees round pipe 168.3 mm, straight ends 120 mm, both faces",
            50 * (Chords(168.3 / 2, 200) + Chords((168.3 / 2) + 6, 200) + 240) / 1e6,
            1e-9, "100000 chords along each face and the ends",
            static () => new PipeStrap(Mm(168.3), Mm(50), Mm(6), Angle.FromDegrees(200), Mm(120), StrapFaces.Both));
        yield return Case(
            "column", "column 400 to 250 mm, 3 m high, plate 700 x 600 x 25 mm with 4 holes of 28 mm",
            (Rings(400, 250, 3000) + (700 * 600) - (Math.PI * 40_000) - (4 * Math.PI * 196) + (2600 * 25)) / 1e6,
            1e-9, "wall in 100000 rings, each as wide as it is long down the slope; plate by hand",
            static () => new TaperedColumn(Mm(400), Mm(250), Mm(3000), new BasePlate(Mm(700), Mm(600), Mm(25), 4, Mm(28))));
    }

    private static bool InNotchedBand(double x, double y, double reach)
    {
        // The notch takes x > 100 and y > 50.
        bool sheet = !(x > 100 && y > 50);
        bool outer = Math.Min(300 - Math.Abs(x), 200 - Math.Abs(y)) < reach;
        bool notch = x > 100 - reach && y > 50 - reach;
        return sheet && (outer || notch);
    }

    private static bool InFrame(double x, double y, double reach) =>
        !(Math.Abs(x) < 250 && Math.Abs(y) < 150) && Math.Abs(x) < 250 + reach && Math.Abs(y) < 150 + reach;

    private static bool InRing(double x, double y, double reach) =>
        (x * x) + (y * y) >= 150 * 150 && (x * x) + (y * y) < (150 + reach) * (150 + reach);

    private static double Band(double width, double height, Func<double, double, double, bool> covered, double reach)
    {
        const double Cell = 0.5;
        long counted = 0;
        for (double x = (Cell - width) / 2; x < width / 2; x += Cell)
        {
            for (double y = (Cell - height) / 2; y < height / 2; y += Cell)
            {
                counted += covered(x, y, reach) ? 1 : 0;
            }
        }

        return counted * Cell * Cell;
    }

    private static double Chords(double radius, double degrees)
    {
        const int Count = 100_000;
        return Count * 2 * radius * Math.Sin(degrees * Math.PI / 360 / Count);
    }

    private static double Rings(double foot, double top, double height)
    {
        const int Count = 100_000;
        double area = 0;
        for (int i = 0; i < Count; i++)
        {
            double low = foot + ((top - foot) * i / Count);
            double high = foot + ((top - foot) * (i + 1) / Count);
            area += Math.PI * (low + high) / 2 * Math.Sqrt((height / Count * (height / Count)) + ((low - high) * (low - high) / 4));
        }

        return area;
    }

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string how, Func<Surface> surface) => new()
    {
        Id = "edge/" + id,
        What = what,
        Evidence = Evidence.FirstPrinciples(how),
        Expected = expected,
        Tolerance = tolerance,
        Unit = "m2",
        Compute = () => surface().Area.SquareMeters,
    };

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
