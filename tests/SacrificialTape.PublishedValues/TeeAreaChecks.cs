using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Area of tees.</summary>
internal static class TeeAreaChecks
{
    internal static CheckGroup Group => new(
        "Area of tees",
        "Two equal cylinders that cross enclose a vault whose surface is 16 R^2, as Archimedes and Zu Chongzhi knew; from it the equal tee follows in closed form. Unequal ones are counted in narrow strips.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double d, double c, double m) in new[] { (114.3, 105.0, 105.0), (1219, 889, 838) })
        {
            // The vault has four faces of 4 R^2. The branch takes one face off the run, and loses half of each of two others.
            double expected = ((2 * Math.PI * d * c) - (d * d) + (Math.PI * d * m) - (d * d)) / 1e6;
            yield return Case(FormattableString.Invariant($"equal-{d}"), d, d, c, m, "pi D (2 C + M) - 2 D^2, from the vault of two equal cylinders", expected, 1e-12);
        }

        foreach ((double run, double branch, double c, double m) in new[] { (168.3, 114.3, 143.0, 130.0), (323.8, 219.1, 254, 229), (2000, 60.3, 1000, 1150) })
        {
            yield return Case(
                FormattableString.Invariant($"reducing-{run}-{branch}"), run, branch, c, m,
                "midpoints of 200000 narrow strips round the branch and along the run, arcs by arcsine",
                Strips(run / 2, branch / 2, c, m) / 1e6, 1e-9);
        }
    }

    private static PublishedCase Case(string id, double run, double branch, double c, double m, string how, double expected, double tolerance) => new()
    {
        Id = "tee/" + id,
        What = FormattableString.Invariant($"tee {run} x {branch} mm, C {c} mm, M {m} mm"),
        Evidence = Evidence.FirstPrinciples(how),
        Expected = expected,
        Tolerance = tolerance,
        Unit = "m2",
        Compute = () => new Tee(
            Length.FromMillimeters(run), Length.FromMillimeters(branch), Length.FromMillimeters(c), Length.FromMillimeters(m)).Area.SquareMeters,
    };

    // Slices of the branch along the run: each takes an arc 2 R asin(y / R) off the run. Heights round the branch: M less
    // the run's surface above its axis.
    private static double Strips(double run, double branch, double c, double m)
    {
        const int Count = 200_000;
        double hole = 0;
        double wall = 0;
        for (int i = 0; i < Count; i++)
        {
            double turn = Math.PI * (i + 0.5) / Count;
            double y = branch * Math.Sin(turn);
            hole += 2 * run * Math.Asin(y / run) * branch * Math.Sin(turn) * Math.PI / Count;
            wall += 2 * (m - Math.Sqrt((run * run) - (y * y))) * branch * Math.PI / Count;
        }

        return (4 * Math.PI * run * c) - hole + wall;
    }
}
