using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Washers cut from strip.</summary>
internal static class WasherChecks
{
    internal static CheckGroup Group => new(
        "Washers from strip",
        "Circles placed one by one, each as far along the strip as those already placed leave it, rows even across the strip: all in step, or every other row second. Every number of rows is tried; the most that fits is expected.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double washer, double gap, double width, double length) in new[]
        {
            (50.0, 0.0, 50.0, 1000.0), (50, 0, 75, 1000), (50, 0, 93.4, 1000), (50, 0, 100, 1000), (50, 2, 100, 1000), (30, 0, 100, 1000),
            (30, 1.5, 100, 1000), (24, 0, 100, 1000), (40, 0, 150, 1000), (37, 1, 150, 2500), (60, 3, 100, 5000), (18, 1, 50, 1000), (20, 0, 20.5, 333),
        })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"washers/{washer}-{gap}-{width}-{length}"),
                What = FormattableString.Invariant($"washers {washer} mm, gap {gap} mm, from strip {width} x {length} mm"),
                Evidence = Evidence.FirstPrinciples("circles placed one by one"),
                Expected = Most(washer, gap, width, length),
                Tolerance = 0,
                Unit = "1",
                Compute = () => new WasherCutting(
                    new Washer(Length.FromMillimeters(washer), Length.FromMillimeters(washer / 2)),
                    Length.FromMillimeters(width),
                    Length.FromMillimeters(length),
                    Length.FromMillimeters(gap)).Count,
            };
        }
    }

    private static int Most(double washer, double gap, double width, double length)
    {
        int most = 0;
        for (int rows = 1; rows == 1 || (rows - 1) * (washer + gap) / 2 <= width - washer + 1e-9 || rows == 2; rows++)
        {
            double apart = rows == 1 ? 0 : (width - washer) / (rows - 1);
            most = Math.Max(most, Placed(rows, apart, washer, gap, length, staggered: true));
            if (rows == 1 || apart >= washer + gap - 1e-9)
            {
                most = Math.Max(most, Placed(rows, apart, washer, gap, length, staggered: false));
            }
        }

        return most;
    }

    // Columns are laid one after the other; each circle goes to the least x that keeps it clear of all before it.
    private static int Placed(int rows, double apart, double washer, double gap, double length, bool staggered)
    {
        double clear = washer + gap;
        var middles = new List<(double X, double Y)>();
        for (int column = 0; ; column++)
        {
            bool any = false;
            for (int row = 0; row < rows; row++)
            {
                if (staggered && row % 2 != column % 2)
                {
                    continue;
                }

                double y = row * apart;
                double x = washer / 2;
                foreach ((double otherX, double otherY) in middles.TakeLast(4 * rows))
                {
                    double rise = Math.Abs(y - otherY);
                    x = Math.Max(x, rise >= clear - 1e-9 ? x : otherX + Math.Sqrt((clear * clear) - (rise * rise)));
                }

                if (staggered && middles.Count > 0)
                {
                    x = Math.Max(x, column % 2 == 0 ? washer / 2 : middles[0].X);
                }

                if (x + (washer / 2) <= length + 1e-9)
                {
                    middles.Add((x, y));
                    any = true;
                }
            }

            // In a staggered strip with one row every other column is empty.
            if (!any && !(staggered && rows == 1 && column % 2 == 1))
            {
                return middles.Count;
            }
        }
    }
}
