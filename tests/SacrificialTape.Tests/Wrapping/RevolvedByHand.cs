using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips on cones and heads, small enough for paper or for a sum of thin slices.</summary>
public sealed class RevolvedByHand
{
    // From 1000 to 600 mm over 400 mm of slant: unrolled, its edges are circles of 1000 and 600 mm about the apex.
    private static readonly Meridian Cone = Meridian.Open(1000, 600, 400);
    private static readonly Meridian Ball = HemisphericalHead.FromOutside(Mm(2000), Length.Zero).Meridian;

    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    [InlineData(20)]
    public void Ends_lose_what_lies_between_a_square_cut_and_the_round_edge(double past)
    {
        double low = Slices(100, x => Sagitta(1000, x));
        double high = Slices(100, x => Math.Max(0, past - Sagitta(600, x)));
        Near.Equal((low + high) / 200, RevolvedKernel.TrimAtEndsMm(Cone, 200, 100, 100, past), 1e-6);
    }

    [Fact]
    public void Square_ends_lose_nothing_on_a_cylinder_nor_at_the_rim_of_a_head()
    {
        Assert.Equal(0, RevolvedKernel.TrimAtEndsMm(Meridian.Open(1000, 1000, 400), 200, 100, 100, 5));
        Assert.Equal(0, RevolvedKernel.TrimAtEndsMm(Ball, 200, 100, 100, 5));
    }

    // Twelve strips, two deep: half of two of them is 1/12 of a turn of the cone, over which the circle of 600 mm stands back by R (1 - cos).
    [Fact]
    public void A_strip_runs_past_the_small_end_as_far_as_its_own_edge_stands_back() =>
        Near.Equal(400 + (600 * (1 - Math.Cos(0.5 * 2 * Math.PI / 12))), RevolvedKernel.FullLengthMm(Cone, 0, 12, 2, default(NoSteps)), 1e-14);

    [Theory]
    [InlineData(true, 100, 10, 40)]
    [InlineData(true, 100, 40, 25)]
    [InlineData(false, 100, 10, 0)]
    public void The_disc_closes_half_a_width_less_a_lap_of_a_quarter_at_most(bool closes, double width, double lap, double opening) =>
        Assert.Equal(opening, RevolvedKernel.DiscOpeningMm(closes, width, lap, default(NoSteps)));

    // The edge of a disc of 100 mm lies on a circle of R sin(50/R); on a cone with a tip it is cut to fit.
    [Fact]
    public void A_disc_puckers_by_the_circle_it_lies_on()
    {
        double disc = 1 - (1000 * Math.Sin(0.05) / 50);
        Near.Equal(disc, RevolvedKernel.WithDisc(Ball, 100, 0, default(NoSteps)), 1e-9);
        Assert.Equal(0.01, RevolvedKernel.WithDisc(Ball, 100, 0.01, default(NoSteps)));
        Assert.Equal(0.01, RevolvedKernel.WithDisc(ConicalHead.FromOutside(Mm(1000), Mm(400), Length.Zero).Meridian, 100, 0.01, default(NoSteps)));
        Assert.Equal(0.01, RevolvedKernel.WithDisc(Cone, 100, 0.01, default(NoSteps)));
    }

    [Fact]
    public void Edges_that_meet_are_all_pucker()
    {
        Near.Equal(1 - Math.Cos(0.5), RevolvedKernel.Pucker(500, 1, default(NoSteps)), 1e-14);
        Near.Equal(1, RevolvedKernel.Pucker(2000, 1, default(NoSteps)), 1e-14);
    }

    // Half way up the cone the radius is 400 mm and changes by 0.25 mm for each millimetre of ring.
    [Fact]
    public void The_widest_ring_on_a_cone_is_held_by_the_smaller_limit()
    {
        Near.Equal(80, LatitudeRingKernel.WidestMm(Cone, 200, 0.05, 0.5), 1e-12);
        Near.Equal(80, LatitudeRingKernel.WidestMm(Cone, 200, 0.5, 0.05), 1e-12);
        Assert.Equal(double.PositiveInfinity, LatitudeRingKernel.WidestMm(Meridian.Open(1000, 1000, 400), 200, 0.05, 0.05));
    }

    // 100 mm on a ball of 1 m: the disc covers a cap of 40 mm along the meridian and is cut from a square.
    [Fact]
    public void The_disc_on_the_crown_is_cut_from_a_square_in_one_piece()
    {
        Strip disc = new GoreLay(HemisphericalHead.FromOutside(Mm(2000), Length.Zero), Stock(100), Mm(10)).Strips[^1];
        Assert.Equal((100, false), (Math.Round(disc.Length.Millimeters, 3), disc.MaySplice));
        Near.Equal(2 * Math.PI * 1000 * 1000 * (1 - Math.Cos(0.04)) / 100, disc.Cover.Millimeters, 0, absolute: 0.001);
        Near.Equal(100 * (1 - (Math.PI / 4)), disc.Trim.Millimeters, 0, absolute: 0.001);
    }

    private static double Sagitta(double radius, double x) => radius - Math.Sqrt((radius * radius) - (x * x));

    private static double Slices(double half, Func<double, double> height)
    {
        const int Count = 100_000;
        return 2 * half / Count * Enumerable.Range(0, Count).Sum(i => height(-half + (2 * half * (i + 0.5) / Count)));
    }
}
