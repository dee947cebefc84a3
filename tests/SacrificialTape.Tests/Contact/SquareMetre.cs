using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>The least bare steel in any one square metre.</summary>
[Properties(MaxTest = 150)]
public sealed class SquareMetre
{
    [Property]
    public void No_square_metre_that_is_tried_has_less(int seed)
    {
        var random = new Random(seed);
        UnrolledSurface surface = LayoutCase.Surface(random);
        WindowLayout layout = LayoutCase.Make(random, surface, discs: true);
        var least = new LeastBareMetre(layout);
        for (int i = 0; i < 60; i++)
        {
            double room = surface.IsClosed ? surface.Girth.Millimeters : (surface.Girth - least.ExtentAround).Millimeters;
            double y = random.NextDouble() * room;

            // On a bend a square metre reaches the farther along the nearer to the inside it lies.
            double along = surface.AreaMm2 <= 1e6 ? surface.Length.Millimeters : 1e6 / Factor(surface, y, least.ExtentAround.Millimeters);
            if (along > surface.Length.Millimeters * (1 + 1e-9))
            {
                continue;
            }

            double x = random.NextDouble() * Math.Max(0, surface.Length.Millimeters - along);
            double ratio = 1e4 * Bare(layout, x, along, y, least.ExtentAround.Millimeters) / Math.Min(1e6, surface.AreaMm2);
            Assert.True(least.Ratio.SquareCentimetersPerSquareMeter <= (ratio * 1.002) + 1e-3, $"{least} against {ratio} at {x}, {y}");
        }
    }

    [Property]
    public void On_flat_surfaces_with_rectangles_the_place_found_has_just_that(int seed)
    {
        var random = new Random(seed);
        UnrolledSurface surface = Flat(random);
        WindowLayout layout = LayoutCase.Make(random, surface);
        var least = new LeastBareMetre(layout);
        Assert.True(least.IsExact);
        Near.Equal(least.RatioThere.SquareCentimetersPerSquareMeter, least.Ratio.SquareCentimetersPerSquareMeter, 1e-9, absolute: 1e-9);
        double bare = Bare(layout, least.FromAlong.Millimeters, least.ExtentAlong.Millimeters, least.FromAround.Millimeters, least.ExtentAround.Millimeters);
        Near.Equal(1e4 * bare / Math.Min(1e6, surface.AreaMm2), least.Ratio.SquareCentimetersPerSquareMeter, 1e-6, absolute: 1e-6);
    }

    [Property]
    public void With_discs_the_bound_is_at_most_what_is_there_and_not_far_below(int seed)
    {
        var random = new Random(seed);
        WindowLayout layout = LayoutCase.Make(random, Flat(random), discs: true);
        var least = new LeastBareMetre(layout);
        double discs = layout.Windows.Where(static window => window.IsRound).Sum(static window => Math.PI / 4 * window.ExtentAlong.Centimeters * window.ExtentAlong.Centimeters);
        double metre = Math.Min(1, layout.Surface.AreaMm2 / 1e6);
        double bound = least.Ratio.SquareCentimetersPerSquareMeter;
        double there = least.RatioThere.SquareCentimetersPerSquareMeter;
        Assert.True(bound <= (there * (1 + 1e-9)) + 1e-9, $"{bound} over {there}");
        Assert.True(bound >= there - (0.15 * discs / metre) - 1e-9, $"{bound} far under {there}");
    }

    [Property]
    public void More_or_larger_windows_are_never_worse(int seed)
    {
        var random = new Random(seed);
        UnrolledSurface surface = LayoutCase.Surface(random);
        WindowLayout layout = LayoutCase.Make(random, surface);
        double least = Least(layout);
        if (LayoutCase.OneMore(random, layout) is { } more)
        {
            Assert.True(Least(more) >= least - 1e-6);
        }

        // On a bend a window is taken by the least factor within it, which a larger one may lower.
        if (surface.Surface is not Bend && LayoutCase.Larger(random, layout) is { } larger)
        {
            Assert.True(Least(larger) >= least - 1e-6);
        }
    }

    [Property]
    public void A_turn_changes_nothing(int seed)
    {
        var random = new Random(seed);
        UnrolledSurface surface = Flat(random);
        WindowLayout layout = LayoutCase.Make(random, surface, discs: true);
        if (surface.IsClosed)
        {
            Near.Equal(Least(layout), Least(LayoutCase.Turned(layout, 1)), 1e-9, absolute: 1e-6);
            Near.Equal(Least(layout), Least(LayoutCase.Turned(layout, -3)), 1e-9, absolute: 1e-6);
            Near.Equal(Least(layout), Least(LayoutCase.Turned(layout, 0.37)), 1e-9, absolute: 1e-6);
        }
    }

