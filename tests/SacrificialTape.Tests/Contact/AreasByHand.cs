namespace SacrificialTape.Tests.Contact;

/// <summary>Areas that flat shapes share, worked out by hand.</summary>
public sealed class AreasByHand
{
    private static readonly (double X, double Y)[] Square = [(0, 0), (4, 0), (4, 4), (0, 4)];

    // x + y at most c: a corner of the square, its half, all but a corner.
    [Theory]
    [InlineData(-1, 0, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(2, 2, 3)]
    [InlineData(4, 8, 3)]
    [InlineData(6, 14, 5)]
    [InlineData(8, 16, 4)]
    [InlineData(9, 16, 4)]
    public void A_square_cut_across_its_corners(double most, double area, int corners)
    {
        Span<(double X, double Y)> left = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        Square.CopyTo(left);
        int count = ClipKernel.Cut(left, 4, 1, 1, most);
        Assert.Equal((corners, area), (count, ClipKernel.Area(left[..count])));

        // The other way round as well, and from the other side what is missing.
        (left[0], left[1], left[2], left[3]) = (Square[3], Square[2], Square[1], Square[0]);
        Assert.Equal(area, ClipKernel.Area(left[..ClipKernel.Cut(left, 4, 1, 1, most)]));
        Square.CopyTo(left);
        Assert.Equal(16 - area, ClipKernel.Area(left[..ClipKernel.Cut(left, 4, -1, -1, -most)]));
    }

    [Fact]
    public void Cuts_meet_where_they_cross()
    {
        // y at most 1 + x/2, of the square: from (0, 1) to (4, 3).
        Span<(double X, double Y)> left = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        Square.CopyTo(left);
        int count = ClipKernel.Cut(left, 4, -0.5, 1, 1);
        Assert.Equal([(0, 1), (0, 0), (4, 0), (4, 3)], left[..count].ToArray());
        Assert.Equal(0, ClipKernel.Cut(left, 0, 1, 1, 1));
    }

    [Fact]
    public void A_triangle_has_half_of_base_times_height() => Assert.Equal(9, ClipKernel.Area([(1, 1), (7, 1), (3, 4)]));

    // A disc of radius 5 about (20, 30): whole, half, quarter, a segment 1 mm high, a strip through the middle, nothing.
    [Fact]
    public void A_disc_over_rectangles()
    {
        const double Whole = Math.PI * 25;
        double segment = (25 * Math.Acos(0.8)) - (4 * 3);
        Near.Equal(Whole, InDisc((0, 0), (40, 60)), 1e-15);
        Near.Equal(Whole / 2, InDisc((20, 0), (40, 60)), 1e-15);
        Near.Equal(Whole / 4, InDisc((0, 0), (20, 30)), 1e-15);
        Near.Equal(segment, InDisc((24, 0), (40, 60)), 1e-14);
        Near.Equal(Whole - segment, InDisc((0, 0), (24, 60)), 1e-14);
        Near.Equal(Whole - (2 * segment), InDisc((16, 0), (24, 60)), 1e-14);
        Near.Equal(Whole - (4 * segment), InDisc((16, 26), (24, 34)), 1e-14);
        Near.Equal(24, InDisc((16, 28.5), (24, 31.5)), 1e-14);
        Near.Equal(12, InDisc((20, 30), (24, 33)), 1e-14);
        Near.Equal(2, InDisc((21, 31), (22, 33)), 1e-14);
        Near.Equal(0, InDisc((25, 0), (40, 60)), 0, absolute: 1e-13);
        Near.Equal(0, InDisc((30, 0), (40, 60)), 0, absolute: 1e-13);
        Near.Equal(0, InDisc((24.5, 34.5), (40, 60)), 0, absolute: 1e-13);
    }

    [Fact]
    public void An_ellipse_is_a_disc_drawn_out()
    {
        // Half axes 10 and 5: twice what the disc shares with the rectangle pressed together.
        double segment = (25 * Math.Acos(0.8)) - 12;
        Span<(double X, double Y)> corners = [(28, 0), (60, 0), (60, 60), (28, 60)];
        Near.Equal(2 * segment, ClipKernel.AreaInEllipse(corners, 20, 30, 10, 5), 1e-14);
        corners = [(0, 34), (60, 34), (60, 60), (0, 60)];
        Near.Equal(2 * segment, ClipKernel.AreaInEllipse(corners, 20, 30, 10, 5), 1e-14);
    }

    [Fact]
    public void Corners_may_run_either_way_round_and_stand_twice()
    {
        Span<(double X, double Y)> other = [(20, 60), (40, 60), (40, 0), (20, 0)];
        Near.Equal(Math.PI * 12.5, ClipKernel.AreaInEllipse(other, 20, 30, 5, 5), 1e-15);
        Span<(double X, double Y)> twice = [(20, 0), (20, 0), (40, 0), (40, 60), (40, 60), (20, 60)];
        Near.Equal(Math.PI * 12.5, ClipKernel.AreaInEllipse(twice, 20, 30, 5, 5), 1e-15);
    }

    private static double InDisc((double X, double Y) low, (double X, double Y) high)
    {
        Span<(double X, double Y)> corners = [low, (high.X, low.Y), high, (low.X, high.Y)];
        return ClipKernel.AreaInEllipse(corners, 20, 30, 5, 5);
    }
}
