using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Strips on discs and rings, measured line by line.</summary>
internal static class FaceStripChecks
{
    private const int Lines = 20_000;

    internal static CheckGroup Group => new(
        "Strips on discs and rings",
        "Each band is scanned in 20 000 lines along the strip: the longest run of the disc is its strip, the shortest run of the hole is left out where every line crosses the hole, and all runs of steel together are the tape that stays.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double outside, double hole, double width, double lap) in new[]
        {
            (1500.0, 500.0, 100.0, 10.0), (3000, 1, 150, 25), (229, 114.3, 25, 5), (1000, 700, 60, 30),
        })
        {
            (double strip, double steel) = Scan(outside, hole, width, lap);
            yield return Case("metres", outside, hole, width, lap, strip / 1000, 1e-5, "m", static lay => lay.StripLength.Meters);
            yield return Case("on-steel", outside, hole, width, lap, steel / 1e6, 2e-6, "m2", static lay =>
                lay.LayersOnAverage.Ratio * lay.Panel.Area.SquareMeters);
        }
    }

    private static PublishedCase Case(
        string what, double outside, double hole, double width, double lap, double expected, double tolerance, string unit, Func<PanelLay, double> ask) => new()
        {
            Id = FormattableString.Invariant($"face/{what}-{outside}-{hole}-w{width}-o{lap}"),
            What = FormattableString.Invariant($"{(what == "metres" ? "strip" : "tape that stays")}, ring {outside} mm with a hole of {hole} mm, strip {width} mm, lap {lap} mm"),
            Evidence = Evidence.FirstPrinciples("runs of steel along 20000 lines in each band"),
            Expected = expected,
            Tolerance = tolerance * Math.Max(1, expected),
            Unit = unit,
            Compute = () => ask(new PanelLay(
                new AnnularPanel(Length.FromMillimeters(outside), Length.FromMillimeters(hole)),
                Ask.Stock(width),
                PanelDirection.AlongWidth,
                Length.FromMillimeters(lap),
                Ask.Exact)),
        };

    // Strips until the disc is full with no lap less than asked; then their laps are made equal.
    private static (double StripMm, double SteelMm2) Scan(double outside, double hole, double width, double lap)
    {
        int count = 1;
        while ((count * width) - ((count - 1) * lap) < outside)
        {
            count++;
        }

        double spacing = count == 1 ? 0 : (outside - width) / (count - 1);
        double strip = 0;
        double steel = 0;
        for (int i = 0; i < count; i++)
        {
            double longest = 0;
            double shortest = double.MaxValue;
            for (int j = 0; j <= Lines; j++)
            {
                double v = (i * spacing) + (width * j / Lines) - (outside / 2);
                double chord = Run(outside, v);
                double gap = Run(hole, v);
                longest = Math.Max(longest, chord);
                shortest = Math.Min(shortest, gap);
                steel += (chord - gap) * width / Lines * (j is 0 or Lines ? 0.5 : 1);
            }

            strip += longest - shortest;
        }

        return (strip, steel);
    }

    private static double Run(double diameter, double v) => 4 * v * v < diameter * diameter ? Math.Sqrt((diameter * diameter) - (4 * v * v)) : 0;
}
