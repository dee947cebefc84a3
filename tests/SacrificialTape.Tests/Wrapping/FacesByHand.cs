using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips on panels and sheets that can be drawn on squared paper.</summary>
public sealed class FacesByHand
{
    // Four strips of 100 mm share 300 mm, one every 66.7 mm; the two in the middle meet the openings.
    [Fact]
    public void Openings_cut_a_strip_in_their_order_along_it_however_they_are_listed()
    {
        var panel = new RectangularPanel(
            Mm(1000),
            Mm(300),
            [PanelOpening.Rectangular(Mm(100), Mm(180)).At(Mm(200), Mm(0)), PanelOpening.Rectangular(Mm(60), Mm(180)).At(Mm(-300), Mm(0))]);
        Assert.Equal([(1000, 2), (420, 2), (250, 2), (170, 2)], Lengths(panel, 100));
    }

    // A round opening of 200 mm, 10 mm above the middle: the bands reach 93.3 and 73.3 mm from its own middle.
    [Fact]
    public void A_round_opening_is_as_wide_as_where_the_band_is_farthest_from_its_middle()
    {
        var panel = new RectangularPanel(Mm(1000), Mm(300), [PanelOpening.Circular(Mm(200)).At(Mm(200), Mm(10))]);
        double low = Math.Sqrt(10_000 - (280.0 / 3 * 280 / 3));
        double high = Math.Sqrt(10_000 - (220.0 / 3 * 220 / 3));
        double[] expected = [1000, 1000, 700 - low, 700 - high, 300 - low, 300 - high];
        double[] lengths = [.. Lengths(panel, 100).SelectMany(static one => Enumerable.Repeat(one.Mm, one.Count))];
        Assert.Equal(expected.Length, lengths.Length);
        Assert.All(expected.Zip(lengths), static pair => Near.Equal(pair.First, pair.Second, 0, absolute: 0.0011));
    }

    // 60 mm under a strip of 100 mm, a tenth of it openings without a place: 400 mm2 of each 1000 stand over, a tenth of the rest is cut out.
    [Fact]
    public void What_stands_over_a_narrow_face_and_what_lies_over_its_openings_is_trimmed()
    {
        var panel = new RectangularPanel(Mm(1000), Mm(60), [PanelOpening.Rectangular(Mm(100), Mm(30), 2)]);
        var lay = new PanelLay(panel, Stock(100), PanelDirection.AlongWidth, Mm(10));
        Strip strip = Assert.Single(lay.Strips);
        Assert.Equal([1000, 540, 460], new[] { strip.Length, strip.Cover, strip.Trim }.Select(static one => Math.Round(one.Millimeters, 3)));
        Measure average = lay.ShowWorkings().Steps.Single(static step => step.Formula.Id == "face.layers-on-average").Result;
        Near.Equal(1, average.Number, 1e-14);
        Near.Equal(1, lay.LayersOnAverage.Ratio, 1e-14);
    }

    [Fact]
    public void The_band_of_the_topmost_strip_ends_with_the_face()
    {
        var lay = new PanelLay(new RectangularPanel(Mm(1000), Mm(300)), Stock(100), PanelDirection.AlongWidth, Mm(10));
        StripPlace[] places = [.. lay.Places()];
        Assert.Equal(4, places.Length);
        Assert.Equal([-150, -83.333, -16.667, 50], places.Select(static one => Math.Round(one.LowerEdge.Millimeters, 3)));
    }

    // Corners at 0 and v of every pitch: the strip is slid over all of them.
    [Theory]
    [InlineData(30)]
    [InlineData(50)]
    [InlineData(80)]
    public void A_strip_along_the_flutes_reaches_over_as_many_corners_as_the_luckiest_place_has(double valley)
    {
        const int Valleys = 4;
        var sheet = new CorrugatedPanel(Mm(100), Mm(10), Mm(valley), Mm(20), Valleys, Mm(3000));
        double[] corners = [.. Enumerable.Range(0, Valleys).SelectMany(i => new[] { 100.0 * i, (100.0 * i) + valley })];
        for (double width = 7; width < 400; width += 9)
        {
            int most = corners.Max(from => corners.Count(one => one >= from && one < from + width));
            Assert.Equal(most, CorrugatedKernel.InsideCorners(sheet, width, 100, default(NoSteps)));
        }
    }

    private static IEnumerable<(double Mm, int Count)> Lengths(RectangularPanel panel, double width) =>
        new PanelLay(panel, Stock(width), PanelDirection.AlongWidth, Mm(10)).Strips.Select(static strip => (Math.Round(strip.Length.Millimeters, 3), strip.Count));
}
