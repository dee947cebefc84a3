using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Area of reducers.</summary>
internal static class ReducerAreaChecks
{
    internal static CheckGroup Group => new(
        "Area of reducers",
        "The frustum by textbook arithmetic; the reducer with one straight side as a wall of flat triangles, made finer until it stands still.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        // Radii 0.5 and 0.25 m, height 0.5 m: slant sqrt(0.25 + 0.0625) = sqrt(5) / 4, so area 3 pi sqrt(5) / 16.
        yield return Case(
            "concentric-textbook", "frustum, radii 0.5 and 0.25 m, height 0.5 m", "pi (r1 + r2) sqrt(h^2 + (r1 - r2)^2) = 3 pi sqrt(5) / 16 m2",
            3 * Math.PI * Math.Sqrt(5) / 16, 1e-12, static () => new ConcentricReducer(Mm(1000), Mm(500), Mm(500)));

        // Difference of the unrolled sectors: cones over the full slants L = s D / (D - d) and L - s.
        double difference = (168.3 - 114.3) / 2;
        double slant = Math.Sqrt((140 * 140) + (difference * difference));
        double full = slant * 168.3 / (168.3 - 114.3);
        yield return Case(
            "concentric-sectors", "NPS 6 to 4, 140 mm long", "unrolled: sector of the whole cone less that of its tip, angle 180 deg x D / slant",
            168.3 / 2 / full * Math.PI * ((full * full) - ((full - slant) * (full - slant))) / 1e6, 1e-12,
            static () => new ConcentricReducer(Mm(168.3), Mm(114.3), Mm(140)));

        foreach ((double large, double small, double length) in new[] { (168.3, 114.3, 140.0), (610, 406.4, 508), (1000, 100, 50), (323.8, 323.8, 203) })
        {
            yield return Case(
                FormattableString.Invariant($"eccentric-{large}-{small}"),
                FormattableString.Invariant($"one side straight, {large} to {small} mm, {length} mm long"),
                "flat triangles between 2000, 4000 and 8000 points on each rim, extrapolated",
                FlatTriangles(large / 2, small / 2, length) / 1e6, 1e-10,
                () => new EccentricReducer(Mm(large), Mm(small), Mm(length)));
        }
    }

    private static PublishedCase Case(string id, string what, string how, double expected, double tolerance, Func<Surface> surface) => new()
    {
        Id = "reducer/" + id,
        What = what,
        Evidence = Evidence.FirstPrinciples(how),
        Expected = expected,
        Tolerance = tolerance,
        Unit = "m2",
        Compute = () => surface().Area.SquareMeters,
    };

    // The error of flat facets falls with the square of their width: two steps of Richardson.
    private static double FlatTriangles(double lower, double upper, double height)
    {
        double coarse = Wall(lower, upper, height, 2000);
        double middle = Wall(lower, upper, height, 4000);
        double fine = Wall(lower, upper, height, 8000);
        double once = ((4 * middle) - coarse) / 3;
        double twice = ((4 * fine) - middle) / 3;
        return ((16 * twice) - once) / 15;
    }

    // By Heron's formula from the sides, so that corners are all that goes in.
    private static double Wall(double lower, double upper, double height, int points)
    {
        double area = 0;
        for (int i = 0; i < points; i++)
        {
            double[] a = Corner(lower, 0, 0, i, points);
            double[] b = Corner(lower, 0, 0, i + 1, points);
            double[] c = Corner(upper, lower - upper, height, i, points);
            double[] d = Corner(upper, lower - upper, height, i + 1, points);
            area += Triangle(a, b, c) + Triangle(b, d, c);
        }

        return area;
    }

    private static double[] Corner(double radius, double offset, double height, int at, int points)
    {
        (double sine, double cosine) = Math.SinCos(2 * Math.PI * at / points);
        return [offset + (radius * cosine), radius * sine, height];
    }

    private static double Triangle(double[] a, double[] b, double[] c)
    {
        double[] sides = [Distance(a, b), Distance(b, c), Distance(c, a)];
        Array.Sort(sides, static (one, other) => other.CompareTo(one));
        (double x, double y, double z) = (sides[0], sides[1], sides[2]);

        // Kahan's order of operations: stable for needles.
        return Math.Sqrt((x + (y + z)) * (z - (x - y)) * (z + (x - y)) * (x + (y - z))) / 4;
    }

    private static double Distance(double[] a, double[] b) =>
        Math.Sqrt(Math.Pow(a[0] - b[0], 2) + Math.Pow(a[1] - b[1], 2) + Math.Pow(a[2] - b[2], 2));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
