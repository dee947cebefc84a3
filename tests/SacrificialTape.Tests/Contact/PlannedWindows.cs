using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>A layout that the library makes passes the library's checks, and the crew can mark it.</summary>
[Properties(MaxTest = 12)]
public sealed class PlannedWindows
{
    [Property]
    public void A_plan_passes_its_own_checks(int seed)
    {
        var random = new Random(seed);
        Passes(SomeLay(random, random.Next(6), faced: false), null);
    }

    [Property]
    public void Over_a_film_every_strip_has_its_window(int seed)
    {
        var random = new Random(seed);
        ILay lay = SomeLay(random, random.Next(6), faced: true);
        WindowLayout layout = Passes(lay, null);
        Assert.True(layout.Windows.Count >= ((IPlacedStrips)lay).PlaceStrips().Count / 4);
    }

    [Theory]
    [InlineData(21.3, 6)]
    [InlineData(21.3, 0.05)]
    [InlineData(33.7, 60)]
    [InlineData(10, 1)]
    [InlineData(1016, 12)]
    public void On_small_and_large_pipe(double diameter, double metres) =>
        Passes(new RingLay(Pipe(diameter, metres * 1000), Stock(40), Mm(10)), null);

    [Fact]
    public void With_discs_and_other_shapes()
    {
        var lay = new RingLay(Pipe(), Stock(), Mm(20));
        Passes(lay, WindowShape.Disc(Mm(60)));
        Passes(lay, WindowShape.Rectangle(Mm(100), Mm(100)));
        Passes(lay, WindowShape.Rectangle(Mm(20), Mm(30)));
        ArgumentException none = Assert.Throws<ArgumentException>(() => WindowPlan.For(lay, RuleSet.Default, WindowShape.Rectangle(Mm(2), Mm(1))));
        Assert.Contains("No layout of windows 2 x 1 mm", none.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(static () => WindowPlan.For(
            new PanelLay(new CircularPanel(Mm(2000)), Stock(), PanelDirection.AlongWidth, Mm(20)), RuleSet.Default));
    }

    [Fact]
    public void A_lay_that_does_not_know_its_places_is_planned_and_says_so()
    {
        StraightPipe pipe = Pipe();
        var pair = new SpiralPairLay(
            new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(Mm(20))), new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(Mm(20))));
        var contact = new LayContact(pair, WindowPlan.For(pair, RuleSet.Default));
        Assert.Null(contact.Strips(Area.FromSquareCentimeters(1)));
        Assert.Contains(RuleIds.StripPlacesUnknown, contact.Judge(RuleSet.Default, "A-1").Select(static one => one.Rule.Id));
    }

    [Fact]
    public void Windows_keep_out_of_openings()
    {
        var panel = new RectangularPanel(Mm(3000), Mm(2000), [PanelOpening.Rectangular(Mm(900), Mm(700)).At(Mm(0), Mm(0)), PanelOpening.Circular(Mm(300)).At(Mm(1000), Mm(500))]);
        Passes(new PanelLay(panel, Stock(), PanelDirection.AlongWidth, Mm(20)), null);
    }

    [Property]
    public void The_walk_goes_along_and_names_every_window_once(int seed)
    {
        var random = new Random(seed);
        WindowLayout layout = LayoutCase.Make(random, LayoutCase.Surface(random));
        var list = new MarkingList(layout);
        Assert.Equal(Enumerable.Range(1, layout.Windows.Count), list.Marks.Select(static mark => mark.Number));
        Assert.Equal(layout.Windows.Count, list.Marks.Select(static mark => mark.Window).Distinct().Count());
        bool panel = layout.Surface.Surface is Panel;
        double[] stations = [.. list.Marks.Select(mark => Math.Round((panel ? mark.Around : mark.Along).Millimeters))];
        Assert.Equal(stations.Order(), stations);
        Assert.All(list.Marks, mark =>
        {
            Assert.InRange(mark.Around.Millimeters, 0, layout.Surface.Girth.Millimeters);
            Assert.Equal(panel, mark.Turned is null);
            Assert.Equal(panel, mark.Clock is null);
        });
    }

    [Theory]
    [InlineData(0, "12:00")]
    [InlineData(0.25, "3:00")]
    [InlineData(0.5, "6:00")]
    [InlineData(0.75, "9:00")]
    [InlineData(0.99999, "12:00")]
    [InlineData(0.3125, "3:45")]
    public void On_the_clock(double turn, string clock)
    {
        var layout = new WindowLayout(new(Pipe()), [ContactWindow.Rectangle(Mm(100), Mm(Math.PI * 168.3 * turn), Mm(50), Mm(50))]);
        WindowMark mark = new MarkingList(layout).Marks[0];
        Assert.Equal(clock, mark.Clock);
        Near.Equal(turn * 360, mark.Turned!.Value.Degrees, 1e-12);
        Assert.Contains($"({clock}, {turn * 360:0} deg), 50 x 50 mm", mark.ToString(), StringComparison.Ordinal);
    }

    private static WindowLayout Passes(ILay lay, WindowShape? shape)
    {
        WindowLayout layout = WindowPlan.For(lay, RuleSet.Default, shape);
        string[] broken = [.. new LayContact(lay, layout).Judge(RuleSet.Default, "plan").Select(static one => one.Rule.Id)];
        Assert.DoesNotContain(RuleIds.BareRatioInMetre, broken);
        Assert.DoesNotContain(RuleIds.StripsWithoutSteel, broken);
        Assert.DoesNotContain(RuleIds.MaximumWindowDistance, broken);
        Assert.DoesNotContain(RuleIds.NoWindow, broken);
        return layout;
    }

    private static ILay SomeLay(Random random, int kind, bool faced)
    {
        var stock = new StripStock(Tape(faced: faced), Mm(60 + random.Next(90)), Length.FromMeters(30));
        StraightPipe pipe = Pipe(30 + random.Next(700), 100 + random.Next(6000));
        Length lap = Mm(10 + random.Next(10));
        return kind switch
        {
            0 => new RingLay(pipe, stock, lap),
            1 => new AlongPipeLay(pipe, stock, lap),
            2 => new PanelLay(new RectangularPanel(Mm(200 + random.Next(3000)), Mm(200 + random.Next(3000))), stock, PanelDirection.AlongHeight, lap),
            3 => new ShellLay(new Shell(Mm(500 + random.Next(2500)), Mm(300 + random.Next(3000)), ShellAxis.Lying), stock, ShellDirection.Round, lap),
            4 => new BendRingLay(
                new Bend(Mm(400 + random.Next(800)), Mm(1200 + random.Next(600)), Angle.FromDegrees(20 + random.Next(90))), stock, lap),
            _ => new SpiralLay(Pipe(200 + random.Next(400), 1000 + random.Next(4000)), stock, SpiralSetting.FromTrueLap(lap)),
        };
    }
}
