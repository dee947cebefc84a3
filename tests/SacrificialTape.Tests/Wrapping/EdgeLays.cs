using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips folded over edges: bands, tabs and patches placed on the sheet, and every spot of the edge counted.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 100)]
public sealed class EdgeLays
{
    private static readonly (double X, double Y)[] Sheet = [(0, 0), (900, 0), (900, 700), (0, 700)];
    private static readonly (double X, double Y)[] Notched = [(0, 0), (900, 0), (900, 400), (500, 400), (500, 700), (0, 700)];
    private static readonly (double X, double Y)[] Slotted = [(0, 0), (900, 0), (900, 700), (600, 700), (600, 350), (300, 350), (300, 700), (0, 700)];

    [Property]
    public void Every_spot_of_an_edge_lies_under_a_strip(byte front, byte back, byte thickness, byte extra, byte lap, byte wandered, byte shape)
    {
        (double X, double Y)[] corners = new[] { Sheet, Notched, Slotted, Window(500, 300) }[shape % 4];
        double a = front % 140;
        double b = back % 140;
        double t = 1 + (thickness % 30);
        double o = lap % 30;
        double wander = wandered % 20;
        LayChoices choices = Choices(wander, o);
        StripStock stock = Stock(Math.Max(a + b + t + (extra % 60), Math.Max(a, b) + o));
        EdgeLay lay = shape % 4 == 3
            ? EdgeLay.OfOpening(WindowOpening.Rectangular(Mm(500), Mm(300), Mm(t), Mm(a), Mm(b)), stock, choices)
            : EdgeLay.OfSheet(Edge(corners, a, b, t), stock, Sides(corners), choices);
        Assert.Equal(o >= wander ? 1 : 0, lay.LayersEverywhere);
        Assert.True(LeastOnFace(corners, lay.FrontReach.Millimeters, a, o) >= 1);
        Assert.True(LeastOnFace(corners, lay.BackReach.Millimeters, b, o) >= 1);
        if (t > 0)
        {
            Assert.Equal(lay.LayersEverywhere, LeastOnThickness(corners, lay, wander));
        }
    }

    [Property]
    public void Ledgers_close_on_the_area_of_the_edge(byte front, byte back, byte extra, byte lap, byte shape)
    {
        (double X, double Y)[] corners = new[] { Sheet, Notched, Slotted }[shape % 3];
        double a = front % 140;
        double b = back % 140;
        double w = Math.Max(a + b + 8 + (extra % 60), Math.Max(a, b) + (lap % 30));
        SheetEdge edge = Edge(corners, a, b, 8);
        EdgeLay lay = EdgeLay.OfSheet(edge, Stock(w), Sides(corners), Choices(0, lap % 30, 1 + (extra % 2)));
        double pieces = lay.Strips.Sum(static strip => strip.Count);
        Near.Equal(
            edge.Area.SquareMeters * 1e6 * (1 + (extra % 2)),
            lay.Strips.Sum(strip => strip.Cover.Millimeters * strip.Count) * w, 1e-9, absolute: 0.000501 * pieces * w);
        Assert.All(lay.Strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm));

