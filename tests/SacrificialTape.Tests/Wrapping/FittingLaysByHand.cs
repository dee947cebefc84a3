namespace SacrificialTape.Tests.Wrapping;

/// <summary>Tees, mitred bends, spirals and sections with sides of 3, 4 and 5, or as a sum of thin slices.</summary>
public sealed class FittingLaysByHand
{
    // Over a girth of 100 mm lie 80 mm along the strip and 60 mm across it.
    [Fact]
    public void Beyond_the_square_end_of_a_spiral_a_right_triangle_is_bare() =>
        Assert.Equal(2400, SpiralKernel.EndWedgeMm2(new SpiralSolution(100, 70, 75, 60)), 1e-9);

    // 200 and 120 mm: the saddle line comes down to 80 mm above the run's axis, four fifths of its radius.
    [Fact]
    public void A_flap_reaches_square_to_the_line_where_it_is_steepest() =>
        Near.Equal(30 * Math.Sqrt(2 / 1.8), TeeLayKernel.FlapMm(30, 120, 200, default(NoSteps)), 1e-14);

    [Fact]
    public void Half_the_hole_is_an_arc_of_the_run_and_nothing_beside_the_branch()
    {
        Near.Equal(100 * Math.Asin(0.6), TeeLayKernel.HalfHoleMm(200, 120, 0), 1e-14);
        Near.Equal(100 * Math.Asin(0.48), TeeLayKernel.HalfHoleMm(200, 120, 36), 1e-14);
        Assert.Equal(0, TeeLayKernel.HalfHoleMm(200, 120, 60));
        Assert.Equal(0, TeeLayKernel.HalfHoleMm(200, 120, 70));
    }

    [Theory]
    [InlineData(0, 80, 100)]
    [InlineData(0, 85, 95)]
    [InlineData(3, 78, 90)]
    [InlineData(3, 70, 76)]
    [InlineData(0, 101, 110)]
    public void What_a_band_of_the_branch_covers_ends_at_the_saddle_line_less_the_flap(double flap, double from, double to)
    {
        const int Slices = 400_000;
        double sum = 0;
        for (int i = 0; i < Slices; i++)
        {
            double sine = Math.Sin(2 * Math.PI * (i + 0.5) / Slices);
            double line = (100 * Math.Sqrt(1 - (0.36 * sine * sine))) - flap;
            sum += Math.Clamp(line, from, to) - from;
        }

        Near.Equal(sum * Math.PI * 120 / Slices, TeeLayKernel.BelowMm2(200, 120, flap, from, to), 1e-6, absolute: 1e-9);
    }

    // An equal tee: the hole in the run is the square on its diameter.
    [Fact]
    public void The_hole_of_an_equal_tee_is_a_square() =>
        Near.Equal(200 * 200, TeeLayKernel.HoleMm2(200, 200, -100, 100), 1e-9);

    [Fact]
    public void The_smallest_lap_counts_wherever_it_is()
    {
        foreach (double[] laps in new double[][] { [1, 4, 4, 4], [4, 1, 4, 4], [4, 4, 1, 4], [4, 4, 4, 1] })
        {
            Assert.Equal(1, TeeLayKernel.LeastLapMm(laps[0], laps[1], laps[2], laps[3], default(NoSteps)));
            Assert.Equal(laps[2] == 1 ? 2 : 1, MitredBendKernel.LeastLapMm(laps[0], laps[1], laps[2], laps[3], default(NoSteps)));
        }
    }

    // Two strips of 60 mm round 90 mm: 20 mm of lap inside, 10 mm where the outline begins anew, which a hand that wanders by 15 mm opens.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(9, 1)]
    [InlineData(15, 0)]
    public void The_lap_where_the_outline_begins_anew_counts_like_any_other(double wander, double layers) =>
        Assert.Equal(layers, SectionLayKernel.Layers(1, [(0, 60), (40, 100)], 60, 90, wander, default(NoSteps)));

    [Fact]
    public void The_least_number_of_strips_is_by_what_each_adds() =>
        Assert.Equal(5, SectionLayKernel.LeastCount(410, 100, 10, default(NoSteps)));
}
