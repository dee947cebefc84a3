using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Layers of a spiral, counted at points all over the unrolled pipe where the pieces of strip really lie.</summary>
internal static class CoverBySamplingChecks
{
    private const int AcrossGrid = 240;
    private const int AlongGrid = 4000;

    internal static CheckGroup Group => new(
        "Layers counted point by point",
        "The pieces are laid out on the unrolled pipe as rectangles, with the lengths of strip as given by the library, and the pieces over each of 960 000 points are counted. The least count is the number of layers everywhere, for a hand that does not wander; the mean count times the area is the tape laid. A strip cut too short shows as a bare point.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Flush(114.3, 100, 10), .. Flush(114.3, 100, 50), .. Flush(114.3, 100, 60), .. Flush(114.3, 100, 67), .. Flush(60.3, 50, 13),
        Level(114.3, 100, 60, 1), Level(114.3, 100, 60, 2), Level(114.3, 100, 60, 3), Level(114.3, 100, 10, 1),
        Level(60.3, 50, 34, 3), Level(60.3, 100, 67, 3), Level(60.3, 100, 67, 4), Level(60.3, 100, 67, 2), Level(323.9, 150, 113, 4),
    ];

    private static IEnumerable<PublishedCase> Flush(double d, double w, double lap)
    {
        double height = 12 * w;
        Tally tally = Count(d, w, height, Lay(d, w, lap, height, 0), 0);
        string what = FormattableString.Invariant($"{w} mm on {d} mm, true lap {lap} mm, ends flush");
        yield return new PublishedCase
        {
            Id = FormattableString.Invariant($"sampled/flush-d{d}-w{w}-o{lap}/everywhere"),
            What = "layers everywhere, " + what,
            Evidence = Evidence.FirstPrinciples("least count over all points"),
            Expected = tally.Least,
            Tolerance = 0,
            Unit = "layers",
            Compute = () => Lay(d, w, lap, height, 0).LayersEverywhere,
        };
        yield return new PublishedCase
        {
            Id = FormattableString.Invariant($"sampled/flush-d{d}-w{w}-o{lap}/average"),
            What = "layers on average, " + what,
            Evidence = Evidence.FirstPrinciples("mean count over all points, good to the grid"),
            Expected = tally.Mean,
            Tolerance = 0.002,
            Unit = "layers",
            Compute = () => Lay(d, w, lap, height, 0).LayersOnAverage.Ratio,
        };
    }

    private static PublishedCase Level(double d, double w, double lap, int turns)
    {
        double height = 12 * w;
        Tally tally = Count(d, w, height, Lay(d, w, lap, height, turns), turns);
        return new PublishedCase
        {
            Id = FormattableString.Invariant($"sampled/level-d{d}-w{w}-o{lap}-m{turns}/everywhere"),
            What = FormattableString.Invariant($"layers everywhere, {w} mm on {d} mm, true lap {lap} mm, {turns} level turn(s) at each end"),
            Evidence = Evidence.FirstPrinciples("least count over all points, square ends and level turns included"),
            Expected = tally.Least,
            Tolerance = 0,
            Unit = "layers",
            Compute = () => Lay(d, w, lap, height, turns).LayersEverywhere,
        };
    }

    private static SpiralLay Lay(double d, double w, double lap, double height, int turns) => new(
        Ask.Pipe(d, height),
        Ask.Stock(w),
        SpiralSetting.FromTrueLap(Length.FromMillimeters(lap)),
        turns == 0 ? SpiralEnds.TrimmedFlush : SpiralEnds.LevelTurns(turns),
        Ask.Exact);

    private static Tally Count(double d, double w, double height, SpiralLay lay, int turns)
    {
        double round = Math.PI * d;
        double advance = lay.Geometry.Advance.Millimeters;
        double length = lay.Strips[0].Length.Millimeters;

        // Directions along and across the strip, from two points of its edge a turn apart.
        double turn = Math.Sqrt((round * round) + (advance * advance));
        (double alongX, double alongZ) = (round / turn, advance / turn);

        // A flush strip starts where its upper edge meets the lower end of the pipe; a square one where its lower edge does.
        double start = turns == 0 ? -w * alongX / alongZ : 0;
        int least = int.MaxValue;
        long all = 0;
        for (int i = 0; i < AlongGrid; i++)
        {
            double z = height * (i + 0.5) / AlongGrid;
            int level = (z < w ? turns : 0) + (z > height - w ? turns : 0);
            for (int j = 0; j < AcrossGrid; j++)
            {
                double x = round * (j + 0.37) / AcrossGrid;
                int count = level;

                // Turns whose lower edge lies at most a strip width below the point, and one more on each side.
                int first = (int)Math.Floor(((((z * alongX) - w) / alongZ) - x) / round) - 1;
                int last = (int)Math.Ceiling(((z * alongX / alongZ) - x) / round) + 1;
                for (int k = first; k <= last; k++)
                {
                    double unrolled = x + (k * round);
                    double along = (unrolled * alongX) + (z * alongZ) - start;
                    double across = (z * alongX) - (unrolled * alongZ);
                    if (along >= 0 && along <= length && across >= 0 && across < w)
                    {
                        count++;
                    }
                }

                least = Math.Min(least, count);
                all += count;
            }
        }

        return new Tally(least, all / ((double)AlongGrid * AcrossGrid));
    }

    private readonly record struct Tally(int Least, double Mean);
}