        // Strips of the sides: all sides and a lap at each corner.
        double sides = lay.Strips.Where(static strip => strip.Purpose == StripPurpose.Edge).Sum(static strip => strip.TotalLength.Millimeters);
        Near.Equal((1 + (extra % 2)) * (edge.EdgeLength.Millimeters + (corners.Length * (lap % 30))), sides, 1e-9, absolute: 0.01);
        Assert.True(lay.LayersOnAverage.Ratio >= lay.LayersEverywhere - 1e-6);
        Near.Equal(w - a - b - 8, lay.ExtraReach.Millimeters, 1e-9, absolute: 1e-9);
        Near.Equal(a + b + 8 + lay.ExtraReach.Millimeters, w, 1e-12);
    }

    [Property]
    public void A_window_is_a_closed_edge_with_four_inside_corners(SpanCase given)
    {
        double w = 10 + given.SpanMm;
        double h = 10 + given.WidthMm;
        EdgeLay window = EdgeLay.OfOpening(WindowOpening.Rectangular(Mm(w), Mm(h), Mm(6), Mm(30), Mm(20)), Stock(80), Choices(1, 12, 2));
        EdgeLay edge = EdgeLay.OfSheet(
            new SheetEdge(Mm(2 * (w + h)), Mm(6), Mm(30), Mm(20), 0, 4), Stock(80), [Mm(w), Mm(h), Mm(w), Mm(h)], Choices(1, 12, 2));
        Assert.Equal(edge.Strips, window.Strips);
        Assert.Equal(edge.LayersEverywhere, window.LayersEverywhere);
        Assert.Equal(edge.Instruction, window.Instruction);
    }

    [Property]
    public void More_lap_never_takes_less_strip(byte lap)
    {
        double Metres(double o) => EdgeLay.OfSheet(Edge(Notched, 30, 30, 6), Stock(100), null, Choices(0, o)).Strips.Sum(static strip => strip.TotalLength.Meters);
        Assert.True(Metres(lap % 50) <= Metres((lap % 50) + 7));
    }

    [Fact]
    public void A_straight_edge_by_hand()
    {
        EdgeLay lay = EdgeLay.OfSheet(new SheetEdge(Mm(4000), Mm(8), Mm(40), Mm(40)), Stock());
        Strip strip = Assert.Single(lay.Strips);
        Near.Equal(4000, strip.Length.Millimeters, 0);
        Near.Equal(4000 * 0.88, strip.Cover.Millimeters, 1e-9);
        Near.Equal(12, lay.ExtraReach.Millimeters, 1e-12);
        Assert.Equal([40.0, 48.0], lay.Folds.Select(static fold => fold.Position.Millimeters));
        Assert.Equal(1, lay.LayersEverywhere);
        Near.Equal(0, lay.Stretch.Fraction, 0);
        Assert.True(strip.MaySplice);
        Assert.Empty(lay.Judge(RuleSet.Default, "E-1"));
    }

    [Fact]
    public void A_sheet_all_round_by_hand()
    {
        // 2 x 1 m, 8 mm thick, 40 mm on both faces, 100 mm strip, 10 mm at corners: 2 x 2.01 and 2 x 1.01 m.
        EdgeLay lay = EdgeLay.OfSheet(
            SheetEdge.AroundRectangle(Length.FromMeters(2), Length.FromMeters(1), Mm(8), Mm(40), Mm(40)),
            Stock(),
            [Mm(2000), Mm(1000), Mm(2000), Mm(1000)],
            Choices(2, 10));
        Assert.Equal([2010.0, 1010.0], lay.Strips.Select(static strip => Math.Round(strip.Length.Millimeters, 6)));
        Assert.Equal([2, 2], lay.Strips.Select(static strip => strip.Count));
        Assert.All(lay.Strips, static strip => Near.Equal(9.2, strip.Trim.Millimeters, 1e-9));
        Near.Equal(((6000 * 88) - (4 * 2 * 1600)) / 100.0, lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count), 1e-6);
    }

    [Fact]
    public void Patches_by_hand()
    {
        EdgeLay lay = EdgeLay.OfOpening(WindowOpening.Rectangular(Mm(500), Mm(300), Mm(8), Mm(40), Mm(30)), Stock(), Choices(2, 10));
        Strip[] patches = [.. lay.Strips.Where(static strip => strip.Purpose == StripPurpose.CornerPatch)];
        Assert.Equal([50.0, 40.0], patches.Select(static strip => Math.Round(strip.Length.Millimeters, 6)));
        Assert.All(patches, static strip => Assert.Equal(4, strip.Count));

        // 50 x 100 mm of strip: 50 x 50 is cut out of it, and 10 x 10 out of that for the opening.
        Near.Equal(26, patches[0].Trim.Millimeters, 1e-9);
        Near.Equal(16, patches[0].Cover.Millimeters, 1e-9);
        Assert.Empty(EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(40), Mm(0), 0, 1), Stock(), null, Choices()).Strips.Where(static strip => strip.Purpose == StripPurpose.CornerPatch).Skip(1));
    }

    [Fact]
    public void A_round_opening_stretches_the_strip()
    {
        EdgeLay lay = EdgeLay.OfOpening(WindowOpening.Circular(Mm(600), Mm(8), Mm(40), Mm(40)), Stock(), Choices(2, 10));
        Near.Equal((600 * Math.PI) + 10, Assert.Single(lay.Strips).Length.Millimeters, 0, absolute: 0.000501);

        // The edge on the back lies on a circle of 600 + 2 x 52 mm.
        Near.Equal((704.0 / 600) - 1, lay.Stretch.Fraction, 1e-12);
        Finding finding = Assert.Single(lay.Judge(RuleSet.Default, "E-1"));
        Assert.Equal(RuleIds.MaximumStretch, finding.Rule.Id);
        Assert.Contains("snip its faces", lay.Instruction, StringComparison.Ordinal);
        Assert.Empty(EdgeLay.OfOpening(WindowOpening.Circular(Mm(4000), Mm(8), Mm(40), Mm(40)), Stock(), Choices(2, 10)).Judge(RuleSet.Default, "E-1"));
    }

    [Fact]
    public void What_cannot_be_laid_says_what_could()
    {
        Errors.Refused(static () => EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(50), Mm(50)), Stock()), "stock", "100 mm is outside", "at least 108 mm", "front reach, thickness and back reach");
        Errors.Refused(
            static () => EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(50), Mm(0), 0, 1), Stock(58), null, Choices(0, 10)),
            "stock", "58 mm is outside", "at least 60 mm", "a patch in a corner");
        Errors.Refused(static () => EdgeLay.OfOpening(WindowOpening.Circular(Mm(60), Mm(8), Mm(31), Mm(10)), Stock()), "opening", "31 mm is outside", "at most 30 mm");
        Errors.Refused(static () => EdgeLay.OfOpening(WindowOpening.Circular(Mm(60), Mm(8), Mm(20), Mm(10)), Stock()), "stock", "100 mm is outside", "at most 58 mm");
        Errors.Refused(static () => EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(5), Mm(5), 1), Stock(), [Mm(900), Mm(0)]), "sides", "0 mm is outside");
        Assert.Contains("make 2", Assert.Throws<ArgumentException>(static () => EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(5), Mm(5), 1), Stock(), [Mm(900)])).Message, StringComparison.Ordinal);
        Assert.Contains("come to 800 mm", Assert.Throws<ArgumentException>(static () => EdgeLay.OfSheet(new SheetEdge(Mm(900), Mm(8), Mm(5), Mm(5), 1), Stock(), [Mm(400), Mm(400)])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_patch_or_tab_is_seen()
    {
        Assert.Equal(0, LeastOnFace(Notched, 40, 40, 10, patches: false));
        EdgeLay lay = EdgeLay.OfSheet(Edge(Sheet, 40, 40, 8), Stock(), Sides(Sheet), Choices(0, 10));
        Assert.Equal(0, LeastOnThickness(Sheet, lay, 11));
    }

    // Right-angled, the sheet on the left.
    private static (double X, double Y)[] Window(double w, double h) => [(0, 0), (0, h), (w, h), (w, 0)];

    private static ValueList<Length> Sides((double X, double Y)[] corners) =>
        new(Enumerable.Range(0, corners.Length).Select(i => Mm(Ahead(corners, i).Length)));

    private static SheetEdge Edge((double X, double Y)[] corners, double a, double b, double t)
    {
        int inside = Enumerable.Range(0, corners.Length).Count(i => OpensAt(corners, i));
        return new(Mm(Enumerable.Range(0, corners.Length).Sum(i => Ahead(corners, i).Length)), Mm(t), Mm(a), Mm(b), corners.Length - inside, inside);
    }

    private static (double X, double Y, double Length) Ahead((double X, double Y)[] corners, int i)
    {
        (double x, double y) = corners[(i + 1) % corners.Length];
        double length = Math.Abs(x - corners[i].X) + Math.Abs(y - corners[i].Y);
        return ((x - corners[i].X) / length, (y - corners[i].Y) / length, length);
    }

    // Whether the outline turns right at a corner, away from the sheet.
    private static bool OpensAt((double X, double Y)[] corners, int i)
    {
        var before = Ahead(corners, (i + corners.Length - 1) % corners.Length);
        var after = Ahead(corners, i);
        return (before.X * after.Y) - (before.Y * after.X) < 0;
    }

    // Bands are rectangles beside the sides as deep as the strip reaches; patches squares in the corners that open, less
    // their part over the opening. Spots are those within the stated reach: along each side, and in those corners.
    private static int LeastOnFace((double X, double Y)[] corners, double laid, double stated, double lap, bool patches = true)
    {
        if (stated == 0)
        {
            return 1;
        }

        const double Touch = 1e-6;
        int least = int.MaxValue;
        foreach ((double x, double y) in Spots(corners, stated))
        {
            int over = 0;
            for (int i = 0; i < corners.Length; i++)
            {
                var side = Ahead(corners, i);
                double along = ((x - corners[i].X) * side.X) + ((y - corners[i].Y) * side.Y);
                double deep = ((y - corners[i].Y) * side.X) - ((x - corners[i].X) * side.Y);
                over += along >= -Touch && along <= side.Length + Touch && deep >= -Touch && deep <= laid + Touch ? 1 : 0;
                if (patches && OpensAt(corners, i))
                {
                    var before = Ahead(corners, (i + corners.Length - 1) % corners.Length);
                    double right = ((x - corners[i].X) * before.X) + ((y - corners[i].Y) * before.Y);
                    double up = ((y - corners[i].Y) * before.X) - ((x - corners[i].X) * before.Y);
                    bool within = right >= -lap - Touch && right <= stated + Touch && up >= -lap - Touch && up <= stated + Touch;
                    over += within && !(right < -Touch && up < -Touch) ? 1 : 0;
                }
            }

            least = Math.Min(least, over);
        }

        return least;
    }

    private static IEnumerable<(double X, double Y)> Spots((double X, double Y)[] corners, double reach)
    {
        for (int i = 0; i < corners.Length; i++)
        {
            var side = Ahead(corners, i);
            double from = OpensAt(corners, (i + 1) % corners.Length) ? reach : 0; // a corner that opens ahead: on into its square
            for (int u = 0; u <= 60; u++)
            {
                for (int v = 0; v <= 12; v++)
                {
                    double along = (side.Length + from) * u / 60;
                    double deep = reach * v / 12;
                    yield return (corners[i].X + (along * side.X) - (deep * side.Y), corners[i].Y + (along * side.Y) + (deep * side.X));
                }
            }
        }
    }

    // Round the thickness every strip begins at its corner and goes on past the next one by its tab, less the wander.
    private static int LeastOnThickness((double X, double Y)[] corners, EdgeLay lay, double wander)
    {
        double round = Enumerable.Range(0, corners.Length).Sum(i => Ahead(corners, i).Length);
        double tab = lay.Choices.EndLap.Millimeters - wander;
        var strips = new List<(double Start, double Length)>();
        double at = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            double side = Ahead(corners, i).Length;
            strips.Add((at, side + tab));
            at += side;
        }

        return strips.SelectMany(static strip => new[] { strip.Start - 1e-3, strip.Start, strip.Start + 1e-3, strip.Start + (strip.Length / 2) }).Min(spot => strips.Count(strip =>
        {
            double into = (((spot - strip.Start) % round) + round) % round;
            return into <= strip.Length + 1e-9;
        }));
    }
}
