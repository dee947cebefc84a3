using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>How much of a window a strip is sure to touch: counted in squares of a millimetre, by hand where strips lean, and in slices on a bend.</summary>
[Properties(MaxTest = 20)]
public sealed class SteelUnderStrips
{
    private static readonly UnrolledSurface Panel = new(new RectangularPanel(Mm(100), Mm(100)));

    [Property]
    public void Of_upright_strips_it_is_every_square_that_no_strip_of_another_set_covers(int seed)
    {
        var random = new Random(seed);
        for (int i = 0; i < 30; i++)
        {
            SameAsCounted(random);
        }
    }

    // Round the named line: of a window from 16 to 22 mm on a girth of 20 mm, and of one from -2 to 4 mm.
    [Theory]
    [InlineData(19, 0, 5, 2)]
    [InlineData(1, 18, 20, 2)]
    [InlineData(1, 15, 19, 1)]
    [InlineData(19, 18, 23, 4)]
    [InlineData(1, 18, 38, 6)]
    public void A_window_on_the_named_line_is_one(int middle, int low, int high, int around)
    {
        UnrolledSurface pipe = LayoutCase.WholePipes.Single(static one => one.GirthMm == 20);
        var spot = new BareSpot(10, middle, 2, 3, false, 1);
        StripPiece[] pieces = [new(0, 0, 20, 20, low, high, 0, true), new(1, 0, 20, 20, 0, 20, 0, true)];
        var strips = new StripPieces(pieces, 2, pipe);
        Assert.Equal(4 * around, SteelContactKernel.TouchedMm2(strips, new(2), 0, spot, [0]));
        Assert.Equal(0, SteelContactKernel.TouchedMm2(strips, new(2), 0, spot, [0, 1]));
        Assert.Equal(24 - (4 * around), SteelContactKernel.TouchedMm2(strips, new(2), 1, spot, [0, 1]));
    }

    // On the inside of a bend of R = 600 and r = 200 mm the steel is half as long as along the outside. A strip of 50 mm over the
    // middle covers 100 mm of the outside's length there, from 550 on; one of 20 mm, 540 to 580. That leaves 70: 35 mm on the steel.
    [Fact]
    public void Inside_a_bend_strips_reach_twice_as_far_along()
    {
        var bend = new UnrolledSurface(new Bend(Mm(400), Mm(600), Angle.FromDegrees(90)));
        double inside = bend.GirthMm / 2;
        BareSpot spot = BareSpot.Of(ContactWindow.Rectangle(Mm(600), Mm(inside), Mm(60), Mm(0.01)), bend);
        Near.Equal(540, spot.LowX, 1e-12);
        StripPiece[] pieces =
        [
            new(0, 575, 50, 50, 100, 900, 0, true), new(1, 550, 20, 20, 100, 900, 0, true), new(2, 575, 50, 50, inside - 5, inside + 5, 1e-9, true),
        ];
        var strips = new StripPieces(pieces, 3, bend);
        Near.Equal(0.5, SteelContactKernel.TouchedMm2(strips, new(3), 0, spot, [0]), 1e-6);
        Near.Equal(0.35, SteelContactKernel.TouchedMm2(strips, new(3), 0, spot, [0, 1]), 1e-6);
        Near.Equal(0.05, SteelContactKernel.TouchedMm2(strips, new(3), 1, spot, [0, 1]), 1e-6);
        Near.Equal(0.35, SteelContactKernel.TouchedMm2(strips, new(3), 2, spot, [1, 2]), 1e-6);
        Near.Equal(0.05, SteelContactKernel.TouchedMm2(strips, new(3), 1, spot, [1, 2]), 1e-6);
    }

    // Rings of 50 mm every 10 mm: inside the bend each reaches 50 mm to both sides of its middle.
    [Fact]
    public void Inside_a_bend_rings_are_found_from_farther_off()
    {
        var bend = new UnrolledSurface(new Bend(Mm(400), Mm(600), Angle.FromDegrees(90)));
        BareSpot spot = BareSpot.Of(ContactWindow.Rectangle(Mm(600), Mm(bend.GirthMm / 2), Mm(2), Mm(2)), bend);
        StripPiece[] rings = [.. Enumerable.Range(0, 120).Select(i => new StripPiece(i, 10 * i, 50, 50, 0, bend.GirthMm, 0, true))];
        List<int> near = [];
        SteelContactKernel.Near(new StripPieces(rings, rings.Length, bend), spot, 50, near);
        Assert.Superset(Enumerable.Range(0, 120).Where(static i => Math.Abs((10 * i) + 25 - 600) <= 51).ToHashSet(), near.ToHashSet());
        Assert.InRange(near.Count, 11, 60);
    }

