using SacrificialTape.Inspection;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Oval patches by a search that knows nothing of the library's equation.</summary>
internal static class OvalPatchChecks
{
    internal static CheckGroup Group => new(
        "Oval patches round cut-outs",
        "Common practice asks for an oval at least 5 mm larger all round. The least area that does so is searched for here over all lengths, each with the least width for which no point of the edge, walked in small steps, comes nearer than the margin; nothing of the library's way is used.",
        [
            Area(80, 30, 5), Area(200, 20, 5), Area(50, 50, 10), Area(30, 120, 10),
            new PublishedCase
            {
                Id = "oval-patch/rectangle-without-margin",
                What = "round a rectangle of 80 mm without a margin: length",
                Evidence = Evidence.FirstPrinciples("the ellipse of least area round a rectangle has its sides times the root of two: 80 x 1.41421"),
                Expected = 113.137,
                Tolerance = 0.0005,
                Unit = "mm",
                Compute = () => OvalPatch.Smallest(CutOut.Rectangle(Length.FromMillimeters(80), Length.FromMillimeters(30)), Length.Zero).Length.Millimeters,
            },
        ]);

    private static PublishedCase Area(double length, double width, double margin) => new()
    {
        Id = FormattableString.Invariant($"oval-patch/{length}-{width}-{margin}"),
        What = FormattableString.Invariant($"least area over a rectangle {length} x {width} mm, margin {margin} mm"),
        Evidence = Evidence.FirstPrinciples("search over length and width, edge walked in small steps"),
        Expected = Math.Round(Searched(length / 2, width / 2, margin), 1),
        Tolerance = 0.0001 * Math.PI * (length + margin) * (width + margin),
        Unit = "mm2",
        Compute = () => OvalPatch.Smallest(
            CutOut.Rectangle(Length.FromMillimeters(length), Length.FromMillimeters(width)), Length.FromMillimeters(margin)).Area.SquareMillimeters,
    };

    private static double Searched(double p, double q, double margin)
    {
        double best = double.PositiveInfinity;
        for (double a = p + margin + 0.1; a < (2 * p) + (3 * margin) + q; a += 0.5)
        {
            if (Clear(a, 10 * (p + q + margin), p, q) < margin)
            {
                continue;
            }

            (double low, double high) = (q + margin, 10 * (p + q + margin));
            for (int i = 0; i < 30; i++)
            {
                double b = (low + high) / 2;
                (low, high) = Clear(a, b, p, q) >= margin ? (low, b) : (b, high);
            }

            best = Math.Min(best, Math.PI * a * high);
        }

        return best;
    }

    private static double Clear(double a, double b, double p, double q)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i <= 2000; i++)
        {
            double t = Math.PI / 2 * i / 2000;
            double x = a * Math.Cos(t);
            double y = b * Math.Sin(t);
            if (x < p && y < q)
            {
                return -1;
            }

            double dx = Math.Max(0, x - p);
            double dy = Math.Max(0, y - q);
            least = Math.Min(least, Math.Sqrt((dx * dx) + (dy * dy)));
        }

        return least;
    }
}
