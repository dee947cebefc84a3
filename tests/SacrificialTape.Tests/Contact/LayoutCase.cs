using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>A surface with windows that keep clear of each other, made from a seed: each in a cell of its own.</summary>
internal static class LayoutCase
{
    /// <summary>Pipes 20 mm long whose girth comes back to whole millimetres, so that what lies on them can be counted.</summary>
    internal static IReadOnlyList<UnrolledSurface> WholePipes { get; } =
        [.. Enumerable.Range(12, 20).Select(static girth => new UnrolledSurface(Pipe(girth / Math.PI, 20))).Where(static pipe => pipe.GirthMm == Math.Round(pipe.GirthMm))];

    internal static UnrolledSurface Surface(Random random) => random.Next(4) switch
    {
        0 => new(Pipe(Grid(random, 20, 900), Grid(random, 300, 6000))),
        1 => new(new Shell(Mm(Grid(random, 300, 1500)), Mm(Grid(random, 300, 4000)), ShellAxis.Upright)),
        2 => new(new RectangularPanel(Mm(Grid(random, 200, 4000)), Mm(Grid(random, 200, 3000)))),
        _ => Bent(random),
    };

    internal static UnrolledSurface Bent(Random random)
    {
        double diameter = Grid(random, 100, 1500);
        return new(new Bend(Mm(diameter), Mm(Math.Round(diameter * (0.8 + random.NextDouble()))), Angle.FromDegrees(random.Next(30, 180))));
    }

    internal static WindowLayout Make(Random random, UnrolledSurface surface, bool discs = false)
    {
        int columns = random.Next(1, 7);
        int rows = random.Next(1, 5);
        double narrow = surface.FactorAlong(surface.Girth / 2).Ratio;
        double cellX = surface.Length.Millimeters / columns;
        double cellY = surface.Girth.Millimeters / rows;
        var windows = new List<ContactWindow>();
        for (int i = 0; i < columns * rows; i++)
        {
            if (random.Next(4) == 0)
            {
                continue;
            }

            double along = Math.Min(300, cellX * narrow * (0.05 + (0.8 * random.NextDouble())));
            double around = Math.Min(300, cellY * (0.05 + (0.8 * random.NextDouble())));
            bool disc = discs && random.Next(2) == 0;
            (along, around) = disc ? (Math.Min(along, around), Math.Min(along, around)) : (along, around);
            double x = (((i % columns) + 0.5) * cellX) + ((random.NextDouble() - 0.5) * (cellX - (along / narrow)));
            double y = (((i / columns) + 0.5) * cellY) + ((random.NextDouble() - 0.5) * (cellY - around));
            windows.Add(disc ? ContactWindow.Disc(Mm(x), Mm(y), Mm(along)) : ContactWindow.Rectangle(Mm(x), Mm(y), Mm(along), Mm(around)));
        }

        return new(surface, new ValueList<ContactWindow>(windows));
    }

    /// <summary>One window more, if there is room where it happens to fall.</summary>
    internal static WindowLayout? OneMore(Random random, WindowLayout layout)
    {
        double size = 1 + (random.NextDouble() * 80);
        try
        {
            return new(layout.Surface,
            [
                .. layout.Windows,
                ContactWindow.Rectangle(
                    layout.Surface.Length * random.NextDouble(), layout.Surface.Girth * random.NextDouble(), Mm(size), Mm(size)),
            ]);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The same windows, one of them larger, if it still fits.</summary>
    internal static WindowLayout? Larger(Random random, WindowLayout layout)
    {
        if (layout.Windows.Count == 0)
        {
            return null;
        }

        int which = random.Next(layout.Windows.Count);
        ContactWindow window = layout.Windows[which];
        double factor = 1 + (random.NextDouble() * 0.5);
        try
        {
            ContactWindow larger = window.IsRound
                ? ContactWindow.Disc(window.Along, window.Around, window.ExtentAlong * factor)
                : ContactWindow.Rectangle(window.Along, window.Around, window.ExtentAlong * factor, window.ExtentAround * (1 + (random.NextDouble() * 0.5)));
            return new(layout.Surface, [.. layout.Windows.Select((one, i) => i == which ? larger : one)]);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    internal static WindowLayout Turned(WindowLayout layout, double turns) => new(layout.Surface,
        [.. layout.Windows.Select(window => window.At(window.Along, window.Around + (layout.Surface.Girth * turns)))]);

    private static double Grid(Random random, int from, int to) => Math.Round(from + (random.NextDouble() * (to - from)), 1);
}