    private static void SameAsCounted(Random random)
    {
        UnrolledSurface surface = random.Next(3) == 0 ? new(new RectangularPanel(Mm(20), Mm(random.Next(12, 30)))) : LayoutCase.WholePipes[random.Next(LayoutCase.WholePipes.Count)];
        int girth = (int)surface.GirthMm;
        StripPiece[] pieces = [.. Enumerable.Range(0, random.Next(1, 7)).Select(i => Piece(random, i, girth, surface.IsClosed))];
        var strips = new StripPieces(pieces, pieces.Length, surface);
        var sets = new StripSets(pieces.Length);
        if (random.Next(2) == 0)
        {
            sets.Join(random.Next(pieces.Length), random.Next(pieces.Length));
        }

        int halfY = random.Next(1, girth / 2);
        int middle = random.Next(surface.IsClosed ? 0 : halfY, surface.IsClosed ? girth : girth - halfY + 1);
        var spot = new BareSpot(random.Next(3, 17), middle, random.Next(1, 5), halfY, false, 1);
        List<int> near = [7, 8, 9];
        SteelContactKernel.Near(strips, spot, 20, near);
        Assert.Equal(near.Distinct(), near);
        Assert.All(near, index => Assert.True(pieces[index].OnSteel));
        for (int i = 0; i < pieces.Length; i++)
        {
            int touched = 0;
            bool meets = false;
            foreach ((double x, double y) in Squares(spot, surface))
            {
                if (pieces[i].OnSteel && Covers(pieces[i], pieces[i].OwnAlong, x, y, surface))
                {
                    meets = true;
                    touched += pieces.Any(other => other.OnSteel && sets.RootOf(other.Strip) != sets.RootOf(pieces[i].Strip) && Covers(other, other.Along, x, y, surface)) ? 0 : 1;
                }
            }

            Assert.True(!meets || near.Contains(i));
            if (near.Contains(i))
            {
                Assert.Equal(touched, SteelContactKernel.TouchedMm2(strips, sets, i, spot, near));
            }
        }
    }

    [Fact]
    public void Leaning_strips_take_their_whole_overlap_from_each_other()
    {
        // At y the first covers x from y/2 to 40 + y/2, the second from 85 - y/2 on. Of the window, 30 to 70 by 40 to 60, the
        // first covers 35 mm on the mean; from y = 45 on the second takes y - 45 of it.
        var first = new StripPiece(0, 0, 40, 40, 0, 100, 0.5, true);
        var second = new StripPiece(1, 85, 40, 40, 0, 100, -0.5, true);
        var spot = new BareSpot(50, 50, 20, 10, false, 1);
        Near.Equal(700, Touched(spot, 0, first), 1e-14);
        Near.Equal(700 - 112.5, Touched(spot, 0, first, second), 1e-14);
        Near.Equal(700, Touched(spot, 0, first, second with { Strip = 0 }), 1e-14);

        // A strip twice takes twice, and never more than there is.
        Near.Equal(700 - 225, Touched(spot, 0, first, second, second with { Strip = 2 }), 1e-14);
        Assert.Equal(0, Touched(spot, 0, [first, .. Enumerable.Range(1, 7).Select(i => second with { Strip = i })]));

        // An upright strip over the window's right half, 50 to 70: the first keeps 30 to 50.
        var upright = new StripPiece(1, 50, 40, 40, 0, 100, 0, true);
        Near.Equal(400, Touched(spot, 0, first, upright), 1e-14);
        Near.Equal(400 - 300, Touched(spot, 1, first, upright), 1e-14);
    }

    [Fact]
    public void A_turn_of_a_spiral_touches_what_the_next_turn_leaves_it()
    {
        // Leaning back it keeps its right end, from 80 - y/2 on; leaning ahead its left, from 50 + y/2 on.
        var back = new StripPiece(0, 50, 40, 10, 0, 100, -0.5, true);
        Near.Equal(25, Touched(new BareSpot(37.5, 10, 37.5, 10, false, 1), 0, back), 1e-14);
        Near.Equal(200, Touched(new BareSpot(50, 10, 50, 10, false, 1), 0, back), 1e-14);
        var ahead = new StripPiece(0, 50, 40, 10, 0, 100, 0.5, true);
        Near.Equal(25, Touched(new BareSpot(27.5, 10, 27.5, 10, false, 1), 0, ahead), 1e-14);
        Near.Equal(200, Touched(new BareSpot(50, 10, 50, 10, false, 1), 0, ahead), 1e-14);
    }

    [Fact]
    public void Of_a_disc_only_what_lies_free()
    {
        // Radius 10: a strip to 6 mm beyond the middle, another from 6 mm before it on.
        var spot = new BareSpot(50, 50, 10, 10, true, 1);
        double segment = (100 * Math.Acos(0.6)) - (6 * 8);
        var first = new StripPiece(0, 0, 56, 56, 0, 100, 0, true);
        var second = new StripPiece(1, 44, 56, 56, 0, 100, 0, true);
        Near.Equal((100 * Math.PI) - segment, Touched(spot, 0, first), 1e-14);
        Near.Equal(segment, Touched(spot, 0, first, second), 1e-13);
        Near.Equal(segment, Touched(spot, 1, first, second), 1e-13);
    }

