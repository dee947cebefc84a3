using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

public sealed class ShellsAndFlanges
{
    private const FlangeParts Whole = FlangeParts.Rim | FlangeParts.Back | FlangeParts.Front;

    [Fact]
    public void A_shell_without_openings_is_a_pipe()
    {
        foreach (ShellAxis axis in Enum.GetValues<ShellAxis>())
        {
            Near.Equal(Pipe(3000, 8000).Area.SquareMeters, new Shell(Mm(3000), Mm(8000), axis).Area.SquareMeters, 1e-15);
        }
    }

    [Fact]
    public void A_nozzle_and_its_shell_are_a_tee()
    {
        // Tee = shell less the hole, plus the wall of the branch, counted here in strips.
        var tee = new Tee(Mm(1000), Mm(600), Mm(900), Mm(800));
        var shell = new Shell(Mm(1000), Mm(1800), ShellAxis.Lying, [ShellOpening.Round(Mm(600))]);
        double wall = 0;
        for (int i = 0; i < 1000; i++)
        {
            double across = 300 * Math.Sin(2 * Math.PI * (i + 0.5) / 1000);
            wall += (800 - Math.Sqrt((500 * 500) - (across * across))) * 2 * Math.PI * 300 / 1000;
        }

        Near.Equal(tee.Area.SquareMeters, shell.Area.SquareMeters + (wall / 1e6), 1e-13);
    }

    [Fact]
    public void Openings_are_taken_off_one_by_one()
    {
        double whole = new Shell(Mm(3000), Mm(8000), ShellAxis.Upright).Area.SquareMeters;
        var shell = new Shell(
            Mm(3000), Mm(8000), ShellAxis.Upright, [ShellOpening.Rectangular(Mm(1200), Mm(800), 2), ShellOpening.Round(Mm(60.3), 3)]);
        double circle = Math.PI * 0.0603 * 0.0603 / 4;
        Near.Equal(whole, shell.GrossArea.SquareMeters, 1e-15);
        Near.Equal(whole - 1.92 - (3 * circle), shell.Area.SquareMeters, 1e-6);

        // On the curved shell a hole is a little larger than its circle.
        Assert.True(whole - 1.92 - (3 * circle) > shell.Area.SquareMeters);
        Assert.Equal("upright shell 3000 mm, 8 m high, 5 opening(s)", shell.Description);
        Near.Equal(Math.PI * 3000, shell.Circumference.Millimeters, 1e-15);
    }

    [Fact]
    public void A_flange_by_hand()
    {
        // Diameters 200, 100 and 120, holes 4 of 20, rim 25: pi times 5000, (40000 - 10000 - 1600) / 4 and (40000 - 14400 - 1600) / 4.
        Flange flange = Of(Whole);
        Near.Equal(Math.PI * 5000 / 1e6, flange.RimArea.SquareMeters, 1e-15);
        Near.Equal(Math.PI * 7100 / 1e6, flange.BackArea.SquareMeters, 1e-15);
        Near.Equal(Math.PI * 6000 / 1e6, flange.FrontArea.SquareMeters, 1e-15);
        Near.Equal(Math.PI * 18_100 / 1e6, flange.Area.SquareMeters, 1e-15);
        Near.Equal(Math.PI * 12_100 / 1e6, Of(FlangeParts.Rim | FlangeParts.Back).Area.SquareMeters, 1e-15);
        Near.Equal(Math.PI * 6000 / 1e6, Of(FlangeParts.Front).Area.SquareMeters, 1e-15);
    }

    [Fact]
    public void Twice_the_size_has_four_times_the_area()
    {
        var twice = new Flange(Mm(400), Mm(50), Mm(200), Mm(240), 4, Mm(40), Whole);
        Near.Equal(4 * Of(Whole).Area.SquareMeters, twice.Area.SquareMeters, 1e-15);
        ValueList<ShellOpening> once = [ShellOpening.Round(Mm(500), 2), ShellOpening.Rectangular(Mm(300), Mm(200))];
        ValueList<ShellOpening> doubled = [ShellOpening.Round(Mm(1000), 2), ShellOpening.Rectangular(Mm(600), Mm(400))];
        Near.Equal(
            4 * new Shell(Mm(1000), Mm(3000), ShellAxis.Lying, once).Area.SquareMeters,
            new Shell(Mm(2000), Mm(6000), ShellAxis.Lying, doubled).Area.SquareMeters,
            1e-14);
    }

