using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>
/// The least bare area in a rectangle that slides: where all sides lie on whole millimetres it is that of a look at every half
/// millimetre, to the last digit, and so is the first place that has it.
/// </summary>
[Properties(MaxTest = 20)]
public sealed class SlidingRectangle
{
    private const int Layouts = 60;

    [Property]
    public void On_a_pipe(int seed)
    {
        Assert.NotEmpty(LayoutCase.WholePipes);
        var random = new Random(seed);
        for (int i = 0; i < Layouts; i++)
        {
            UnrolledSurface pipe = LayoutCase.WholePipes[random.Next(LayoutCase.WholePipes.Count)];
            int girth = (int)pipe.GirthMm;
            int extentY = random.Next(4) == 0 ? girth : random.Next(3, girth + 1);
            int fromY = random.Next(2) == 0 ? 0 : random.Next(girth);
            int toY = fromY == 0 && random.Next(2) == 0 ? girth : random.Next(fromY, girth + 1);
            SameAsALook(Parts(random, girth, beyond: girth / 2), pipe, random.Next(3, 24), extentY, fromY, toY);
        }
    }

    [Property]
    public void On_a_panel(int seed)
    {
        var random = new Random(seed);
        for (int i = 0; i < Layouts; i++)
        {
            int height = random.Next(10, 24);
            var panel = new UnrolledSurface(new RectangularPanel(Mm(20), Mm(height)));
            int extentY = random.Next(3, height + 1);
            SameAsALook(Parts(random, height, beyond: 0), panel, random.Next(3, 24), extentY, 0, height - extentY);
        }
    }

    // At 4 mm the one disc is no longer whole and the other, which comes first along, not yet.
    [Fact]
    public void Where_one_disc_is_left_and_the_next_reached_neither_counts() => Assert.Equal(
        new SlidingMetre(0, 0, 4, 20, 5),
        SlidingMetreKernel.Least([new(1, 5, 6, 9, 1, 2), new(2, 5, 4, 8, 1, 3)], LayoutCase.WholePipes[^1], 20, 5, 3.5, 5.5));

    // At 7 mm along, the last place before the disc is whole, the second rectangle has 1 mm left; the first and the last keep it from
    // going further to either side.
    [Fact]
    public void The_last_place_before_a_disc_is_whole_may_be_the_least()
    {
        BarePart[] parts = [new(0, 6, 0, 10, 50, 0), new(5, 8, 0, 10, 1, 0), new(10, 12, 2, 4, 1, 100), new(13, 20, 0, 10, 50, 0)];
        var panel = new UnrolledSurface(new RectangularPanel(Mm(20), Mm(10)));
        Assert.Equal(new SlidingMetre(10, 7, 0, 5, 10), SlidingMetreKernel.Least(parts, panel, 5, 10, 0, 0));
        SameAsALook(parts, panel, 5, 10, 0, 0);
    }

    [Fact]
    public void Without_windows_nothing_is_bare() => Assert.Equal(
        new SlidingMetre(0, 0, 3, 10, 5), SlidingMetreKernel.Least([], LayoutCase.WholePipes[0], 10, 5, 3, 9));

