using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class EdgesAndSupports
{
    [Fact]
    public void An_edge_by_hand()
    {
        // 2 m of edge, 30 + 20 + 5 wide.
        var edge = new SheetEdge(Mm(2000), Mm(5), Mm(30), Mm(20));
        Near.Equal(0.11, edge.Area.SquareMeters, 1e-15);
        Near.Equal(55, edge.StripWidth.Millimeters, 0);
        Near.Equal(0.11 - 0.0013, new SheetEdge(Mm(2000), Mm(5), Mm(30), Mm(20), 1).Area.SquareMeters, 1e-14);
        Assert.Equal("sheet edge 2 m long, 5 mm thick, reach 30 and 20 mm, 1 outside and 0 inside corner(s)", new SheetEdge(Mm(2000), Mm(5), Mm(30), Mm(20), 1).Description);
    }

    [Property]
    public void An_opening_is_an_edge_with_four_inside_corners(SpanCase given)
    {
        double w = 10 + given.SpanMm;
        double h = 10 + given.WidthMm;
        WindowOpening opening = WindowOpening.Rectangular(Mm(w), Mm(h), Mm(8), Mm(given.LapMm), Mm(25));
        Near.Equal(new SheetEdge(2 * (Mm(w) + Mm(h)), Mm(8), Mm(given.LapMm), Mm(25), 0, 4).Area.SquareMeters, opening.Area.SquareMeters, 1e-13);
        Near.Equal(2 * (w + h), opening.RimLength.Millimeters, 1e-14);

        // A frame is the larger panel less the opening; so is a ring.
        double frame = new RectangularPanel(Mm(w + 50), Mm(h + 50), [PanelOpening.Rectangular(Mm(w), Mm(h))]).Area.SquareMeters;
        Near.Equal(frame + (2 * (w + h) * 8 / 1e6), WindowOpening.Rectangular(Mm(w), Mm(h), Mm(8), Mm(0), Mm(25)).Area.SquareMeters, 1e-11);
        double ring = new AnnularPanel(Mm(h + 50), Mm(h)).Area.SquareMeters;
        Near.Equal(ring + (Math.PI * h * 8 / 1e6), WindowOpening.Circular(Mm(h), Mm(8), Mm(25), Mm(0)).Area.SquareMeters, 1e-12);
    }

    [Property]
    public void Reach_to_the_middle_covers_both_faces(SpanCase given)
    {
        double h = 10 + given.WidthMm;
        double w = h + given.SpanMm;
        SheetEdge edge = SheetEdge.AroundRectangle(Mm(w), Mm(h), Mm(8), Mm(h / 2), Mm(h / 2));
        Near.Equal(((2 * w * h) + (2 * (w + h) * 8)) / 1e6, edge.Area.SquareMeters, 1e-13);
        Near.Equal(9 * edge.Area.SquareMeters, SheetEdge.AroundRectangle(Mm(3 * w), Mm(3 * h), Mm(24), Mm(1.5 * h), Mm(1.5 * h)).Area.SquareMeters, 1e-13);
    }

    [Fact]
    public void A_strap_all_round()
    {
        var strap = new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromDegrees(360), Mm(0), StrapFaces.Both);
        Near.Equal(110 * Math.PI, strap.OuterFaceLength.Millimeters, 1e-14);
        Near.Equal(100 * Math.PI, strap.InnerFaceLength.Millimeters, 1e-14);
        Near.Equal(40 * 210 * Math.PI / 1e6, strap.Area.SquareMeters, 1e-14);
        var outer = new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromRadians(2 * Math.PI), Mm(0), StrapFaces.Outer);
        Near.Equal(40 * 110 * Math.PI / 1e6, outer.Area.SquareMeters, 1e-14);
        Assert.Equal("strap 40 x 5 mm, 360 deg round pipe 100 mm, outer face", outer.Description);

        // Half the wrap has half the bend; straight ends add to each face.
        var half = new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromDegrees(180), Mm(60), StrapFaces.Both);
        Near.Equal((40 * 105 * Math.PI / 1e6) + (2 * 40 * 60 / 1e6), half.Area.SquareMeters, 1e-14);
    }

    [Property]
    public void A_straight_column_is_a_pipe_and_a_tapered_one_a_reducer(SpanCase given)
    {
        double foot = 20 + given.WidthMm;
        Near.Equal(Pipe(foot, given.SpanMm).Area.SquareMeters, new TaperedColumn(Mm(foot), Mm(foot), Mm(given.SpanMm)).Area.SquareMeters, 1e-14);
        var column = new TaperedColumn(Mm(foot), Mm(foot / 2), Mm(given.SpanMm), new BasePlate(Mm(2 * foot), Mm(2 * foot), Mm(20), 4, Mm(foot / 4)));
        Near.Equal(new ConcentricReducer(Mm(foot), Mm(foot / 2), Mm(given.SpanMm)).Area.SquareMeters, column.WallArea.SquareMeters, 1e-15);
        double plate = new RectangularPanel(
            Mm(2 * foot), Mm(2 * foot), [PanelOpening.Circular(Mm(foot)), PanelOpening.Circular(Mm(foot / 4), 4)]).Area.SquareMeters + (8 * foot * 20 / 1e6);
        Near.Equal(plate, column.Area.SquareMeters - column.WallArea.SquareMeters, 1e-10, absolute: 1e-13 * column.Area.SquareMeters);
    }

    [Fact]
    public void A_hole_in_the_corner_of_a_plate()
    {
        // Half sides 300 and 300, foot 200: a hole of radius r touches sides and foot when (300 - r) sqrt(2) = 200 + r.
        double r = ((300 * Math.Sqrt(2)) - 200) / (1 + Math.Sqrt(2));
        _ = Column((2 * r) - 1e-6);
        Assert.Contains("no room on the plate", Assert.Throws<ArgumentException>(() => Column((2 * r) + 1e-3)).Message, StringComparison.Ordinal);
        Assert.Contains("no room", Assert.Throws<ArgumentException>(static () => new TaperedColumn(Mm(400), Mm(400), Mm(3000), new BasePlate(Mm(600), Mm(600), Mm(20), 1000, Mm(60)))).Message, StringComparison.Ordinal);

        static TaperedColumn Column(double hole) => new(Mm(400), Mm(400), Mm(3000), new BasePlate(Mm(600), Mm(600), Mm(20), 4, Mm(hole)));
    }

    [Fact]
    public void Washers_are_rings()
    {
        Near.Equal(12 * new AnnularPanel(Mm(50), Mm(26)).Area.SquareMeters, new Washer(Mm(50), Mm(26), 12).Area.SquareMeters, 1e-14);
        Assert.Equal("12 washer(s) 50 mm outside, 26 mm inside", new Washer(Mm(50), Mm(26), 12).Description);
    }

    [Fact]
    public void Straight_rows_by_hand()
    {
        WasherCutting cutting = Cut(50, 0, 50, 1000);
        Assert.Equal(WasherRows.Straight, cutting.Arrangement);
        Assert.Equal(20, cutting.Count);
        Near.Equal(20 * Math.PI / 4 * (2500 - 625) / 50_000, cutting.Yield.Fraction, 1e-14);

        // A hole that is next to nothing: pi / 4 of the strip.
        var disc = new WasherCutting(new Washer(Mm(50), Mm(1)), Mm(50), Mm(1000));
        Near.Equal(Math.PI / 4, disc.Yield.Fraction, 0.001);
    }

    [Fact]
    public void Staggered_rows_by_hand()
    {
        // Two rows 25 apart, washers of 50: half a step is sqrt(2500 - 625) = 43.301, so 11 and 11 in 975 mm, not 19 in one row.
        WasherCutting cutting = Cut(50, 0, 75, 975);
        Assert.Equal(WasherRows.Staggered, cutting.Arrangement);
        Assert.Equal(2, cutting.Rows);
        Near.Equal(2 * Math.Sqrt(1875), cutting.Step.Millimeters, 1e-14);
        Near.Equal(25, cutting.RowDistance.Millimeters, 0);
        Assert.Equal(11 + 11, cutting.Count);
        Assert.Equal(19, cutting.StraightCount);
    }

    [Property]
    public void Every_layout_keeps_its_washers_apart_and_on_the_strip(SpanCase given)
    {
        double washer = 5 + (given.WidthMm / 4);
        double gap = given.LapMm / 20;
        double length = washer + (given.SpanMm / 20);
        WasherCutting cutting = Cut(washer, gap, washer + (given.WidthMm * 0.7), length);
        var middles = new List<(double X, double Y)>();
        double step = cutting.Step.Millimeters;
        double edge = washer / 2;
        for (int row = 0; row < cutting.Rows; row++)
        {
            double y = edge + (row * cutting.RowDistance.Millimeters);
            double from = edge + (cutting.Arrangement == WasherRows.Staggered && row % 2 == 1 ? step / 2 : 0);
            for (int i = 0; from + (i * step) <= (length * (1 + 1e-9)) - edge; i++)
            {
                middles.Add((from + (i * step), y));
            }

            Assert.True(y <= cutting.StripWidth.Millimeters - edge + 1e-6);
        }

        Assert.Equal(cutting.Count, middles.Count);
        Assert.True(cutting.Count >= cutting.StraightCount);
        Assert.InRange(cutting.Yield.Fraction, 0, Math.PI / Math.Sqrt(12));
        if (middles.Count < 400)
        {
            for (int i = 0; i < middles.Count; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    double apart = double.Hypot(middles[i].X - middles[j].X, middles[i].Y - middles[j].Y);
                    Assert.True(apart >= (washer + gap) * (1 - 1e-8), $"{cutting}: {apart}");
                }
            }
        }
    }

    [Fact]
    public void Units_do_not_count()
    {
        WasherCutting metric = Cut(25.4, 2.54, 101.6, 3048);
        var inches = new WasherCutting(new Washer(Length.FromInches(1), Length.FromInches(0.5)), Length.FromInches(4), Length.FromFeet(10), Length.FromInches(0.1));
        Assert.Equal(metric, inches);
    }

    [Fact]
    public void A_measured_area_says_who_measured()
    {
        var area = new MeasuredArea(Area.FromSquareMeters(12), AreaAllowance.FromFraction(0.15), "valve bodies, paced out, backs not seen");
        Near.Equal(13.8, area.Area.SquareMeters, 1e-14);
        Assert.Equal(BasisKind.Judgement, area.Basis.Kind);
        Assert.Contains("valve bodies, paced out, backs not seen", area.ShowWorkings().ToString(), StringComparison.Ordinal);
        Assert.Equal("measured area 12 m2 with an allowance of 15 %: valve bodies, paced out, backs not seen", area.Description);
        Near.Equal(12, new MeasuredArea(Area.FromSquareMeters(12), AreaAllowance.FromFraction(0), "by the drawing").Area.SquareMeters, 0);
    }

    [Fact]
    public void Wrong_edges() => Assert.Multiple(
        static () => Errors.Refused(static () => SheetEdge.AroundRectangle(Mm(600), Mm(100), Mm(5), Mm(51), Mm(20)), "frontReach", "51 mm is outside", "at most 50 mm"),
        static () => Errors.Refused(static () => SheetEdge.AroundRectangle(Mm(600), Mm(100), Mm(5), Mm(20), Mm(51)), "backReach", "51 mm is outside", "at most 50 mm"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(400), Mm(5), Mm(51), Mm(20), 4), "frontReach", "51 mm is outside", "at most 50 mm"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(400), Mm(5), Mm(-1), Mm(20)), "frontReach", "-1 mm is outside"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(0), Mm(5), Mm(1), Mm(1)), "edgeLength", "0 mm is outside"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(10), Mm(0), Mm(1), Mm(1)), "thickness", "0 mm is outside"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(10), Mm(1), Mm(1), Mm(1), -1), "outsideCorners"),
        static () => Errors.Refused(static () => new SheetEdge(Mm(10), Mm(1), Mm(1), Mm(1), 0, -1), "insideCorners"),
        static () => Errors.Refused(static () => WindowOpening.Rectangular(Mm(0), Mm(10), Mm(5), Mm(1), Mm(1)), "clearWidth", "0 mm is outside"),
        static () => Errors.Refused(static () => WindowOpening.Circular(Mm(0), Mm(5), Mm(1), Mm(1)), "clearDiameter", "0 mm is outside"),
        static () => Errors.Refused(static () => WindowOpening.Circular(Mm(100), Mm(5), Mm(1), Mm(-1)), "backReach", "-1 mm is outside"));

    [Fact]
    public void Wrong_supports() => Assert.Multiple(
        static () => Errors.Refused(static () => new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromDegrees(361), Mm(0), StrapFaces.Both), "wrap", "361 deg is outside", "at most 360 deg"),
        static () => Errors.Refused(static () => new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.Zero, Mm(0), StrapFaces.Both), "wrap", "0 deg is outside"),
        static () => Errors.Refused(static () => new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromDegrees(90), Mm(-1), StrapFaces.Both), "straightEnds", "-1 mm is outside"),
        static () => Errors.Refused(static () => new PipeStrap(Mm(100), Mm(40), Mm(5), Angle.FromDegrees(90), Mm(0), (StrapFaces)5), "faces"),
        static () => Errors.Refused(static () => new TaperedColumn(Mm(300), Mm(301), Mm(1000)), "topOutsideDiameter", "301 mm is outside", "at most 300 mm"),
        static () => Errors.Refused(static () => new TaperedColumn(Mm(301), Mm(200), Mm(1000), new BasePlate(Mm(300), Mm(400), Mm(20), 0, Mm(0))), "footOutsideDiameter", "301 mm is outside", "at most 300 mm"),
        static () => Errors.Refused(static () => new BasePlate(Mm(300), Mm(400), Mm(20), 0, Mm(20)), "boltHoleDiameter", "20 mm is outside", "at most 0 mm"),
        static () => Errors.Refused(static () => new BasePlate(Mm(300), Mm(400), Mm(20), -1, Mm(20)), "boltHoles", "-1 is outside"));

    [Fact]
    public void Wrong_washers_and_areas() => Assert.Multiple(
        static () => Errors.Refused(static () => new Washer(Mm(50), Mm(50)), "insideDiameter", "50 mm is outside", "less than 50 mm"),
        static () => Errors.Refused(static () => new Washer(Mm(50), Mm(20), 0), "count", "0 is outside"),
        static () => Errors.Refused(static () => Cut(50, 0, 49, 1000), "stripWidth", "49 mm is outside", "at least 50"),
        static () => Errors.Refused(static () => Cut(50, 0, 50, 49), "stripLength", "49 mm is outside"),
        static () => Errors.Refused(static () => Cut(50, -1, 50, 50), "gap", "-1 mm is outside"),
        static () => Errors.Refused(static () => AreaAllowance.FromFraction(15), "value", "15 is outside", "write 0.15 for 15 %"),
        static () => Errors.Refused(static () => CuttingYield.FromFraction(1.01), "value", "1.01 is outside"),
        static () => Errors.Refused(static () => new MeasuredArea(Area.Zero, AreaAllowance.FromFraction(0.1), "note"), "measured", "0 m2 is outside"),
        static () => Assert.Equal("note", Assert.Throws<ArgumentException>(static () => new MeasuredArea(Area.FromSquareMeters(1), AreaAllowance.FromFraction(0.1), " ")).ParamName),
        static () => Assert.Throws<InvalidOperationException>(static () => new MeasuredArea(Area.FromSquareMeters(1), default, "note")));

    private static WasherCutting Cut(double washer, double gap, double width, double length) =>
        new(new Washer(Mm(washer), Mm(washer / 2)), Mm(width), Mm(length), Mm(gap));
}