    [Property]
    public void On_a_bend_it_is_no_more_than_the_steel_in_slices_and_little_less(int seed)
    {
        var random = new Random(seed);
        var bend = new UnrolledSurface(new Bend(Mm(400), Mm(600), Angle.FromDegrees(90)));
        double girth = bend.GirthMm;
        double middle = random.NextDouble() * girth;
        BareSpot spot = BareSpot.Of(ContactWindow.Rectangle(Mm(600), Mm(middle), Mm(60), Mm(8)), bend);
        StripPiece Any(int strip)
        {
            double slope = random.Next(3) - 1;
            double low = random.NextDouble() * girth;
            double along = 40 + (random.NextDouble() * 80);

            // Leaning strips are short, so that their place at the window is near it.
            double around = slope == 0 ? girth * (0.5 + (random.NextDouble() / 2)) : 100;
            low = slope == 0 ? low : BareSpot.Turned(middle - 50, girth);
            return new(strip, 520 + (random.NextDouble() * 80) - (50 * slope), along, along, low, low + around, slope * 0.5, true);
        }

        StripPiece[] pieces = [Any(0), Any(1)];
        var strips = new StripPieces(pieces, 2, bend);
        List<int> near = [];
        SteelContactKernel.Near(strips, spot, 120, near);
        double touched = near.Contains(0) ? SteelContactKernel.TouchedMm2(strips, new(2), 0, spot, near) : 0;

        double steel = 0;
        const int Slices = 400;
        for (int i = 0; i < Slices; i++)
        {
            double y = spot.LowY + ((spot.HighY - spot.LowY) * (i + 0.5) / Slices);
            double factor = bend.Factor(y, default(NoSteps));
            (double low, double high) = At(pieces[0], y, factor, girth);
            (double otherLow, double otherHigh) = At(pieces[1], y, factor, girth);
            (low, high) = (Math.Max(low, spot.LowX), Math.Min(high, spot.HighX));
            double shared = Math.Max(0, Math.Min(high, otherHigh) - Math.Max(low, otherLow));
            steel += (Math.Max(0, high - low) - shared) * factor * (spot.HighY - spot.LowY) / Slices;
        }

        // Strips are taken as wide, and steel as long, as at one end of the window.
        double least = bend.LeastFactor(spot.LowY, spot.HighY);
        double most = bend.LargestFactor(spot.LowY, spot.HighY);
        double allowed = (8 * (pieces[0].Along + pieces[1].Along) * ((1 / least) - (1 / most))) + (steel * (1 - (least / most))) + 8;
        Assert.InRange(touched, steel - allowed, steel + 1);
    }

    private static double Touched(BareSpot spot, int index, params StripPiece[] pieces)
    {
        var strips = new StripPieces(pieces, pieces.Length, Panel);
        List<int> near = [];
        SteelContactKernel.Near(strips, spot, 0, near);
        return SteelContactKernel.TouchedMm2(strips, new StripSets(pieces.Length), index, spot, near);
    }

    private static StripPiece Piece(Random random, int strip, int girth, bool closed)
    {
        int lowX = random.Next(-3, 18);
        int along = random.Next(2, 22);
        int lowY = random.Next(girth - 1);
        int highY = random.Next(lowY + 1, (closed ? lowY + girth : girth) + 1);
        return new(strip, lowX, along, random.Next(3) == 0 ? along - 1 : along, lowY, highY, 0, random.Next(5) > 0);
    }

    // Middles of the squares of a window that lie on the surface.
    private static IEnumerable<(double X, double Y)> Squares(BareSpot spot, UnrolledSurface surface)
    {
        for (double x = spot.LowX + 0.5; x < spot.HighX; x++)
        {
            for (double y = spot.LowY + 0.5; y < spot.HighY; y++)
            {
                if (x > 0 && x < surface.LengthMm)
                {
                    yield return (x, y);
                }
            }
        }
    }

    private static bool Covers(StripPiece piece, double along, double x, double y, UnrolledSurface surface) =>
        x > piece.X && x < piece.X + along
        && Enumerable.Range(-4, 9).Any(turn => (turn == 0 || surface.IsClosed) && y > piece.LowY + (turn * surface.GirthMm) && y < piece.HighY + (turn * surface.GirthMm));

    // From where to where along a strip lies at a place around, as wide on the steel as at the outside.
    private static (double Low, double High) At(StripPiece piece, double y, double factor, double girth)
    {
        for (int turn = -2; turn <= 2; turn++)
        {
            double low = piece.LowY + (turn * girth);
            if (y >= low && y <= piece.HighY + (turn * girth))
            {
                double middle = piece.X + (piece.Along / 2) + (piece.Slope * (y - low));
                return (middle - (piece.Along / 2 / factor), middle + (piece.Along / 2 / factor));
            }
        }

        return (0, 0);
    }
}
