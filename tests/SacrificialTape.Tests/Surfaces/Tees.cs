using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

public sealed class Tees
{
    public static TheoryData<double> Ratios => [0.01, 0.03, 0.1, 0.3, 0.5, 0.7, 0.9, 0.99, 0.9999, 0.99999999, 1];

    [Theory]
    [MemberData(nameof(Ratios))]
    public void Area_is_what_heights_and_strips_add_up_to(double ratio)
    {
        // Strips along the run, of the hole; strips up the branch, from saddle to end: no elliptic integral.
        double run = 500;
        double branch = 500 * ratio;
        double hole = Math.PI * branch * branch * SurfaceOfRevolution.Integral(u =>
        {
            // y = r sin t, t from -90 to 90 deg; the cosine is taken from the nearer end, to keep its digits.
            double cosine = Math.Sin(Math.PI * Math.Min(u, 1 - u));
            double away = (run - branch) * (run + branch);
            return 2 * run * cosine * cosine / Math.Sqrt(away + (branch * branch * cosine * cosine) + 1e-300);
        });
        double wall = 2 * Math.PI * branch * SurfaceOfRevolution.Integral(u =>
        {
            double cosine = Math.Sin(Math.PI * Math.Min(u, 1 - u));
            double away = (run - branch) * (run + branch);
            return 900 - Math.Sqrt(away + (branch * branch * cosine * cosine));
        });
        double whole = (2 * Math.PI * run * 1600) - hole + wall;
        Near.Equal(whole, Area(2 * run, 2 * branch, 800, 900) * 1e6, 1e-12, "area");
    }

    [Theory]
    [MemberData(nameof(Ratios))]
    public void The_hole_lies_between_its_plan_and_its_plan_at_the_steepest_edge(double ratio)
    {
        double hole = TeeKernel.HoleSquareMeters(1000, 1000 * ratio, default(NoSteps)) * 1e6;
        double plan = Math.PI * 250_000 * ratio * ratio;
        Assert.InRange(hole, plan * (1 - 1e-14), plan * 4 / Math.PI * (1 + 1e-14));
    }

    [Fact]
    public void An_equal_tee_in_closed_form()
    {
        // pi D (2 C + M) - 2 D^2: from the vault of two equal cylinders, whose whole surface is 16 R^2.
        double expected = (Math.PI * 168.3 * ((2 * 143) + 143)) - (2 * 168.3 * 168.3);
        Near.Equal(expected / 1e6, Area(168.3, 168.3, 143, 143), 1e-15);
    }

    [Fact]
    public void A_vanishing_branch_leaves_the_run()
    {
        // What a branch of the least diameter adds is its wall less its hole.
        double run = Pipe(1000, 1600).Area.SquareMeters;
        double added = Area(1000, 1, 800, 900) - run;
        Near.Equal(((Math.PI * 1 * (900 - 500)) - (Math.PI * 0.25)) / 1e6, added, 1e-6);
        Assert.True(added / run < 0.001);
    }

    [Fact]
    public void Twice_the_size_has_four_times_the_area() =>
        Near.Equal(4 * Area(168.3, 88.9, 143, 124), Area(336.6, 177.8, 286, 248), 1e-14);

    [Fact]
    public void Each_length_adds_area()
    {
        Near.Equal(Math.PI * 88.9 / 1e6, Area(168.3, 88.9, 143, 125) - Area(168.3, 88.9, 143, 124), 1e-9);
        Near.Equal(2 * Math.PI * 168.3 / 1e6, Area(168.3, 88.9, 144, 124) - Area(168.3, 88.9, 143, 124), 1e-9);
    }

    [Fact]
    public void Area_grows_with_the_branch_while_its_wall_outweighs_its_hole()
    {
        double[] areas = [.. new[] { 0.01, 0.1, 0.2, 0.4, 0.6, 0.8, 1 }.Select(static ratio => Area(1000, 1000 * ratio, 800, 1500))];
        Assert.Equal(areas.Order(), areas);
    }

    [Fact]
    public void Units_do_not_matter() => Assert.Equal(
        new Tee(Mm(254), Mm(127), Mm(203.2), Mm(177.8)),
        new Tee(Length.FromInches(10), Length.FromInches(5), Length.FromInches(8), Length.FromMeters(0.1778)));

    [Fact]
    public void Sides_of_the_branch_by_hand()
    {
        // 3-4-5: run 100, branch 60, so the saddle lies between 40 and 50 above the axis.
        var tee = new Tee(Mm(100), Mm(60), Mm(90), Mm(85));
        Near.Equal(35, tee.BranchShortSide.Millimeters, 1e-15);
        Near.Equal(45, tee.BranchLongSide.Millimeters, 1e-15);
    }

    [Fact]
    public void By_size_the_lengths_carry_their_mark()
    {
        var equal = new Tee(PipeSize.FromNps("6"), PipeSize.FromNps("6"));
        var reducing = new Tee(PipeSize.FromNps("6"), PipeSize.FromNps("4"));
        Assert.Equal((143, 143), (equal.RunCentreToEnd.Millimeters, equal.BranchCentreToEnd.Millimeters));
        Assert.Equal((143, 130), (reducing.RunCentreToEnd.Millimeters, reducing.BranchCentreToEnd.Millimeters));
        Assert.Equal(BasisKind.Published, equal.LengthBasis!.Kind);
        Assert.Equal(BasisKind.Recalled, reducing.LengthBasis!.Kind);
        Assert.Contains("recalled, check before use", reducing.ShowWorkings().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_tee_of_the_table_can_be_made()
    {
        foreach (FittingTable.Row row in FittingTable.Rows)
        {
            Assert.True(new Tee(PipeSize.FromNps(row.Nps), PipeSize.FromNps(row.Nps)).Area.SquareMeters > 0);
        }

        foreach (FittingTable.Reduced row in FittingTable.ReducedRows)
        {
            var tee = new Tee(PipeSize.FromNps(row.Run), PipeSize.FromNps(row.Branch));
            Assert.True(tee.BranchCentreToEnd.Millimeters <= tee.RunCentreToEnd.Millimeters);
        }
    }

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new Tee(Mm(100), Mm(114.3), Mm(105), Mm(105)), "branchDiameter", "114.3 mm is outside", "at most 100 mm"),
        static () => Errors.Refused(static () => new Tee(Mm(100), Mm(60), Mm(29), Mm(105)), "runCentreToEnd", "29 mm is outside", "at least 30 "),
        static () => Errors.Refused(static () => new Tee(Mm(100), Mm(60), Mm(90), Mm(49)), "branchCentreToEnd", "49 mm is outside", "at least 50 "),
        static () => Errors.Refused(static () => new Tee(Mm(0), Mm(0), Mm(90), Mm(49)), "runDiameter", "0 mm is outside"));

    private static double Area(double run, double branch, double c, double m) =>
        new Tee(Mm(run), Mm(branch), Mm(c), Mm(m)).Area.SquareMeters;
}
