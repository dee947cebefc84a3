using System.Globalization;
using System.Xml.Linq;
using SacrificialTape.Reports.Pictures;
using SacrificialTape.SiteConditions;

namespace SacrificialTape.Reports.Tests;

/// <summary>Pictures: that they show what the geometry says, and that everyone can read them.</summary>
public sealed class PictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // Over a stretch in the middle of a spiral, strip drawn over steel drawn is the width over the true advance: layers on average.
    [Property(MaxTest = 60)]
    public Property A_spiral_covers_its_stretch_as_often_as_its_layers_on_average() => Prop.ForAll(
        Gen.Choose(50, 600).Zip(Gen.Choose(20, 80)).ToArbitrary(),
        static chosen =>
        {
            var lay = new SpiralLay(
                new StraightPipe(Samples.Mm(chosen.Item1), Length.FromMeters(40)), Samples.Stock(50), SpiralSetting.FromTrueLap(Samples.Mm(50 * chosen.Item2 / 100.0)));
            double girth = Math.PI * chosen.Item1;
            double drawn = Drawn(lay, girth, 15_000, 15_000 + (4 * lay.Geometry.Advance.Millimeters));
            double layers = drawn / (girth * 4 * lay.Geometry.Advance.Millimeters);
            return (Math.Abs(layers - lay.LayersOnAverage.Ratio) < 1e-9 * layers).Label($"{layers} against {lay.LayersOnAverage.Ratio}");
        });

    // Whole rings: their number, width, and the girth with its end lap; a strip's length counts whole micrometres.
    [Fact]
    public void Rings_are_drawn_with_their_whole_area()
    {
        double girth = Math.PI * 114.3;
        double end = Samples.Rings.Choices.EndLap.Millimeters;

        Assert.Equal(Samples.Rings.Rings * 100 * (girth + end), Drawn(Samples.Rings, girth, -1e6, 1e6), Samples.Rings.Rings * 100 * 0.001);
    }

    [Property(MaxTest = 200)]
    public Property What_is_cut_lies_within_and_two_parts_make_the_whole() => Prop.ForAll(
        Gen.Choose(-100, 100).Four().Zip(Gen.Choose(-50, 50)).ToArbitrary(),
        static chosen =>
        {
            ((int a, int b, int c, int d), int at) = chosen;
            (double, double)[] corners = [(a, 0), (a + 60, 0), (b + 60, 40), (b, 40)];
            IReadOnlyList<(double Along, double Around)> left = Outline.Within(corners, -1e9, at);
            IReadOnlyList<(double Along, double Around)> right = Outline.Within(corners, at, 1e9);
            return left.All(corner => corner.Along <= at + 1e-9)
                && right.All(corner => corner.Along >= at - 1e-9)
                && Math.Abs(AreaOf(left) + AreaOf(right) - AreaOf(corners)) < 1e-9 * 2400;
        });

    [Fact]
    public void Setting_marks_and_lap_are_told_in_words_too()
    {
        Picture picture = Picture.OfLay(Samples.Spiral);

        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{Samples.Spiral.Geometry.Advance.Millimeters:0.#} mm apart"), picture.Description, StringComparison.Ordinal);
        Assert.Contains("lap 15 mm", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Description, Desc(picture), StringComparison.Ordinal);
        Assert.Equal(picture.Svg, Picture.OfLay(Samples.Spiral).Svg);
    }

    [Fact]
    public void A_window_over_the_slit_line_is_one_window_in_two_parts()
    {
        var pipe = new StraightPipe(Samples.Mm(114.3), Length.FromMeters(0.5));
        var lay = new RingLay(pipe, Samples.Stock(100), Samples.Mm(15));
        var layout = new WindowLayout(new UnrolledSurface(pipe), [ContactWindow.Rectangle(Samples.Mm(200), Samples.Mm(0), Samples.Mm(60), Samples.Mm(40))]);

        Picture picture = Picture.OfLay(lay, layout);

        Assert.Contains("1 window(s)", picture.Description, StringComparison.Ordinal);
        Assert.Equal(2, Root(picture).Elements(Svg + "polygon").Count(static one => (string?)one.Attribute("fill") == "#ffffff"));
    }

    // On a panel around runs from the bottom: a window low down is drawn below one high up.
    [Fact]
    public void A_panel_is_drawn_with_its_bottom_below()
    {
        var panel = new RectangularPanel(Samples.Mm(1000), Samples.Mm(600));
        var lay = new PanelLay(panel, Samples.Stock(100), PanelDirection.AlongWidth, Samples.Mm(15));
        var layout = new WindowLayout(new UnrolledSurface(panel), [ContactWindow.Rectangle(Samples.Mm(100), Samples.Mm(50), Samples.Mm(60), Samples.Mm(40)), ContactWindow.Rectangle(Samples.Mm(500), Samples.Mm(550), Samples.Mm(60), Samples.Mm(40))]);

        double[] middles = [.. Root(Picture.OfLay(lay, layout)).Elements(Svg + "polygon").Where(static one => (string?)one.Attribute("fill") == "#ffffff")
            .Select(static one => one.Attribute("points")!.Value.Split(' ').Average(static point => double.Parse(point.Split(',')[1], CultureInfo.InvariantCulture)))];

        Assert.Equal(2, middles.Length);
        Assert.True(middles[0] > middles[1]);
    }

    // A year of hours: the marks under the axis stay apart.
    [Fact]
    public void A_long_log_has_few_marks()
    {
        var start = new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var log = new SiteLog(Enumerable.Range(0, 8760).Select(hour => new SiteHour(start.AddHours(hour), null, null, rain: null)));

        int marks = Root(Picture.OfWork(new WorkWindows(log, RuleSet.Default, "tank"))).Elements(Svg + "text")
            .Count(static text => text.Value.Length == 5 && text.Value[2] == '-');

        Assert.InRange(marks, 5, 15);
    }

    [Fact]
    public void A_bend_fans_out_one_ring_for_each_of_the_lay()
    {
        Picture picture = Picture.OfBend(Samples.Bend);

        Assert.Equal(Samples.Bend.Rings, Root(picture).Elements(Svg + "polygon").Count(static one => (string?)one.Attribute("fill-opacity") == "0.3"));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"inside {Samples.Bend.InsideLap.Millimeters:0.#} mm"), picture.Description, StringComparison.Ordinal);
    }

    // The dot of the fastest course stands where the axis says the earliest life is.
    [Fact]
    public void A_life_ends_where_its_axis_says()
    {
        LifeEstimate life = Samples.Estimate().Lines[0].Life;
        XElement root = Root(Picture.OfLife(life, Samples.FifteenYears));
        (double X, double Years)[] ticks = [.. root.Elements(Svg + "text")
            .Where(static text => (string?)text.Attribute("text-anchor") == "middle" && double.TryParse(text.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            .Select(static text => (Number(text, "x"), double.Parse(text.Value, CultureInfo.InvariantCulture)))];
        double dot = Number(root.Elements(Svg + "ellipse").First(), "cx");

        double years = ticks[0].Years + ((dot - ticks[0].X) * (ticks[^1].Years - ticks[0].Years) / (ticks[^1].X - ticks[0].X));

        Assert.Equal(life.Earliest.Duration.Days / 365, years, 0.02);
        Assert.Contains("15 a are required", Picture.OfLife(life, Samples.FifteenYears).Description, StringComparison.Ordinal);
    }

    // An end that the legend names is drawn, or the border says that it lies beyond.
    [Theory]
    [InlineData(1.0, 4.5, 25, "")]
    [InlineData(1.0, 9.0, 25, "")]
    [InlineData(0.05, 9.0, 25, "goes on beyond the picture")]
    [InlineData(1.0, 9.0, 2500, "required 2500 a, beyond the picture")]
    public void The_latest_end_is_drawn_or_said_to_lie_beyond(double lowest, double highest, double required, string said)
    {
        var exposure = ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(lowest), CorrosionRate.FromMicrometersPerYear(highest), "a made-up coupon");
        var life = new LifeEstimate(new Foil(Length.FromMicrometers(100)), 1, exposure, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        XElement root = Root(Picture.OfLife(life, Lifetime.Of(Duration.FromYears365(required))));
        string[] texts = [.. root.Elements(Svg + "text").Select(static text => text.Value)];
        Assert.Equal(said.Length > 0, texts.Any(static text => text.Contains("beyond the picture", StringComparison.Ordinal)));
        Assert.True(said.Length == 0 || texts.Contains(said), string.Join("; ", texts));
        XElement[] dots = [.. root.Elements(Svg + "ellipse")];
        Assert.Equal(said.StartsWith("goes", StringComparison.Ordinal) ? 1 : 2, dots.Length);
        if (dots.Length == 2)
        {
            // Linear: 80 um at both rates, so the ends lie apart as the rates do.
            const double Axis = 70;
            Assert.Equal(highest / lowest, (Number(dots[1], "cx") - Axis) / (Number(dots[0], "cx") - Axis), 0.02 * highest / lowest);
        }

        Assert.All(root.Elements(Svg + "line"), static line => Assert.InRange(Number(line, "x2"), 0, 632));
    }

    [Fact]
    public void A_patch_is_drawn_clear_of_its_cut_out()
    {
        OvalPatch patch = OvalPatch.Smallest(CutOut.Rectangle(Samples.Mm(80), Samples.Mm(30)), Samples.Mm(5), Samples.Mm(5));
        XElement root = Root(Picture.OfPatch(patch));
        XElement oval = root.Element(Svg + "ellipse")!;
        XElement hole = root.Elements(Svg + "rect").Last();

        // The corner of the rectangle lies inside the ellipse that is drawn.
        double x = (Number(hole, "x") - Number(oval, "cx")) / Number(oval, "rx");
        double y = (Number(hole, "y") - Number(oval, "cy")) / Number(oval, "ry");
        Assert.True((x * x) + (y * y) < 1);
        Assert.Equal(patch.Length.Millimeters / patch.Width.Millimeters, Number(oval, "rx") / Number(oval, "ry"), 0.001);
    }

    [Fact]
    public void What_was_not_read_leaves_a_gap_in_the_curves()
    {
        var start = new DateTimeOffset(2026, 5, 14, 6, 0, 0, TimeSpan.FromHours(2));
        var air = new MoistAir(Temperature.FromDegreesCelsius(16), RelativeHumidity.FromPercent(60));
        SiteHour Hour(int at, bool known = true) => new(start.AddHours(at), known ? air : null, known ? Temperature.FromDegreesCelsius(20) : null, rain: false);
        var log = new SiteLog([Hour(0), Hour(1), Hour(2, known: false), Hour(3), Hour(4), Hour(7), Hour(8)]);

        Picture picture = Picture.OfWork(new WorkWindows(log, RuleSet.Default, "tank"));

        // Three runs of hours, two curves each; one hole in the log itself.
        Assert.Equal(6, Root(picture).Elements(Svg + "polyline").Count());
        Assert.Contains("1 gap(s)", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_drawn_is_refused_with_the_reason()
    {
        var cone = new TaperedColumn(Samples.Mm(200), Samples.Mm(100), Length.FromMeters(3));
        var lay = new GoreLay(cone, Samples.Stock(50), Samples.Mm(10));
        var none = new LifeEstimate(new Foil(Length.FromMicrometers(100)), 0, ZincExposure.FromCategory(CorrosivityCategory.C4), Utilisation.FromFraction(0.8));

        Assert.Contains("places of its strips", Assert.Throws<ArgumentException>(() => Picture.OfLay(lay)).Message, StringComparison.Ordinal);
        Assert.Contains("no layer", Assert.Throws<ArgumentException>(() => Picture.OfLife(none, Samples.FifteenYears)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(static () => Picture.OfPatch(null!));
    }

    // Contrast by WCAG 2.1, definitions of relative luminance and contrast ratio: 4.5 for words, 3 for shapes.
    [Fact]
    public void Colours_are_told_apart_on_white_and_in_grey()
    {
        double Contrast(string one, string other)
        {
            double a = Luminance(one);
            double b = Luminance(other);
            return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
        }

        Assert.True(Contrast(SvgCanvas.Ink, "#ffffff") > 7);
        Assert.True(Contrast(SvgCanvas.Ink, SvgCanvas.Pale) > 7);
        Assert.All([SvgCanvas.Blue, SvgCanvas.Orange, SvgCanvas.Grey], colour => Assert.True(Contrast(colour, "#ffffff") > 4.5, colour));
        Assert.All([SvgCanvas.Blue, SvgCanvas.Orange], colour => Assert.True(Contrast(colour, SvgCanvas.Pale) > 3, colour));
    }

    // A cone lies flat without strain: what is drawn of all gores, less their laps, is its area. Cut straight between
    // stations it is a little more.
    [Theory]
    [InlineData(600, 300, 900, 100)]
    [InlineData(600, 550, 400, 80)]
    [InlineData(1200, 200, 500, 150)]
    public void Gores_of_a_cone_are_drawn_with_its_area(double large, double small, double length, double strip)
    {
        var cone = new ConcentricReducer(Samples.Mm(large), Samples.Mm(small), Samples.Mm(length));
        var lay = new GoreLay(cone, Samples.Stock(strip), Samples.Mm(15));
        double along = lay.Stations[^1].FromLowEdge.Millimeters - lay.Stations[0].FromLowEdge.Millimeters;

        XElement drawn = Root(Picture.OfGores(lay)).Elements(Svg + "polygon").First();
        (double, double)[] corners =
        [
            .. drawn.Attribute("points")!.Value.Split(' ').Select(static point => point.Split(','))
                .Select(static point => (double.Parse(point[0], CultureInfo.InvariantCulture), double.Parse(point[1], CultureInfo.InvariantCulture))),
        ];
        double scale = (corners.Max(static one => one.Item1) - corners.Min(static one => one.Item1)) / along;
        double area = lay.Gores * ((AreaOf(corners) / (scale * scale)) - (lay.Lap.Millimeters * along));
        double slanted = Math.PI / 2 * (large + small) * Math.Sqrt((length * length) + ((large - small) * (large - small) / 4));
        Assert.InRange(area / slanted, 0.999, 1.02);
        Assert.Equal(lay.Gores + 1, Root(Picture.OfGores(lay)).Elements(Svg + "polygon").Count());
    }

    [Fact]
    public void A_head_in_gores_is_closed_by_a_disc()
    {
        var lay = new GoreLay(HemisphericalHead.FromOutside(Samples.Mm(1000), Samples.Mm(0)), Samples.Stock(120), Samples.Mm(15));

        Picture picture = Picture.OfGores(lay);

        Assert.Equal(2, Root(picture).Elements(Svg + "ellipse").Count());
        Assert.Contains("A disc closes the crown", picture.Description, StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{lay.Gores} gores"), Desc(picture), StringComparison.Ordinal);
    }

    private static readonly int[] Channels = [1, 3, 5];

    private static double Luminance(string colour)
    {
        double[] linear = [.. Channels
            .Select(at => int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(static c => c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    private static double Drawn(IPlacedStrips lay, double girth, double from, double to) => lay.PlaceStrips()
        .SelectMany(strip => StripOutline.Of(strip, girth, closed: true, from, to)).Sum(AreaOf);

    private static double AreaOf(IReadOnlyList<(double Along, double Around)> corners)
    {
        double twice = 0;
        for (int i = 0; i < corners.Count; i++)
        {
            (double Along, double Around) next = corners[(i + 1) % corners.Count];
            twice += (corners[i].Along * next.Around) - (next.Along * corners[i].Around);
        }

        return Math.Abs(twice) / 2;
    }

    private static XElement Root(Picture picture) => XDocument.Parse(picture.Svg).Root!;

    private static string Desc(Picture picture) => Root(picture).Element(Svg + "desc")!.Value;

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
