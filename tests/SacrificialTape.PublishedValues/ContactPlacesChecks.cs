using SacrificialTape.Contact;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Windows and strips at their places, counted another way.</summary>
internal static class ContactPlacesChecks
{
    internal static CheckGroup Group => new(
        "Contact over paint: places of windows and strips",
        "The figure of the trade, and constructions by hand or by counting points: no published layout of windows was found.",
        [.. Practice(), .. Metres(), .. Distances(), .. Strips()]);

    private static IEnumerable<PublishedCase> Practice()
    {
        yield return Case("rule", "bare steel in any one square metre", Evidence.CommonPractice("about 100 cm2 for each m2 to be covered"), 100, 0, "cm2/m2",
            static () => RuleSet.Default[RuleIds.BareRatioInMetre].Limit!.Value.Number);
    }

    private static IEnumerable<PublishedCase> Metres()
    {
        yield return Case("even-row", "windows of 100 x 100 mm every 0.5 m along a pipe of 1 m girth", Evidence.FirstPrinciples("a metre holds two whole pitches wherever it begins"), 200, 1e-9, "cm2/m2",
            static () => Least(Pipe(1000, 4000), Row(8, 500)));
        yield return Case("wide-row", "the same every 0.8 m", Evidence.FirstPrinciples("a metre that ends where the second begins holds one"), 100, 1e-9, "cm2/m2",
            static () => Least(Pipe(1000, 4000), Row(5, 800)));
        yield return Case("small-pipe", "25 cm2 every 0.5 m along a pipe of 0.1 m girth", Evidence.FirstPrinciples("10 m of it are a square metre and hold 20 pitches"), 500, 1e-9, "cm2/m2",
            static () => Least(Pipe(100, 20_000), [.. Enumerable.Range(0, 40).Select(static i => Square(250 + (500 * i), 0, 50))]));
        yield return Case("four-corners", "four windows in the corners of a panel of 2 x 2 m", Evidence.FirstPrinciples("the metre in the middle holds none"), 0, 0, "cm2/m2",
            static () => Least(Panel(2000, 2000), [Square(50, 50, 100), Square(1950, 50, 100), Square(50, 1950, 100), Square(1950, 1950, 100)]));
        yield return Case("scattered", "seven uneven windows on a panel of 2.2 x 1.6 m", Evidence.FirstPrinciples("least over all places 0.5 mm apart, on which every side of a window lies"), Tried(), 1e-9, "cm2/m2",
            static () => Least(Panel(2200, 1600), Scattered()));
    }

    private static IEnumerable<PublishedCase> Distances()
    {
        yield return Case("middle", "a window of 100 mm in the middle of a panel of 1 x 0.7 m", Evidence.FirstPrinciples("a corner, 450 and 300 mm off"), Math.Sqrt((450 * 450) + (300 * 300)), 0.11, "mm",
            static () => Far(Panel(1000, 700), [Square(500, 350, 100)]));
        yield return Case("half-way-round", "a disc of 100 mm on a pipe of 600 mm girth, 1 m long", Evidence.FirstPrinciples("an end, half way round, less the radius"), Math.Sqrt((500 * 500) + (300 * 300)) - 50, 0.11, "mm",
            static () => Far(Pipe(600, 1000), [ContactWindow.Disc(Mm(500), Mm(0), Mm(100))]));
        yield return Case("three-corners", "three discs at the corners of a triangle, alone on a panel cut to it", Evidence.FirstPrinciples("least over a grid of points 1 mm apart, so at most a little less"), Sampled(), 1, "mm",
            static () => Far(Panel(1200, 900), Triangle()));
    }

