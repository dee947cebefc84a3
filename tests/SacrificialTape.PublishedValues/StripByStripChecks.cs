using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Rings and strips along a pipe, against laying them down one by one until the steel is covered.</summary>
internal static class StripByStripChecks
{
    internal static CheckGroup Group => new(
        "Strips laid down one by one",
        "Strips are put down at the least lap until nothing is bare, in exact decimal arithmetic; then the same number is spread evenly and the lap between two of them measured.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Rings(100, 100, 20), .. Rings(101, 100, 20), .. Rings(180, 100, 20), .. Rings(180.001m, 100, 20),
        .. Rings(1000, 100, 20), .. Rings(1020, 100, 20), .. Rings(6000, 150, 10), .. Rings(2400, 50, 25),
        .. Round(60.3, 100, 10), .. Round(114.3, 100, 10), .. Round(168.3, 150, 75), .. Round(323.9, 300, 10), .. Round(1219, 300, 20),
    ];

    private static IEnumerable<PublishedCase> Rings(decimal height, decimal width, decimal lap)
    {
        int count = 1;
        decimal covered = width;
        while (covered < height)
        {
            count++;
            covered += width - lap;
        }

        int rings = count;
        string what = FormattableString.Invariant($"{width} mm, least lap {lap} mm, on {height} mm of pipe");
        string id = FormattableString.Invariant($"strips/rings-h{height}-w{width}-o{lap}");
        RingLay Lay() => new(
            Ask.Pipe(114.3, (double)height), Ask.Stock((double)width), Length.FromMillimeters((double)lap), Ask.Exact);
        yield return new PublishedCase
        {
            Id = id + "/count",
            What = "rings of " + what,
            Evidence = Evidence.FirstPrinciples("laid one by one until covered"),
            Expected = rings,
            Tolerance = 0,
            Unit = "rings",
            Compute = () => Lay().Rings,
        };
        if (rings > 1)
        {
            decimal start = (height - width) / (rings - 1);
            yield return new PublishedCase
            {
                Id = id + "/lap",
                What = "even lap of rings of " + what,
                Evidence = Evidence.FirstPrinciples("first ring at one end, last at the other, the starts in even steps; the lap is the width less a step"),
                Expected = (double)(width - start),
                Tolerance = 1e-9,
                Unit = "mm",
                Compute = () => Lay().Lap.Millimeters,
            };
        }
    }

    private static IEnumerable<PublishedCase> Round(double diameter, double width, double lap)
    {
        double round = Math.PI * diameter;
        int count = 1;
        double edge = width;

        // The first strip's far edge is where the last one must reach, the lap included.
        while (edge < round + lap)
        {
            count++;
            edge += width - lap;
        }

        int strips = count;
        string what = FormattableString.Invariant($"{width} mm, least lap {lap} mm, along a {diameter} mm pipe");
        string id = FormattableString.Invariant($"strips/along-d{diameter}-w{width}-o{lap}");
        AlongPipeLay Lay() => new(
            Ask.Pipe(diameter, 3000), Ask.Stock(width), Length.FromMillimeters(lap), Ask.Exact);
        yield return new PublishedCase
        {
            Id = id + "/count",
            What = "strips of " + what,
            Evidence = Evidence.FirstPrinciples("laid one by one until the last laps on the first"),
            Expected = strips,
            Tolerance = 0,
            Unit = "strips",
            Compute = () => Lay().StripsRound,
        };
        yield return new PublishedCase
        {
            Id = id + "/lap",
            What = "even lap of strips of " + what,
            Evidence = Evidence.FirstPrinciples("all widths together, less once round, shared among as many laps as strips"),
            Expected = ((strips * width) - round) / strips,
            Tolerance = 1e-9,
            Unit = "mm",
            Compute = () => Lay().Lap.Millimeters,
        };

        // Strips at even steps round the pipe: how many lie over each of many places.
        double step = round / strips;
        int least = int.MaxValue;
        for (int i = 0; i < 10_000; i++)
        {
            double place = round * (i + 0.5) / 10_000;
            int over = 0;
            for (int k = 0; k < strips; k++)
            {
                double into = (place - (k * step) + (2 * round)) % round;

                // A strip wider than the pipe is round would lie over a place twice.
                over += (int)((width - into) / round) + (into < width ? 1 : 0);
            }

            least = Math.Min(least, over);
        }

        int layers = least;
        yield return new PublishedCase
        {
            Id = id + "/layers",
            What = "layers everywhere of strips of " + what,
            Evidence = Evidence.FirstPrinciples("strips over each of 10 000 places round the pipe; the least count"),
            Expected = layers,
            Tolerance = 0,
            Unit = "layers",
            Compute = () => Lay().LayersEverywhere,
        };
    }
}
