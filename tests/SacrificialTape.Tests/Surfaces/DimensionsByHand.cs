namespace SacrificialTape.Tests.Surfaces;

/// <summary>Sections, plates and washers small enough to be worked out on paper.</summary>
public sealed class DimensionsByHand
{
    // r tan(b/2): 12 tan 30 degrees is 4 sqrt 3, and 6 tan 60 degrees is 6 sqrt 3.
    [Fact]
    public void A_side_loses_what_its_round_corners_take() =>
        Near.Equal(100 - (10 * Math.Sqrt(3)), SectionKernel.FaceMm(100, 12, 60, 6, 120, default(NoSteps)), 1e-14);

    // Three washers of 20 mm with 10 mm between them fill 80 mm to its end.
    [Fact]
    public void The_last_washer_of_a_row_needs_no_gap_behind_it()
    {
        WasherLayout layout = WasherKernel.Straight(20, 10, 50, 80, default(NoSteps));
        Assert.Equal((2, 6L), (layout.Rows, layout.Count));
    }

    // On a long plate a hole is held by the narrow side; on a square one with a foot of r in its middle, (a - r')^2 x 2 = (r + r')^2.
    [Fact]
    public void The_largest_hole_in_a_corner_is_held_by_side_or_foot()
    {
        Assert.Equal(200, SupportKernel.CornerHoleMm(10, Plate(200, 2000)), 1e-12);
        Assert.Equal(200, SupportKernel.CornerHoleMm(10, Plate(2000, 200)), 1e-12);
        double hole = SupportKernel.CornerHoleMm(60, Plate(200, 200)) / 2;
        Near.Equal(hole + 30, Math.Sqrt(2) * (100 - hole), 1e-14);
    }

    private static BasePlate Plate(double width, double depth) => new(
        Length.FromMillimeters(width), Length.FromMillimeters(depth), Length.FromMillimeters(20), 0, Length.Zero);
}
