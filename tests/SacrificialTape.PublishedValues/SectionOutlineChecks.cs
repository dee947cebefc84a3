using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Perimeters walked round the outline.</summary>
internal static class SectionOutlineChecks
{
    internal static CheckGroup Group => new(
        "Sections: outlines walked",
        "Every outline as a polygon with its wall and flange thicknesses, each corner with a radius replaced by 4000 short chords of the circle that touches both faces, all pieces added.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        yield return Case("i", "I section 300 x 150 x 7.1 x 10.7, r 15", I(300, 150, 7.1, 10.7, 15), static () => new ISection(Mm(300), Mm(150), Mm(7.1), Mm(10.7), Mm(15), Mm(1000)));
        yield return Case("i-largest-radius", "I section 100 x 100 x 10 x 10, r 40", I(100, 100, 10, 10, 40), static () => new ISection(Mm(100), Mm(100), Mm(10), Mm(10), Mm(40), Mm(1000)));
        yield return Case("channel-tapered", "channel 200 x 75 x 8.5 x 11.5, r 11.5 and 6, taper 8 %", C(200, 75, 8.5, 11.5, 11.5, 6, 0.08), static () => SectionSizes.Find("UPN 200").OfLength(Mm(1000)));
        yield return Case(
            "channel-steep", "channel 120 x 60 x 6 x 14, r 9 and 3, taper 10 degrees", C(120, 60, 6, 14, 9, 3, Math.Tan(Math.PI / 18)),
            static () => Channel.WithTaperedFlanges(Mm(120), Mm(60), Mm(6), Mm(14), Mm(9), Mm(3), Angle.FromDegrees(10), Mm(1000)));
        yield return Case(
            "channel-parallel", "channel 200 x 80 x 6 x 11, r 13", C(200, 80, 6, 11, 13, 0, 0),
            static () => Channel.WithParallelFlanges(Mm(200), Mm(80), Mm(6), Mm(11), Mm(13), Mm(1000)));
        yield return Case("angle", "angle 100 x 100 x 10, r 12 and 6", L(100, 100, 10, 12, 6), static () => SectionSizes.Find("L 100 x 100 x 10").OfLength(Mm(1000)));
        yield return Case("angle-unequal", "angle 150 x 75 x 9, r 12 and 6", L(150, 75, 9, 12, 6), static () => new AngleSection(Mm(150), Mm(75), Mm(9), Mm(12), Mm(6), Mm(1000)));
        yield return Case(
            "tee", "T section 100 x 150 x 7.1 x 10.7, r 15",
            [(-75, 100, 0), (75, 100, 0), (75, 89.3, 0), (3.55, 89.3, 15), (3.55, 0, 0), (-3.55, 0, 0), (-3.55, 89.3, 15), (-75, 89.3, 0)],
            static () => new TeeSection(Mm(100), Mm(150), Mm(7.1), Mm(10.7), Mm(15), Mm(1000)));
        yield return Case(
            "hollow", "hollow section 200 x 100 x 8, corners 20", Box(200, 100, 20),
            static () => RectangularHollowSection.ColdFormed(Mm(200), Mm(100), Mm(8), Mm(1000)));
        yield return Case(
            "hollow-inside", "hollow section 184 x 84 inside, wall 8, inside corners 12", Box(200, 100, 20),
            static () => RectangularHollowSection.FromInside(Mm(184), Mm(84), Mm(8), Mm(12), Mm(1000)));
        yield return Case(
            "round-inside", "circular hollow section 100 inside, wall 10, walked as a box that is all corner", Box(120, 120, 60),
            static () => CircularHollowSection.FromInside(Mm(100), Mm(10), Mm(1000)));
    }

    private static PublishedCase Case(string id, string what, (double X, double Y, double Radius)[] outline, Func<Section> section) => new()
    {
        Id = "outline/" + id,
        What = "perimeter of " + what,
        Evidence = Evidence.FirstPrinciples("polygon with corners in 4000 chords, walked round"),
        Expected = Walked(outline),
        Tolerance = 1e-4,
        Unit = "mm",
        Compute = () => section().Perimeter.Millimeters,
    };

    private static (double X, double Y, double Radius)[] I(double h, double b, double w, double f, double r) =>
    [
        (-b / 2, 0, 0), (b / 2, 0, 0), (b / 2, f, 0), (w / 2, f, r), (w / 2, h - f, r), (b / 2, h - f, 0),
        (b / 2, h, 0), (-b / 2, h, 0), (-b / 2, h - f, 0), (-w / 2, h - f, r), (-w / 2, f, r), (-b / 2, f, 0),
    ];

    // The flange is f thick at half its width.
    private static (double X, double Y, double Radius)[] C(double h, double b, double w, double f, double root, double toe, double slope)
    {
        double thin = f - (slope * b / 2);
        double thick = f + (slope * ((b / 2) - w));
        return [(0, 0, 0), (b, 0, 0), (b, thin, toe), (w, thick, root), (w, h - thick, root), (b, h - thin, toe), (b, h, 0), (0, h, 0)];
    }

    private static (double X, double Y, double Radius)[] L(double a, double b, double t, double root, double toe) =>
        [(0, 0, 0), (b, 0, 0), (b, t, toe), (t, t, root), (t, a, toe), (0, a, 0)];

    private static (double X, double Y, double Radius)[] Box(double h, double b, double r) => [(0, 0, r), (b, 0, r), (b, h, r), (0, h, r)];

    // Where the circle touches, and its middle, from unit vectors along both faces; no formula for what a corner saves.
    private static double Walked((double X, double Y, double Radius)[] outline)
    {
        const int Chords = 4000;
        var path = new List<(double X, double Y)>();
        for (int i = 0; i < outline.Length; i++)
        {
            (double x, double y, double r) = outline[i];
            if (r == 0)
            {
                path.Add((x, y));
                continue;
            }

            (double bx, double by) = Unit(outline[(i + outline.Length - 1) % outline.Length], outline[i]);
            (double fx, double fy) = Unit(outline[(i + 1) % outline.Length], outline[i]);
            double half = Math.Acos((bx * fx) + (by * fy)) / 2;
            (double mx, double my) = (bx + fx, by + fy);
            double toMiddle = r / Math.Sin(half) / Math.Sqrt((mx * mx) + (my * my));
            double cx = x + (mx * toMiddle);
            double cy = y + (my * toMiddle);
            double reach = r / Math.Tan(half);
            double from = Math.Atan2(y + (by * reach) - cy, x + (bx * reach) - cx);
            double turn = Math.IEEERemainder(Math.Atan2(y + (fy * reach) - cy, x + (fx * reach) - cx) - from, 2 * Math.PI);
            for (int k = 0; k <= Chords; k++)
            {
                double angle = from + (turn * k / Chords);
                path.Add((cx + (r * Math.Cos(angle)), cy + (r * Math.Sin(angle))));
            }
        }

        double length = 0;
        for (int i = 0; i < path.Count; i++)
        {
            (double x, double y) = path[(i + 1) % path.Count];
            length += Math.Sqrt(((x - path[i].X) * (x - path[i].X)) + ((y - path[i].Y) * (y - path[i].Y)));
        }

        return length;
    }

    private static (double X, double Y) Unit((double X, double Y, double Radius) to, (double X, double Y, double Radius) from)
    {
        double length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
