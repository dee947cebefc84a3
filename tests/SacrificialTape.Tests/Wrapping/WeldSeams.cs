using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Lengths of weld seams against lines in space, and the strips along them.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 40)]
public sealed class WeldSeams
{
    [Theory]
    [InlineData(168.3, 168.3)]
    [InlineData(168.3, 168.2)]
    [InlineData(168.3, 114.3)]
    [InlineData(1000, 20)]
    public void A_saddle_seam_is_the_line_on_both_cylinders(double run, double branch)
    {
        const int Chords = 400_000;
        double sum = 0;
        for (int i = 0; i < Chords; i++)
        {
            (double x, double y, double z) = At(i);
            (double u, double v, double w) = At(i + 1);
            sum += Math.Sqrt(Math.Pow(x - u, 2) + Math.Pow(y - v, 2) + Math.Pow(z - w, 2));
        }

        Near.Equal(sum, new SaddleWelds(Mm(run), Mm(branch), 1).SeamLength.Millimeters, 1e-8);

        (double, double, double) At(int i)
        {
            double t = 2 * Math.PI * i / Chords;
            double y = branch / 2 * Math.Sin(t);
            return (branch / 2 * Math.Cos(t), y, Math.Sqrt(Math.Max(0, (run * run / 4) - (y * y))));
        }
    }

    [Fact]
    public void An_equal_branch_is_welded_along_an_ellipse_and_a_thin_one_along_its_circle()
    {
        // Two equal cylinders meet in two planes at 45 degrees: the seam is two halves of the mitre ellipse of a right angle.
        Near.Equal(
            new MitreWelds(Mm(168.3), Angle.FromDegrees(90), 1).SeamLength.Millimeters,
            new SaddleWelds(Mm(168.3), Mm(168.3), 1).SeamLength.Millimeters,
            1e-12);
        Near.Equal(Math.PI * 2, new SaddleWelds(Mm(10_000), Mm(2), 1).SeamLength.Millimeters, 1e-8);
    }

    [Property]
    public void A_mitre_seam_is_the_slanted_cut(SpanCase given)
    {
        double degrees = 1 + (170 * given.LapMm / given.WidthMm);
        double slope = Math.Tan(degrees * Math.PI / 360);
        const int Chords = 20_000;
        double sum = 0;
        for (int i = 0; i < Chords; i++)
        {
            double t = 2 * Math.PI * (i + 0.5) / Chords;
            sum += given.WidthMm / 2 * Math.Sqrt(1 + Math.Pow(slope * Math.Sin(t), 2)) * 2 * Math.PI / Chords;
        }

        Near.Equal(sum, new MitreWelds(Mm(given.WidthMm), Angle.FromDegrees(degrees), 1).SeamLength.Millimeters, 1e-10);
    }

    [Fact]
    public void Seams_of_fittings_and_vessels()
    {
        var bend = new MitredBend(Mm(168.3), Mm(300), Angle.FromDegrees(90), 3);
        Assert.Equal((3, 30), (MitreWelds.Of(bend).Count, MitreWelds.Of(bend).Turn.Degrees));
        var tee = new Tee(Mm(168.3), Mm(114.3), Mm(143), Mm(130));
        Assert.Equal(new SaddleWelds(Mm(168.3), Mm(114.3), 2), SaddleWelds.Of(tee, 2));
        var shell = new Shell(Mm(3000), Mm(6000), ShellAxis.Upright);
        var plates = new PlateWelds(shell, 4, 3);
        Assert.Equal((12, 1500), (plates.Count, plates.SeamLength.Millimeters));
        Assert.Equal(new GirthWelds(Mm(3000), 3), GirthWelds.BetweenCourses(shell, 4));
        Assert.Equal(new GirthWelds(Mm(3000), 2), GirthWelds.OfHead(FlatHead.FromOutside(Mm(3000), Mm(40)), 2));
        var fillets = FilletWelds.Along(CircularHollowSection.FromOutside(Mm(100), Mm(2500)), Mm(6), 4);
        Assert.Equal((4, 2500), (fillets.Count, fillets.SeamLength.Millimeters));
        Near.Equal(Math.Sqrt(72), fillets.Face.Millimeters, 1e-15);
    }

    [Fact]
    public void Strips_close_on_themselves_or_end_with_the_seam()
    {
        Strip mitre = WeldStrips.For(new MitreWelds(Mm(168.3), Angle.FromDegrees(30), 3), Stock(50), Mm(20));
        Near.Equal(20, mitre.Lap.Millimeters, 0, absolute: 0.002);
        Assert.False(mitre.MaySplice);
        Strip fillet = WeldStrips.For(new FilletWelds(Mm(2500), Mm(6), 4), Stock(50), Mm(20));
        Near.Equal(2500, fillet.Length.Millimeters, 1e-12);
        Assert.True(fillet.MaySplice);
        Assert.Contains("4 weld(s) along the corner", WeldStrips.Instruction(new FilletWelds(Mm(2500), Mm(6), 4), Stock(50), Mm(20)), StringComparison.Ordinal);
        Assert.Contains("lapped 20 mm on itself", WeldStrips.Instruction(new SaddleWelds(Mm(200), Mm(100), 1), Stock(50), Mm(20)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30, 12, 9, true)]
    [InlineData(32, 12, 10, false)]
    [InlineData(10, 12, -1, true)]
    public void A_strip_must_reach_beyond_the_weld_on_both_sides(double width, double face, double reach, bool said)
    {
        Near.Equal(reach, WeldStrips.Reach(Stock(width), Mm(face)).Millimeters, 1e-14);
        Assert.Equal(said, WeldStrips.Judge(Stock(width), Mm(face), RuleSet.Default, "W").Any(static one => one.Rule.Id == RuleIds.MinimumWeldReach));
    }

    [Fact]
    public void Wrong_seams() => Assert.Multiple(
        static () => Errors.Refused(static () => new SaddleWelds(Mm(100), Mm(101), 1), "branchDiameter", "at most 100 mm"),
        static () => Errors.Refused(static () => new MitreWelds(Mm(100), Angle.FromDegrees(180), 1), "turn", "less than 180 deg"),
        static () => Errors.Refused(static () => new PlateWelds(new Shell(Mm(3000), Mm(6000), ShellAxis.Lying), 0, 2), "courses", "at least 1"),
        static () => Errors.Refused(static () => new FilletWelds(Mm(2500), Mm(0), 1), "leg", "more than 0"),
        static () => Errors.Refused(static () => new FilletWelds(Mm(2500), Mm(5), 0), "count"),
        static () => Errors.Refused(static () => GirthWelds.BetweenCourses(new Shell(Mm(3000), Mm(6000), ShellAxis.Lying), 1), "courses", "at least 2"));
}
