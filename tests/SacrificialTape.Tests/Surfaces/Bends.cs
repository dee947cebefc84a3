using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

/// <summary>Bends between their limits: the pipe that never turns, and the mitred bend with ever more joints.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class Bends
{
    [Property]
    public void The_area_is_that_of_the_surface_summed_piece_by_piece(BendCase given)
    {
        // Rings of the tube, each r dpsi wide and (R + r cos psi) phi long: no use of Pappus.
        double tube = given.DiameterMm / 2;
        double sum = 0;
        const int Pieces = 720;
        for (int i = 0; i < Pieces; i++)
        {
            double psi = (i + 0.5) * 2 * Math.PI / Pieces;
            sum += (given.RadiusMm + (tube * Math.Cos(psi))) * given.Degrees * Math.PI / 180 * tube * 2 * Math.PI / Pieces;
        }

        Near.Equal(sum / 1e6, given.Bend().Area.SquareMeters, 1e-9);
    }

    [Property]
    public void A_bend_that_hardly_turns_is_a_pipe(SpiralCase given)
    {
        double radius = given.HeightMm * 1e5;
        var bend = new Bend(Mm(given.DiameterMm), Mm(Math.Min(radius, 1e8)), Angle.FromRadians(given.HeightMm / Math.Min(radius, 1e8)));
        Near.Equal(Pipe(given.DiameterMm, given.HeightMm).Area.SquareMeters, bend.Area.SquareMeters, 1e-9);
        Near.Equal(given.HeightMm, bend.OutsideArc.Millimeters, given.DiameterMm / Math.Min(radius, 1e8));
    }

    [Property]
    public void Two_bends_in_a_row_are_one_of_the_sum(BendCase given)
    {
        var half = new Bend(Mm(given.DiameterMm), Mm(given.RadiusMm), Angle.FromDegrees(given.Degrees / 2));
        Near.Equal(given.Bend().Area.SquareMeters, 2 * half.Area.SquareMeters, 1e-12);
        Near.Equal(given.Bend().OutsideArc.Millimeters, 2 * half.OutsideArc.Millimeters, 1e-12);
    }

    [Property]
    public void A_mitred_bend_is_never_smaller_than_the_smooth_one_and_tends_to_it(BendCase given)
    {
        double smooth = given.Bend().Area.SquareMeters;
        double before = double.MaxValue;
        foreach (int joints in new[] { 2, 3, 5, 10, 50 })
        {
            double area = new MitredBend(Mm(given.DiameterMm), Mm(given.RadiusMm), Angle.FromDegrees(given.Degrees), joints).Area.SquareMeters;
            Assert.True(area >= smooth * (1 - 1e-12) && area <= before * (1 + 1e-12));
            before = area;
        }

        Near.Equal(smooth, before, 1e-3);
    }

    [Property]
    public void A_mitred_bend_is_its_pieces_measured_along_every_line_of_the_pipe(BendCase given)
    {
        // Each half piece runs from its middle to a plane through the centre of the bend: along the line at psi it is
        // (R + r cos psi) tan(half the angle of a joint) long.
        const int Joints = 3;
        const int Lines = 360;
        double tube = given.DiameterMm / 2;
        double sum = 0;
        for (int i = 0; i < Lines; i++)
        {
            double length = (given.RadiusMm + (tube * Math.Cos((i + 0.5) * 2 * Math.PI / Lines))) * Math.Tan(given.Degrees * Math.PI / 180 / (2 * Joints));
            sum += 2 * Joints * length * tube * 2 * Math.PI / Lines;
        }

        var bend = new MitredBend(Mm(given.DiameterMm), Mm(given.RadiusMm), Angle.FromDegrees(given.Degrees), Joints);
        Near.Equal(sum / 1e6, bend.Area.SquareMeters, 1e-9);
    }

    [Fact]
    public void A_bend_that_would_cut_itself_is_refused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(static () => new Bend(Mm(168.3), Mm(84.15), Angle.FromDegrees(90)));
        Assert.Equal("bendRadius", refused.ParamName);
        Assert.Contains("84.15 mm is outside the accepted range: more than 84.15", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-90)]
    [InlineData(361)]
    public void An_angle_that_is_none_is_refused(double degrees) => Assert.Equal(
        "angle",
        Assert.Throws<ArgumentOutOfRangeException>(() => new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(degrees))).ParamName);

    [Fact]
    public void Small_elbows_must_state_their_radius() => Assert.Contains(
        "0.5 NPS is outside the accepted range: at least 1 NPS (below, state the radius)",
        Assert.Throws<ArgumentOutOfRangeException>(static () => Bend.LongRadius(PipeSize.FromNps("1/2"), Angle.FromDegrees(90))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_joint_turns_less_than_half_round() => Assert.Equal(
        "angle",
        Assert.Throws<ArgumentOutOfRangeException>(static () => new MitredBend(Mm(100), Mm(150), Angle.FromDegrees(180), 1)).ParamName);
}