    private static IEnumerable<PublishedCase> Strips()
    {
        yield return Case("under-lap", "window of 50 mm half under the lap of two rings over film: what the first is sure to touch", Evidence.FirstPrinciples("25 x 50 mm"), 12.5, 1e-9, "cm2",
            static () => new JoinedStrips(
                [new PlacedStrip(1, Mm(0), Mm(100), Mm(0), Mm(1000), true)],
                new WindowLayout(Pipe(1000, 1000), [Square(100, 500, 50)]),
                false,
                Area.FromSquareMillimeters(1)).LeastTouched.SquareCentimeters);
        yield return Case("disc-under-edge", "disc of 60 mm with a strip's edge 15 mm from its middle", Evidence.FirstPrinciples("disc less the segment beyond: r^2 acos(1/2) - 15 sqrt(r^2 - 15^2)"), SegmentLeftCm2(), 1e-9, "cm2",
            static () => new JoinedStrips(
                [new PlacedStrip(1, Mm(0), Mm(115), Mm(0), Mm(1000), true)],
                new WindowLayout(Pipe(1000, 1000), [ContactWindow.Disc(Mm(100), Mm(500), Mm(60))]),
                false,
                Area.FromSquareMillimeters(1)).LeastTouched.SquareCentimeters);
    }

    private static double SegmentLeftCm2() =>
        ((Math.PI * 900) - ((900 * Math.Acos(0.5)) - (15 * Math.Sqrt(900 - 225)))) / 100;

    private static ContactWindow[] Scattered() =>
    [
        Square(130, 210, 90), Square(720, 330, 60), Square(1180, 900, 110), Square(1650, 240, 75), Square(2050, 1400, 95), Square(400, 1300, 80), Square(900, 1450, 55),
    ];

    private static double Tried()
    {
        ContactWindow[] windows = Scattered();
        double best = double.MaxValue;
        for (double x = 0; x <= 1200; x += 0.5)
        {
            for (double y = 0; y <= 600; y += 0.5)
            {
                double sum = 0;
                foreach (ContactWindow window in windows)
                {
                    sum += Shared(window.Along, window.ExtentAlong, x) * Shared(window.Around, window.ExtentAround, y);
                }

                best = Math.Min(best, sum);
            }
        }

        return best / 100;

        static double Shared(Length middle, Length extent, double from) => Math.Max(
            0, Math.Min((middle + (extent / 2)).Millimeters, from + 1000) - Math.Max((middle - (extent / 2)).Millimeters, from));
    }

    private static ContactWindow[] Triangle() =>
    [
        ContactWindow.Disc(Mm(200), Mm(150), Mm(80)), ContactWindow.Disc(Mm(1000), Mm(250), Mm(80)), ContactWindow.Disc(Mm(500), Mm(800), Mm(80)),
    ];

    private static double Sampled()
    {
        double most = 0;
        for (int x = 0; x <= 1200; x++)
        {
            for (int y = 0; y <= 900; y++)
            {
                double least = double.MaxValue;
                foreach ((double cx, double cy) in new[] { (200.0, 150.0), (1000, 250), (500, 800) })
                {
                    least = Math.Min(least, Math.Sqrt(((x - cx) * (x - cx)) + ((y - cy) * (y - cy))) - 40);
                }

                most = Math.Max(most, least);
            }
        }

        return most;
    }

    private static ContactWindow[] Row(int count, double pitch) => [.. Enumerable.Range(0, count).Select(i => Square((i + 0.5) * pitch, 300, 100))];

    private static ContactWindow Square(double x, double y, double side) => ContactWindow.Rectangle(Mm(x), Mm(y), Mm(side), Mm(side));

    private static UnrolledSurface Pipe(double girth, double length) => new(Ask.Pipe(girth / Math.PI, length));

    private static UnrolledSurface Panel(double width, double height) => new(new RectangularPanel(Mm(width), Mm(height)));

    private static double Least(UnrolledSurface surface, ContactWindow[] windows) =>
        new LeastBareMetre(new WindowLayout(surface, [.. windows])).Ratio.SquareCentimetersPerSquareMeter;

    private static double Far(UnrolledSurface surface, ContactWindow[] windows) =>
        new FarthestPoint(new WindowLayout(surface, [.. windows])).AtMost.Millimeters;

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "contact-places/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
