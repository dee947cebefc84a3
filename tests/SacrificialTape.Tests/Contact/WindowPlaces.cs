using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

public sealed class WindowPlaces
{
    private static readonly UnrolledSurface OnPipe = new(Pipe(168.3, 2000));
    private static readonly UnrolledSurface OnPanel = new(new RectangularPanel(
        Mm(2000), Mm(1000), [PanelOpening.Rectangular(Mm(400), Mm(200)).At(Mm(500), Mm(0))]));

    [Fact]
    public void Surfaces_have_the_measures_of_the_steel()
    {
        Near.Equal(Math.PI * 168.3, OnPipe.Girth.Millimeters, 1e-15);
        Assert.True(OnPipe.IsClosed);
        Assert.False(OnPanel.IsClosed);
        Near.Equal(1000, OnPanel.Girth.Millimeters, 0);
        var bend = new Bend(Mm(219.1), Mm(305), Angle.FromDegrees(90));
        var unrolled = new UnrolledSurface(bend);
        Near.Equal((305 + 109.55) * Math.PI / 2, unrolled.Length.Millimeters, 1e-14);
        Near.Equal(1, unrolled.FactorAlong(Length.Zero).Ratio, 1e-15);
        Near.Equal((305 - 109.55) / (305 + 109.55), unrolled.FactorAlong(unrolled.Girth / 2).Ratio, 1e-14);

        // Area by thin rings: another way than the closed integral.
        double sum = 0;
        const int Rings = 20_000;
        for (int i = 0; i < Rings; i++)
        {
            sum += unrolled.FactorAlong(unrolled.Girth * ((i + 0.5) / Rings)).Ratio / Rings;
        }

        Near.Equal(bend.Area.SquareMeters, sum * unrolled.Length.Meters * unrolled.Girth.Meters, 1e-9);
        Near.Equal(bend.Area.SquareMillimeters, unrolled.AreaMm2, 1e-12);
    }

    [Fact]
    public void A_surface_without_an_unrolled_form_says_so()
    {
        Assert.False(UnrolledSurface.TryUnroll(new CircularPanel(Mm(1000)), out UnrolledSurface? none));
        Assert.Null(none);
        Assert.True(UnrolledSurface.TryUnroll(Pipe(), out UnrolledSurface? some));
        Assert.Equal(new UnrolledSurface(Pipe()), some);
    }

    [Fact]
    public void A_window_outside_the_surface_is_refused()
    {
        Said("Window 1 (window 50 x 50 mm at 20 mm along, 0 mm around) reaches from -5 to 45 mm along, outside the surface, which is 0 to 2000 mm long", OnPipe, Square(20, 0));
        Said("1955 to 2005 mm along", OnPipe, Square(1980, 0));
        Said("outside the surface, which is 1000 mm high", OnPanel, Square(100, 20));
        Said("outside the surface, which is 1000 mm high", OnPanel, Square(100, 990));
        Said("lies in the opening", OnPanel, Square(1310, 500));
        Said("is 600 mm wide around", OnPipe, ContactWindow.Rectangle(Mm(500), Mm(0), Mm(50), Mm(600)));
        Assert.Equal(2, new WindowLayout(OnPanel, [Square(25, 25), Square(1975, 975)]).Windows.Count);
    }

    [Fact]
    public void Windows_that_overlap_are_refused_and_those_that_touch_are_not()
    {
        Said("Window 1 (window 50 x 50 mm at 100 mm along, 10 mm around) and Window 2", OnPipe, Square(100, 10), Square(149, 10));
        Said("overlap", OnPipe, Square(100, 10), Square(100, (Math.PI * 168.3) - 30));
        Said("overlap", OnPipe, Disc(100, 100), Disc(135, 135));
        Said("overlap", OnPipe, Square(100, 100), Disc(142, 142));
        Said("overlap", OnPipe, Disc(142, 142), Square(100, 100));
        Assert.Equal(4, new WindowLayout(OnPipe, [Square(100, 10), Square(150, 10), Square(100, 60), Disc(150, 60)]).Windows.Count);
        Assert.Equal(2, new WindowLayout(OnPipe, [Disc(100, 100), Disc(136, 136)]).Windows.Count);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => Square(100, 0, 0), "extentAlong", "0 mm", "more than 0 and at most 1000 mm");
        Errors.Refused(static () => ContactWindow.Rectangle(Mm(1), Mm(1), Mm(5), Mm(1001)), "extentAround", "1001 mm");
        Errors.Refused(static () => ContactWindow.Disc(Mm(1), Mm(1), Mm(-1)), "diameter", "-1 mm");
        Errors.Refused(static () => ContactWindow.Disc(Mm(1e10), Mm(1), Mm(1)), "along", "10000000000 mm");
        Errors.Refused(static () => WindowShape.Rectangle(Mm(0), Mm(1)), "along", "0 mm");
        Errors.Refused(static () => WindowShape.Disc(Mm(1001)), "diameter", "1001 mm");
        Errors.Refused(static () => new PlacedStrip(0, Mm(0), Mm(1), Mm(0), Mm(1), true), "number", "0");
        Errors.Refused(static () => new PlacedStrip(1, Mm(0), Mm(0), Mm(0), Mm(1), true), "along", "0 mm");
    }

    private static ContactWindow Square(double along, double around, double side = 50) =>
        ContactWindow.Rectangle(Mm(along), Mm(around), Mm(side), Mm(side));

    private static ContactWindow Disc(double along, double around) => ContactWindow.Disc(Mm(along), Mm(around), Mm(50));

    private static void Said(string text, UnrolledSurface surface, params ContactWindow[] windows)
    {
        ArgumentException thrown = Assert.Throws<ArgumentException>(() => new WindowLayout(surface, new ValueList<ContactWindow>(windows)));
        Assert.Equal("windows", thrown.ParamName);
        Assert.Contains(text, thrown.Message, StringComparison.Ordinal);
    }
}