    [Fact]
    public void Every_flange_of_the_table_holds_its_bolts()
    {
        foreach (FlangeTable.Row row in FlangeTable.Rows)
        {
            PipeSize pipe = PipeSize.FromNps(row.Nps);
            FlangeSize size = FlangeSize.Class150(pipe);
            var flange = new Flange(size, pipe.OutsideDiameter, Whole);
            Assert.True(flange.BackArea > flange.FrontArea);
            Assert.Equal(size, flange.Size);
            Assert.Equal(BasisKind.Published, size.Basis.Kind);
            Assert.Equal(BasisKind.Recalled, size.RaisedFaceBasis.Kind);
            Assert.Contains("recalled, check before use", flange.ShowWorkings().ToString(), StringComparison.Ordinal);
            Near.Equal(size.Thickness.Millimeters - 1.6, flange.RimThickness.Millimeters, 1e-15);

            // The circle of bolts lies between the raised face and the rim, holes and all.
            double circle = size.BoltCircle.Millimeters;
            double hole = size.BoltHoleDiameter.Millimeters;
            Assert.InRange(circle, size.RaisedFaceDiameter.Millimeters + hole, size.OutsideDiameter.Millimeters - hole);
        }
    }

    [Fact]
    public void Sizes_that_are_not_known() => Assert.Multiple(
        static () => Assert.Contains("NPS 5 is not known here; known are NPS 1/2, 2, 3", Assert.Throws<ArgumentException>(static () => FlangeSize.Class150(PipeSize.FromNps("5"))).Message, StringComparison.Ordinal),
        static () => Assert.Contains("not NPS 6 (DN 150), ISO 4200 series 1", Assert.Throws<ArgumentException>(static () => FlangeSize.Class150(PipeSize.FromDn(150, PipeStandard.Iso4200Series1))).Message, StringComparison.Ordinal));

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(200), Mm(120), 4, Mm(20), Whole), "hubDiameter", "200 mm is outside", "less than 200 mm"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(100), Mm(220), 4, Mm(20), Whole), "raisedFaceDiameter", "220 mm is outside"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(100), Mm(120), 4, Mm(41), Whole), "boltHoleDiameter", "41 mm is outside", "at most 40 mm"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(100), Mm(120), 0, Mm(20), Whole), "boltHoleDiameter", "20 mm is outside"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(100), Mm(120), 200, Mm(20), Whole), "boltHoleDiameter", "20 mm is outside"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(25), Mm(100), Mm(120), -1, Mm(20), Whole), "boltHoles", "-1 is outside"),
        static () => Errors.Refused(static () => new Flange(Mm(200), Mm(0), Mm(100), Mm(120), 4, Mm(20), Whole), "rimThickness", "0 mm is outside"),
        static () => Errors.Refused(static () => Of(FlangeParts.None), "parts", "at least one"),
        static () => Errors.Refused(static () => Of((FlangeParts)8), "parts", "at least one"),
        static () => Errors.Refused(static () => new Shell(Mm(1000), Mm(2000), (ShellAxis)7), "axis"),
        static () => Errors.Refused(static () => Open(ShellOpening.Round(Mm(1001))), "openings", "1001 mm is outside", "at most 1000 mm"),
        static () => Errors.Refused(static () => Open(ShellOpening.Rectangular(Mm(2001), Mm(10))), "openings", "2001 mm is outside"),
        static () => Errors.Refused(static () => Open(ShellOpening.Rectangular(Mm(10), Mm(3142))), "openings", "3142 mm is outside"),
        static () => Errors.Refused(static () => ShellOpening.Round(Mm(100), 0), "count"),
        static () => Errors.Refused(static () => ShellOpening.Rectangular(Mm(100), Mm(0)), "around", "0 mm is outside"));

    [Fact]
    public void Openings_that_leave_nothing() => Assert.Contains(
        "nothing is left to cover",
        Assert.Throws<ArgumentException>(static () => Open(ShellOpening.Rectangular(Mm(2000), Mm(1600), 2))).Message,
        StringComparison.Ordinal);

    private static Shell Open(ShellOpening opening) => new(Mm(1000), Mm(2000), ShellAxis.Upright, [opening]);

    private static Flange Of(FlangeParts parts) => new(Mm(200), Mm(25), Mm(100), Mm(120), 4, Mm(20), parts);
}
