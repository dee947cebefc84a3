using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class Panels
{
    private static readonly PanelOpening Door = PanelOpening.Rectangular(Mm(800), Mm(2000));
    private static readonly PanelOpening Port = PanelOpening.Circular(Mm(400));

    [Fact]
    public void By_hand()
    {
        Near.Equal(6, new RectangularPanel(Mm(3000), Mm(2000)).Area.SquareMeters, 1e-15);
        Near.Equal(6 - 1.6 - (2 * Math.PI * 0.04), new RectangularPanel(Mm(3000), Mm(2000), [Door, PanelOpening.Circular(Mm(400), 2)]).Area.SquareMeters, 1e-14);
        Near.Equal(Math.PI - 0.5, new CircularPanel(Mm(2000), [PanelOpening.Rectangular(Mm(1000), Mm(500))]).Area.SquareMeters, 1e-14);
        Near.Equal(Math.PI * 3 / 4, new AnnularPanel(Mm(2000), Mm(1000)).Area.SquareMeters, 1e-14);
        Assert.Equal("panel 3000 x 2000 mm, 3 opening(s)", new RectangularPanel(Mm(3000), Mm(2000), [Door, PanelOpening.Circular(Mm(400), 2)]).Description);
        Assert.Equal("ring 2000 mm outside, 1000 mm inside", new AnnularPanel(Mm(2000), Mm(1000)).Description);
    }

    [Property]
    public void Openings_add_up_and_size_goes_by_the_square(SpanCase given)
    {
        double size = 100 + (given.SpanMm / 10);
        PanelOpening Small(double scale) => PanelOpening.Circular(Mm(scale * size / 10), 2);
        PanelOpening Wide(double scale) => PanelOpening.Rectangular(Mm(scale * size / 5), Mm(scale * size / 8), 3);
        Panel[] Of(double scale, params PanelOpening[] openings) =>
        [
            new RectangularPanel(Mm(scale * size), Mm(scale * (size + given.WidthMm)), openings),
            new CircularPanel(Mm(scale * size), openings),
            new AnnularPanel(Mm(scale * size), Mm(scale * size / 3), openings),
        ];
        Panel[] none = Of(1);
        Panel[] small = Of(1, Small(1));
        Panel[] wide = Of(1, Wide(1));
        Panel[] both = Of(1, Small(1), Wide(1));
        Panel[] doubled = Of(2, Small(2), Wide(2));
        for (int i = 0; i < none.Length; i++)
        {
            double gross = none[i].Area.SquareMeters;
            Near.Equal(gross, both[i].GrossArea.SquareMeters, 1e-15);
            Near.Equal(gross - both[i].Area.SquareMeters, gross - small[i].Area.SquareMeters + gross - wide[i].Area.SquareMeters, 1e-12, absolute: gross * 1e-14);
            Near.Equal(4 * both[i].Area.SquareMeters, doubled[i].Area.SquareMeters, 1e-13);
        }
    }

    [Fact]
    public void Units_do_not_count()
    {
        var feet = new RectangularPanel(Length.FromFeet(10), Length.FromInches(60), [PanelOpening.Circular(Length.FromInches(10))]);
        var metric = new RectangularPanel(Mm(3048), Length.FromMeters(1.524), [PanelOpening.Circular(Length.FromCentimeters(25.4))]);
        Assert.Equal(metric, feet);
        Near.Equal(metric.Area.SquareMeters, feet.Area.SquareMeters, 1e-15);
    }

    [Fact]
    public void A_ring_is_a_disc_with_a_round_opening()
    {
        Near.Equal(
            new CircularPanel(Mm(800), [PanelOpening.Circular(Mm(300)).At(Mm(0), Mm(0))]).Area.SquareMeters,
            new AnnularPanel(Mm(800), Mm(300)).Area.SquareMeters,
            1e-14);
    }

    [Fact]
    public void Places_within_the_panel() => Assert.Multiple(
        static () => _ = new RectangularPanel(Mm(3000), Mm(2000), [Door.At(Mm(-1100), Mm(0)), Port.At(Mm(-500), Mm(800))]),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [Door.At(Mm(-1101), Mm(0))]), "does not lie within"),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [Port.At(Mm(0), Mm(801))]), "does not lie within"),
        static () => _ = new CircularPanel(Mm(1000), [PanelOpening.Rectangular(Mm(300), Mm(400)).At(Mm(250), Mm(100))]),
        static () => Place(static () => new CircularPanel(Mm(1000), [PanelOpening.Rectangular(Mm(300), Mm(400)).At(Mm(251), Mm(100))]), "at (251, 100) mm"),
        static () => _ = new CircularPanel(Mm(1000), [Port.At(Mm(180), Mm(-240))]),
        static () => Place(static () => new CircularPanel(Mm(1000), [Port.At(Mm(181), Mm(-240))]), "does not lie within"),
        static () => _ = new AnnularPanel(Mm(2000), Mm(1000), [Port.At(Mm(0), Mm(700))]),
        static () => Place(static () => new AnnularPanel(Mm(2000), Mm(1000), [Port.At(Mm(0), Mm(699))]), "does not lie within"),
        static () => _ = new AnnularPanel(Mm(2000), Mm(1000), [PanelOpening.Rectangular(Mm(100), Mm(400)).At(Mm(0), Mm(700))]),
        static () => Place(static () => new AnnularPanel(Mm(2000), Mm(1000), [PanelOpening.Rectangular(Mm(100), Mm(400)).At(Mm(0), Mm(699))]), "does not lie within"));

    [Fact]
    public void Places_clear_of_each_other() => Assert.Multiple(
        static () => _ = new RectangularPanel(Mm(3000), Mm(2000), [Port.At(Mm(0), Mm(0)), Port.At(Mm(240), Mm(320)), Door.At(Mm(-600), Mm(0))]),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [Port.At(Mm(0), Mm(0)), Port.At(Mm(240), Mm(319))]), "overlap"),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [Port.At(Mm(0), Mm(0)), Door.At(Mm(-599), Mm(0))]), "overlap"),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [Door.At(Mm(0), Mm(0)), Door.At(Mm(799), Mm(0))]), "overlap"),
        // A circle by the corner of a rectangle: the corner lies 240 aside and 320 below its middle, 400 away.
        static () => _ = new RectangularPanel(Mm(3000), Mm(2000), [PanelOpening.Rectangular(Mm(200), Mm(200)).At(Mm(0), Mm(0)), PanelOpening.Circular(Mm(800)).At(Mm(340), Mm(420))]),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [PanelOpening.Rectangular(Mm(200), Mm(200)).At(Mm(0), Mm(0)), PanelOpening.Circular(Mm(800)).At(Mm(339), Mm(420))]), "overlap"));

    [Fact]
    public void Many_openings_have_no_one_place() => Assert.Contains(
        "list them one by one",
        Assert.Throws<InvalidOperationException>(static () => PanelOpening.Circular(Mm(10), 2).At(Mm(0), Mm(0))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Openings_larger_than_their_panel() => Assert.Multiple(
        static () => Errors.Refused(static () => new RectangularPanel(Mm(700), Mm(2000), [Door]), "openings", "800 mm is outside", "at most 700 mm"),
        static () => Errors.Refused(static () => new RectangularPanel(Mm(900), Mm(1900), [Door]), "openings", "2000 mm is outside", "at most 1900 mm"),
        static () => Errors.Refused(static () => new CircularPanel(Mm(399), [Port]), "openings", "400 mm is outside", "at most 399 mm"),
        static () => Errors.Refused(static () => new CircularPanel(Mm(499), [PanelOpening.Rectangular(Mm(300), Mm(400))]), "openings", "500 mm is outside", "diagonal"),
        static () => Errors.Refused(static () => new AnnularPanel(Mm(1000), Mm(400), [Port]), "openings", "400 mm is outside", "at most 300 mm", "width of the ring"),
        static () => Place(static () => new AnnularPanel(Mm(1000), Mm(600), [PanelOpening.Rectangular(Mm(601), Mm(100))]), "does not fit between"),
        static () => _ = new AnnularPanel(Mm(1000), Mm(600), [PanelOpening.Rectangular(Mm(600), Mm(100))]),
        static () => _ = new AnnularPanel(Mm(1000), Mm(600), [PanelOpening.Rectangular(Mm(100), Mm(600))]));

    [Fact]
    public void Openings_that_leave_nothing() => Assert.Multiple(
        static () => Place(static () => new RectangularPanel(Mm(800), Mm(2000), [Door]), "nothing is left"),
        static () => Place(static () => new RectangularPanel(Mm(3000), Mm(2000), [PanelOpening.Rectangular(Mm(1000), Mm(1000), 6)]), "6 m2, the panel 3000 x 2000 mm to 6 m2"),
        static () => Place(static () => new CircularPanel(Mm(400), [Port]), "nothing is left"),
        static () => Place(static () => new AnnularPanel(Mm(1000), Mm(900), [PanelOpening.Circular(Mm(50), 100)]), "nothing is left"));

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new RectangularPanel(Mm(0), Mm(10)), "width", "0 mm is outside", "at least 10 and at most 1000000 mm"),
        static () => Errors.Refused(static () => new RectangularPanel(Mm(2.4), Mm(1.8)), "width", "2.4 mm is outside", "metres stated as millimetres"),
        static () => Errors.Refused(static () => new CircularPanel(Mm(1.8)), "diameter", "1.8 mm is outside", "metres stated as millimetres"),
        static () => Errors.Refused(static () => new Shell(Mm(2.4), Mm(5600), ShellAxis.Upright), "outsideDiameter", "2.4 mm is outside", "metres stated as millimetres"),
        static () => Errors.Refused(static () => TorisphericalHead.Kloepper(Mm(2.4), Mm(0.01), Mm(0)), "outsideDiameter", "2.4 mm is outside", "metres stated as millimetres"),
        static () => Errors.Refused(static () => new RectangularPanel(Mm(10), Mm(-1)), "height", "-1 mm is outside"),
        static () => Errors.Refused(static () => new CircularPanel(Mm(0.5)), "diameter", "0.5 mm is outside"),
        static () => Errors.Refused(static () => new AnnularPanel(Mm(500), Mm(500)), "insideDiameter", "500 mm is outside", "less than 500 mm"),
        static () => Errors.Refused(static () => PanelOpening.Circular(Mm(0)), "diameter", "0 mm"),
        static () => Errors.Refused(static () => PanelOpening.Rectangular(Mm(10), Mm(0)), "height", "0 mm"),
        static () => Errors.Refused(static () => PanelOpening.Circular(Mm(10), 0), "count"),
        static () => Errors.Refused(static () => Port.At(Mm(2e6), Mm(0)), "right", "2000000 mm is outside"),
        static () => Errors.Refused(static () => Port.At(Mm(0), Mm(-2e6)), "up", "-2000000 mm is outside"));

    [Fact]
    public void A_corrugated_sheet_by_hand()
    {
        // Webs of 30 across and 40 deep are 50 long: 70 + 70 + 100 in a pitch of 200.
        var sheet = new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Mm(40), 10, Mm(3000), Mm(150));
        Near.Equal(240, sheet.DevelopedPitch.Millimeters, 1e-15);
        Near.Equal(2.55 * 3, sheet.Area.SquareMeters, 1e-14);
        Assert.Equal("corrugated sheet 3 m long, 10 corrugations of 200 mm, 40 mm deep", sheet.Description);
    }

    [Property]
    public void A_corrugated_sheet_without_depth_is_flat(SpanCase given)
    {
        double pitch = 2 + given.WidthMm;
        double crown = given.LapMm / 2;
        CorrugatedPanel Of(double depth, double scale = 1) => new(
            Mm(scale * pitch), Mm(scale * crown), Mm(scale * crown / 2), Mm(scale * depth), 12, Mm(scale * (10 + given.SpanMm)), Mm(scale * given.LapMm));
        var flat = new RectangularPanel(Mm((12 * pitch) + given.LapMm), Mm(10 + given.SpanMm));
        Near.Equal(flat.Area.SquareMeters, Of(0).Area.SquareMeters, 1e-13);
        Near.Equal(flat.Area.SquareMeters, Of(1e-6).Area.SquareMeters, 1e-9);
        Assert.True(Of(30).Area > Of(20).Area);
        Near.Equal(9 * Of(30).Area.SquareMeters, Of(30, 3).Area.SquareMeters, 1e-13);
    }

    [Fact]
    public void Corrugations_that_are_none() => Assert.Multiple(
        static () => _ = new CorrugatedPanel(Mm(200), Mm(100.1), Mm(99.9), Mm(40), 1, Mm(100)),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(201), Mm(0), Mm(40), 1, Mm(100)), "crownWidth", "201 mm is outside", "at most 200 mm"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(120), Mm(81), Mm(40), 1, Mm(100)), "valleyWidth", "81 mm is outside", "at most 80 mm"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(70), Mm(-1), Mm(40), 1, Mm(100)), "valleyWidth", "-1 mm is outside"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Mm(-40), 1, Mm(100)), "depth", "-40 mm is outside"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Mm(40), 0, Mm(100)), "corrugations", "0 is outside", "at least 1"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Mm(40), 1, Mm(0)), "length", "0 mm is outside"),
        static () => Errors.Refused(static () => new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Mm(40), 1, Mm(100), Mm(-1)), "flatWidth", "-1 mm is outside"));

    private static void Place(Func<object?> make, string said) => Assert.Contains(
        said, Assert.Throws<ArgumentException>(() => { _ = make(); }).Message, StringComparison.Ordinal);
}
