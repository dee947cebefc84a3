using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>The point farthest from every window.</summary>
[Properties(MaxTest = 150)]
public sealed class FarthestPlaces
{
    [Property]
    public void No_point_that_is_tried_lies_farther(int seed)
    {
        var random = new Random(seed);
        if (Made(random) is not { } layout)
        {
            return;
        }

        var farthest = new FarthestPoint(layout);
        UnrolledSurface surface = layout.Surface;
        for (int i = 0; i < 300; i++)
        {
            double x = random.NextDouble() * surface.Length.Millimeters;
            double y = random.NextDouble() * surface.Girth.Millimeters;
            double least = layout.Windows.Min(window => Distance(window, surface, x, y));
            Assert.True(least <= farthest.AtMost.Millimeters + 1e-6, $"{least} over {farthest} at {x}, {y}");
        }

        Assert.True(farthest.Found <= farthest.AtMost);
        if (surface.Surface is not Bend)
        {
            double rough = Math.Sqrt(surface.AreaMm2 / layout.Windows.Count);
            Near.Equal(farthest.Found.Millimeters, farthest.AtMost.Millimeters, 0, absolute: Math.Max(0.1, rough * 1e-4) + 1e-9);
        }
    }

    [Property]
    public void More_or_larger_windows_are_never_worse(int seed)
    {
        var random = new Random(seed);
        if (Made(random) is not { } layout)
        {
            return;
        }

        // Each is right to its own tolerance.
        double allowed = new FarthestPoint(layout).AtMost.Millimeters + Math.Max(0.1, Math.Sqrt(layout.Surface.AreaMm2) * 1e-4);
        foreach (WindowLayout? better in new[] { LayoutCase.OneMore(random, layout), LayoutCase.Larger(random, layout) })
        {
            if (better is not null)
            {
                Assert.True(new FarthestPoint(better).AtMost.Millimeters <= allowed);
            }
        }
    }

    [Property]
    public void A_turn_changes_nothing(int seed)
    {
        var random = new Random(seed);
        if (Made(random) is { Surface.IsClosed: true } layout)
        {
            Near.Equal(
                new FarthestPoint(layout).AtMost.Millimeters, new FarthestPoint(LayoutCase.Turned(layout, 2)).AtMost.Millimeters, 1e-4, absolute: 0.2);
        }
    }

    [Fact]
    public void By_hand()
    {
        // One window in the middle of a panel: a corner, over 450 and 300 mm.
        var middle = new WindowLayout(new(new RectangularPanel(Mm(1000), Mm(700))), [ContactWindow.Rectangle(Mm(500), Mm(350), Mm(100), Mm(100))]);
        Near.Equal(double.Hypot(450, 300), new FarthestPoint(middle).AtMost.Millimeters, 0, absolute: 0.11);

        // A disc of 100 mm on a pipe of 600 mm girth, 1 m long, on the named line at half length: half way round, at an end.
        var round = new WindowLayout(new(Pipe(600 / Math.PI, 1000)), [ContactWindow.Disc(Mm(500), Mm(0), Mm(100))]);
        Near.Equal(double.Hypot(500, 300) - 50, new FarthestPoint(round).AtMost.Millimeters, 0, absolute: 0.11);
        Assert.Throws<ArgumentException>(static () => new FarthestPoint(new WindowLayout(new(Pipe()), [])));
    }

    private static WindowLayout? Made(Random random)
    {
        WindowLayout layout = LayoutCase.Make(random, LayoutCase.Surface(random), discs: true);
        return layout.Windows.Count == 0 ? null : layout;
    }

    // On a bend never longer than the true way: across by the least factor of all.
    private static double Distance(ContactWindow window, UnrolledSurface surface, double x, double y)
    {
        double factor = surface.FactorAlong(surface.Girth / 2).Ratio;
        double own = surface.FactorAlong(window.Around).Ratio;
        double dx = Math.Abs(x - window.Along.Millimeters);
        double dy = y - window.Around.Millimeters;
        dy = Math.Abs(surface.IsClosed ? Math.IEEERemainder(dy, surface.Girth.Millimeters) : dy);
        double halfX = window.ExtentAlong.Millimeters / 2 / own;
        double halfY = window.ExtentAround.Millimeters / 2;
        if (window.IsRound && factor == 1)
        {
            return Math.Max(0, double.Hypot(dx, dy) - halfX);
        }

        return double.Hypot(factor * Math.Max(0, dx - halfX), Math.Max(0, dy - halfY));
    }
}