    [Fact]
    public void A_stair_stands_within_its_disc_and_the_rest_makes_it_whole()
    {
        // Half axes 10 and 5: an ellipse as it lies on a bend.
        var spot = new BareSpot(100, 200, 10, 5, true, 0.75);
        BarePart[] parts = SlidingMetreKernel.Parts([spot]);
        BarePart whole = parts[^1];
        Assert.Equal((90.0, 110.0, 195.0, 205.0, 0.75), (whole.LowX, whole.HighX, whole.LowY, whole.HighY, whole.Weight));
        BarePart[] stair = parts[..^1];
        Assert.Equal(11, stair.Length);
        Near.Equal(Math.PI * 50, whole.Rest + stair.Sum(static part => (part.HighX - part.LowX) * (part.HighY - part.LowY)), 1e-14);
        Assert.All(stair, static part =>
        {
            // Its outer corners stand on the rim, it is as far left as right, and no two share area.
            double y = Math.Max(Math.Abs(part.LowY - 200), Math.Abs(part.HighY - 200)) / 5;
            double x = (part.HighX - 100) / 10;
            Near.Equal(1, double.Hypot(x, y), 1e-14);
            Near.Equal(100, (part.LowX + part.HighX) / 2, 1e-14);
            Assert.Equal((0.75, 0.0), (part.Weight, part.Rest));
        });
        BarePart[] upwards = [.. stair.OrderBy(static part => part.LowY)];
        Assert.All(upwards.Zip(upwards.Skip(1)), static pair => Near.Equal(pair.First.HighY, pair.Second.LowY, 1e-14));

        // Equal angles of 90/7 degrees from the ends to the middle.
        double[] angles = [.. upwards.Skip(5).Select(static part => Math.Asin((part.HighY - 200) / 5) * 180 / Math.PI)];
        Assert.All(angles.Select(static (angle, i) => angle / (i + 1)), static step => Near.Equal(90.0 / 7, step, 1e-13));
    }

    [Fact]
    public void A_rectangle_is_its_own_part() => Assert.Equal(
        [new BarePart(90, 110, 195, 205, 0.75, 0)], SlidingMetreKernel.Parts([new BareSpot(100, 200, 10, 5, false, 0.75)]));

    [Fact]
    public void A_ratio_is_bare_over_covered_and_never_more_than_all()
    {
        Near.Equal(25, SlidingMetreKernel.RatioCm2PerM2(0.001, 0.4, default(NoSteps)), 1e-15);
        Assert.Equal(10_000, SlidingMetreKernel.RatioCm2PerM2(0.400001, 0.4, default(NoSteps)));
    }

    // Some are what is left of a disc: counted only where no side touches it.
    private static BarePart[] Parts(Random random, int girth, int beyond) =>
    [
        .. Enumerable.Range(0, random.Next(1, 7)).Select(_ =>
        {
            int lowX = random.Next(18);
            int lowY = random.Next(-beyond, girth - 1);
            return new BarePart(
                lowX,
                random.Next(lowX + 1, 21),
                lowY,
                random.Next(lowY + 1, Math.Min(girth + beyond, lowY + girth) + 1),
                random.Next(2) == 0 ? 1 : 0.5,
                random.Next(3) == 0 ? random.Next(1, 9) : 0);
        }),
    ];

    private static void SameAsALook(BarePart[] parts, UnrolledSurface surface, int extentX, int extentY, int fromY, int toY)
    {
        double lastX = Math.Max(0, 20 - extentX);
        SlidingMetre expected = new(double.MaxValue, 0, 0, extentX, extentY);
        for (double x = 0; x <= lastX; x += 0.5)
        {
            for (double y = fromY; y <= toY; y += 0.5)
            {
                double bare = parts.Sum(part => Bare(part, surface, x, extentX, y, extentY));
                if (bare < expected.BareMm2)
                {
                    expected = expected with { BareMm2 = bare, X = x, Y = y };
                }
            }
        }

        Assert.Equal(expected, SlidingMetreKernel.Least(parts, surface, extentX, extentY, fromY, toY));
    }

    private static double Bare(BarePart part, UnrolledSurface surface, double x, double extentX, double y, double extentY)
    {
        double girth = surface.GirthMm;
        bool round = surface.IsClosed && extentY >= girth;
        double along = Math.Max(0, Math.Min(part.HighX, x + extentX) - Math.Max(part.LowX, x));
        bool within = part.LowX > x && part.HighX < x + extentX;
        double around = 0;
        bool whole = round;
        for (int turn = -4; turn <= 4; turn++)
        {
            double low = part.LowY + (turn * girth);
            double high = part.HighY + (turn * girth);
            if (turn == 0 || surface.IsClosed)
            {
                around += Math.Max(0, Math.Min(high, y + extentY) - Math.Max(low, y));
                whole |= low > y && high < y + extentY;
            }
        }

        return part.Weight * (part.Rest == 0 ? along * around : within && whole ? part.Rest : 0);
    }
}