    [Property]
    public void Where_the_surface_tiles_the_least_is_no_more_than_the_average(int seed, byte tiles)
    {
        var random = new Random(seed);
        double metres = 1 + (tiles % 5);
        UnrolledSurface surface = random.Next(2) == 0
            ? new(new RectangularPanel(Length.FromMeters(metres), Length.FromMeters(1 + random.Next(3))))
            : new(new Shell(Length.FromMeters(1.5), Length.FromMeters(metres), ShellAxis.Lying));
        WindowLayout layout = LayoutCase.Make(random, surface);
        double average = layout.BareArea.SquareCentimeters / surface.Surface.Area.SquareMeters;
        Assert.True(Least(layout) <= average * (1 + 1e-9), $"{Least(layout)} over {average}");
    }

    [Fact]
    public void A_row_at_one_end_leaves_the_other_bare_of_windows()
    {
        // Enough on the average, none in the far metre: what the average cannot see.
        UnrolledSurface surface = new(Pipe(1000 / Math.PI, 4000));
        var layout = new WindowLayout(surface,
            [.. Enumerable.Range(0, 10).Select(static i => ContactWindow.Rectangle(Mm(100 + (100 * i)), Mm(500), Mm(80), Mm(100)))]);
        Near.Equal(200, layout.BareArea.SquareCentimeters / 4, 1e-12);
        Assert.Equal(0, Least(layout));
    }

    [Fact]
    public void By_hand()
    {
        // Windows 100 x 100 mm at 0.5 m pitch along a pipe of 1 m girth: two in each metre, wherever it begins.
        UnrolledSurface surface = new(Pipe(1000 / Math.PI, 4000));
        Near.Equal(200, Least(Row(surface, 8, 500)), 1e-9);

        // At 0.8 m pitch one metre may hold one window and nothing of the next.
        Near.Equal(100, Least(Row(surface, 5, 800)), 1e-9);

        // Small pipe: 100 mm round takes 10 m for a square metre; 25 cm2 every half metre of 20 m are 500 cm2 in 10 m.
        UnrolledSurface small = new(Pipe(100 / Math.PI, 20_000));
        var windows = new WindowLayout(small,
            [.. Enumerable.Range(0, 40).Select(static i => ContactWindow.Rectangle(Mm(250 + (500 * i)), Mm(0), Mm(50), Mm(50)))]);
        Near.Equal(500, Least(windows), 1e-9);

        // Less than a square metre: the whole of it.
        var tiny = new WindowLayout(new(new RectangularPanel(Mm(500), Mm(400))), [ContactWindow.Rectangle(Mm(100), Mm(100), Mm(20), Mm(10))]);
        Near.Equal(10, Least(tiny), 1e-12);
    }

    private static WindowLayout Row(UnrolledSurface surface, int count, double pitch) => new(surface,
        [.. Enumerable.Range(0, count).Select(i => ContactWindow.Rectangle(Mm((i + 0.5) * pitch), Mm(300), Mm(100), Mm(100)))]);

    private static double Least(WindowLayout layout) => new LeastBareMetre(layout).Ratio.SquareCentimetersPerSquareMeter;

    private static UnrolledSurface Flat(Random random)
    {
        UnrolledSurface surface;
        do
        {
            surface = LayoutCase.Surface(random);
        }
        while (surface.Surface is Bend);

        return surface;
    }

    // Bare steel within a rectangle of the unrolled surface, in thin slices around.
    private static double Bare(WindowLayout layout, double x, double along, double y, double around)
    {
        UnrolledSurface surface = layout.Surface;
        double girth = surface.Girth.Millimeters;
        double toX = x + along;
        double toY = y + around;
        double bare = 0;
        foreach (ContactWindow window in layout.Windows)
        {
            double halfX = window.ExtentAlong.Millimeters / 2 / surface.FactorAlong(window.Around).Ratio;
            double halfY = window.ExtentAround.Millimeters / 2;
            double middleX = window.Along.Millimeters;
            for (int turn = surface.IsClosed ? -3 : 0; turn <= (surface.IsClosed ? 3 : 0); turn++)
            {
                double middleY = window.Around.Millimeters + (turn * girth);
                double low = Math.Max(y, middleY - halfY);
                double high = Math.Min(toY, middleY + halfY);
                const int Slices = 300;
                for (int i = 0; i < Slices && high > low; i++)
                {
                    double at = low + ((high - low) * (i + 0.5) / Slices);
                    double off = (at - middleY) / halfY;
                    double half = window.IsRound ? halfX * Math.Sqrt(Math.Max(0, 1 - (off * off))) : halfX;
                    bare += Math.Max(0, Math.Min(toX, middleX + half) - Math.Max(x, middleX - half)) * (high - low) / Slices * surface.FactorAlong(Mm(at)).Ratio;
                }
            }
        }

        return bare;
    }

    private static double Factor(UnrolledSurface surface, double y, double around)
    {
        double sum = 0;
        for (int i = 0; i < 1000; i++)
        {
            sum += around / 1000 * surface.FactorAlong(Mm(y + (around * (i + 0.5) / 1000))).Ratio;
        }

        return sum;
    }
}
