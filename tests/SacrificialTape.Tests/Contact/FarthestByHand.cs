using FsCheck.Xunit;
using MathNet.Numerics.Integration;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>
/// The farthest point of few windows, and how its distance comes about: to a millionth of a millimetre where one point is
/// farthest, coarser where a whole line or area is, since all of it is then searched.
/// </summary>
[Properties(MaxTest = 100)]
public sealed class FarthestByHand
{
    private static readonly UnrolledSurface Panel = new(new RectangularPanel(Mm(1000), Mm(700)));
    private static readonly UnrolledSurface Round = new(Pipe(600 / Math.PI, 1000));

    [Fact]
    public void From_one_rectangle_to_the_far_corner()
    {
        Farthest found = FarthestKernel.Search([new BareSpot(200, 250, 50, 20, false, 1)], Panel, 1e-6);
        Near.Equal(double.Hypot(750, 430), found.FoundMm, 0, absolute: 2e-6);
        Assert.InRange(found.AtMostMm, double.Hypot(750, 430) - 1e-9, found.FoundMm + 1e-6);
        Near.Equal(1000, found.X, 0, absolute: 1e-5);
        Near.Equal(700, found.Y, 0, absolute: 1e-5);
        Near.Equal(750, found.AlongMm, 0, absolute: 1e-5);
        Near.Equal(430, found.AroundMm, 0, absolute: 1e-5);
        Assert.Equal(1, found.Factor);
    }

    [Fact]
    public void Straight_below_a_wide_window_only_the_way_around_counts()
    {
        Farthest found = FarthestKernel.Search([new BareSpot(500, 650, 500, 50, false, 1)], Panel, 2);
        Assert.InRange(found.FoundMm, 598, 600);
        Assert.InRange(found.AtMostMm, 600, 602);
        Assert.InRange(found.Y, 0, 2);
        Assert.Equal(0, found.AlongMm);
    }

    [Fact]
    public void A_disc_is_left_at_its_rim_towards_the_point()
    {
        Farthest found = FarthestKernel.Search([new BareSpot(0, 0, 70, 70, true, 1)], Panel, 1e-6);
        double whole = double.Hypot(1000, 700);
        Near.Equal(whole - 70, found.FoundMm, 0, absolute: 2e-6);
        Near.Equal(1000 * (1 - (70 / whole)), found.AlongMm, 0, absolute: 1e-5);
        Near.Equal(700 * (1 - (70 / whole)), found.AroundMm, 0, absolute: 1e-5);
    }

    // Girth 600 mm: from the named line half way round, from 50 mm beside it to 350 mm, whichever way is nearer.
    [Theory]
    [InlineData(0, 300)]
    [InlineData(50, 350)]
    [InlineData(590, 290)]
    public void Round_a_pipe(double at, double opposite)
    {
        Farthest found = FarthestKernel.Search([new BareSpot(500, at, 500, 30, false, 1)], Round, 2);
        Assert.InRange(found.FoundMm, 268, 270);
        Assert.InRange(found.AtMostMm, 270, 272);
        Assert.InRange(found.Y, opposite - 2, opposite + 2);
    }

    [Fact]
    public void Of_a_surface_that_is_all_window_no_point_is_far()
    {
        foreach (bool disc in new[] { false, true })
        {
            Farthest found = FarthestKernel.Search([new BareSpot(500, 350, 5000, 5000, disc, 1)], Panel, 5);
            Assert.Equal(0, found.FoundMm);
            Assert.InRange(found.AtMostMm, 0, 5);
        }
    }

    [Fact]
    public void Between_two_windows_the_middle()
    {
        // Strips across the ends of a panel of 300 x 10 mm: 100 mm from each.
        var panel = new UnrolledSurface(new RectangularPanel(Mm(300), Mm(10)));
        Farthest found = FarthestKernel.Search(
            [new BareSpot(20, 5, 30, 5, false, 1), new BareSpot(270, 5, 20, 5, false, 1)], panel, 0.1);
        Assert.InRange(found.FoundMm, 99.9, 100);
        Assert.InRange(found.AtMostMm, 100, 100.1);
        Assert.InRange(found.X, 149.9, 150.1);
    }

    [Property]
    public void The_place_found_lies_just_so_far_from_its_nearest_window(int seed)
    {
        var random = new Random(seed);
        UnrolledSurface surface = LayoutCase.Surface(random);
        WindowLayout layout = LayoutCase.Make(random, surface, discs: true);
        if (layout.Windows.Count == 0)
        {
            return;
        }

        Farthest found = FarthestKernel.Search(layout.Spots.AsSpan(), surface, 0.5);
        Assert.InRange(found.AtMostMm - found.FoundMm, 0, 0.5);
        Assert.InRange(found.X, 0, surface.LengthMm);
        Assert.InRange(found.Y, 0, surface.GirthMm);
        double least = double.MaxValue;
        foreach (BareSpot spot in layout.Spots)
        {
            for (int turn = surface.IsClosed ? -2 : 0; turn <= (surface.IsClosed ? 2 : 0); turn++)
            {
                least = Math.Min(least, Distance(spot, turn * surface.GirthMm, surface, found.X, found.Y));
            }
        }

        Near.Equal(least, found.FoundMm, 1e-9, absolute: 1e-9);
        Near.Equal(found.FoundMm, double.Hypot(found.Factor * found.AlongMm, found.AroundMm), 1e-12);
    }

    // Along a straight line on the unrolled surface, taken by the root of the mean square of the factor.
    private static double Distance(BareSpot spot, double shift, UnrolledSurface surface, double x, double y)
    {
        double dx = Math.Abs(x - spot.X);
        double dy = Math.Abs(y - spot.Y - shift);
        double share = spot.IsRound ? 1 - Math.Min(1, 1 / double.Hypot(dx / spot.HalfX, dy / spot.HalfY)) : 0;
        (dx, dy) = spot.IsRound ? (dx * share, dy * share) : (Math.Max(0, dx - spot.HalfX), Math.Max(0, dy - spot.HalfY));
        double to = y - (Math.Sign(y - spot.Y - shift) * dy);
        double factor = !surface.IsBend ? 1 : dy == 0 ? surface.Factor(y, default(NoSteps)) : Math.Sqrt(GaussLegendreRule.Integrate(
            at => Math.Pow(surface.Factor(at, default(NoSteps)), 2), Math.Min(y, to), Math.Max(y, to), 32) / dy);
        return double.Hypot(factor * dx, dy);
    }
}
