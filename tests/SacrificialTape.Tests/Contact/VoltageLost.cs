using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>Voltage lost between zinc and steel: the net against the closed forms, and both against the rules.</summary>
[Properties(MaxTest = 60)]
public sealed class VoltageLost
{
    private static readonly FoilSheet Sheet = new(Length.FromMicrometers(100));
    private static readonly DrivingVoltage Driving = new(
        ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.CopperSulfate));

    [Property]
    public void One_strip_over_a_window_at_its_end_is_the_closed_form(byte bare, byte free, byte resistance, byte thick)
    {
        // Window as wide as the strip: no spreading. i r_c everywhere, the current of the free length through the long
        // joint, and what that length collects.
        double joined = 50 + (2.0 * bare);
        double length = 200 + (free * 8.0);
        double ohmCm2 = 0.01 * Math.Pow(1.03, resistance);
        var sheet = new FoilSheet(Length.FromMicrometers(20 + thick));
        ContactNetwork net = OneStrip(joined, joined + length, 80, sheet, ohmCm2, 2);
        TapeDemand demand = net.Demand;
        double i = demand.Covered.AmperesPerSquareMeter;
        var joint = new LongJoint(new StripPath(sheet, Mm(joined), Mm(80)), ContactResistivity.FromOhmSquareCentimeters(ohmCm2));
        var path = new StripPath(sheet, Mm(length), Mm(80));
        double closed = (i * ohmCm2 / 1e4) + (i * length * 80 / 1e6 * joint.Resistance.Ohms) + path.DropOf(demand.Covered).Volts;
        Near.Equal(closed, net.MostLost.Volts, 2e-4);
        Assert.InRange(net.Missed, 0, 1e-10);
        Near.Equal(i * (joined + length) * 80 / 1e6, net.Current.Amperes, 1e-12);
    }

    [Fact]
    public void Halving_the_cells_quarters_the_error()
    {
        double Most(double cell) => OneStrip(200, 3000, 80, Sheet, 0.5, cell).MostLost.Volts;
        double first = Most(40) - Most(20);
        double second = Most(20) - Most(10);
        Near.Equal(4, first / second, 0.05);
    }

    [Property]
    public void More_windows_or_a_better_joint_never_lose_more(int seed)
    {
        var random = new Random(seed);
        StraightPipe pipe = Pipe(100 + (random.NextDouble() * 200), 1500);
        var lay = new RingLay(pipe, Stock(), Mm(20));
        WindowLayout layout = LayoutCase.Make(random, new(pipe));
        if (layout.Windows.Count == 0)
        {
            return;
        }

        ContactNetwork net = Of(lay, layout, 1);
        Assert.True(Of(lay, layout, 0.5).MostLost.Volts <= net.MostLost.Volts);
        if (net.StripsWithoutSteel == 0 && LayoutCase.OneMore(random, layout) is { } more)
        {
            // Spreading is that of what a strip touches in one window, so that one more adds a way and takes none.
            Assert.True(Of(lay, more, 1).MostLost.Volts <= net.MostLost.Volts * (1 + 1e-9));
        }

        Assert.InRange(net.Missed, 0, 1e-10);
    }

    [Fact]
    public void Every_strip_with_the_same_window_has_the_voltage_of_one()
    {
        // Rings side by side without a lap: each stands alone, and all are alike.
        StraightPipe pipe = Pipe(200, 1000);
        ValueList<PlacedStrip> ten = new(Enumerable.Range(0, 10).Select(static i => new PlacedStrip(i + 1, Mm(100 * i), Mm(100), Mm(0), Mm(Math.PI * 200), true)));
        var all = new WindowLayout(new(pipe), [.. Enumerable.Range(0, 10).Select(static i => ContactWindow.Rectangle(Mm((100 * i) + 50), Mm(0), Mm(50), Mm(50)))]);
        var first = new WindowLayout(new(pipe), [all.Windows[0]]);
        double one = Of([ten[0]], first, 1).MostLost.Volts;
        Near.Equal(one, Of(ten, all, 1).MostLost.Volts, 1e-9);
        Assert.Equal(9, Of(ten, first, 1).StripsWithoutSteel);
        Near.Equal(one, Of(ten, first, 1).MostLost.Volts, 1e-9);
    }

    [Property]
    public void Every_covered_area_sends_its_current_once(byte diameter, byte lap, byte kind)
    {
        // Whatever the laps, of rings on themselves too: what flows is the demand of the surface.
        StraightPipe pipe = Pipe(120 + diameter, 1500);
        LayChoices choices = Choices(0, 10 + (lap / 4.0), 1 + (lap % 2));
        ILay lay = (kind % 3) switch
        {
            0 => new RingLay(pipe, Stock(), Mm(lap * 0.3), choices),
            1 => new AlongPipeLay(pipe, Stock(), Mm(lap * 0.3), choices),
            _ => new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(Mm(lap * 0.3)), null, choices),
        };
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(700), Mm(30), Mm(100), Mm(100))]);
        ContactNetwork net = ContactNetwork.Of(new LayContact(lay, layout), Sheet, Joint(1), Demand(0.1), Mm(70));
        if (net.StripsWithoutSteel == 0)
        {
            Near.Equal(0.1 * pipe.Area.SquareMeters, net.Current.Amperes, 1e-9);
        }
    }

    [Fact]
    public void Over_a_film_the_laps_carry_nothing()
    {
        StraightPipe pipe = Pipe(200, 1000);
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(50), Mm(0), Mm(50), Mm(50))]);
        ValueList<PlacedStrip> strips = new RingLay(pipe, Stock(), Mm(20)).PlaceStrips();
        var faced = new ContactNetwork(strips, layout, false, Sheet, Joint(1), Demand(0.1));
        Assert.Equal(strips.Count - 1, faced.StripsWithoutSteel);
        Assert.Equal(1, faced.WorstStrip!.Number);
        Assert.Equal(0, new ContactNetwork(strips, layout, true, Sheet, Joint(1), Demand(0.1)).StripsWithoutSteel);
        Assert.Null(new ContactNetwork(strips, new WindowLayout(new(pipe), []), true, Sheet, Joint(1), Demand(0.1)).WorstStrip);
    }

    [Fact]
    public void The_net_loses_more_than_the_mean_window_and_no_more_than_the_budget_and_its_laps()
    {
        StraightPipe pipe = Pipe(219.1, 6000);
        var lay = new RingLay(pipe, Stock(), Mm(20));
        var contact = new LayContact(lay, WindowPlan.For(lay, RuleSet.Default));
        VoltageBudget budget = VoltageBudget.Worst(contact, Sheet, Joint(1), Demand(0.1), Driving);
        ContactNetwork net = ContactNetwork.Of(contact, Sheet, Joint(1), Demand(0.1), Mm(25));

        // At the least what all the current loses in all the windows; at most the budget, and every lap on the way crossed
        // by the whole current of a window.
        double mean = net.Current.Amperes * 1 / contact.Layout.BareArea.SquareCentimeters;
        double lap = 1 / (lay.Lap.Centimeters * pipe.Circumference.Centimeters);
        double laps = Math.Ceiling(contact.FindFarthest()!.AtMost / (lay.Stock.Width - lay.Lap)) * lap * budget.Current.Amperes;
        Assert.InRange(net.MostLost.Volts, mean, budget.Lost.Volts + laps);
        Near.Equal(
            budget.Lost.Volts, (budget.InAdhesive + budget.InSpreading + budget.InStrip).Volts, 1e-12);
    }

    [Fact]
    public void What_is_found()
    {
        var path = new StripPath(Sheet, Mm(700), Mm(100));
        VoltageBudget Budget(double ohmCm2, AdhesiveState state, double steelVolts = -0.85) => new(
            path,
            new AdhesiveResistance(ContactResistivity.FromOhmSquareCentimeters(ohmCm2), state),
            Area.FromSquareCentimeters(25),
            Area.FromSquareMeters(0.25),
            Demand(0.1),
            new DrivingVoltage(ElectrodePotential.FromVolts(steelVolts, ReferenceElectrode.CopperSulfate)));

        // 25 mA over 25 cm2 through 25 ohm.cm2 are 25 mV: 10 % of 0.25 V, and the foil adds its part.
        Assert.Empty(Ids(Budget(20, AdhesiveState.Measured)));
        Assert.Equal([RuleIds.MaximumVoltageShare], Ids(Budget(25, AdhesiveState.EndOfLife)));
        Assert.Equal([RuleIds.FreshAdhesive], Ids(Budget(1, AdhesiveState.Fresh)));
        Assert.Equal([RuleIds.NoDrivingVoltage], Ids(Budget(1, AdhesiveState.Measured, -1.15)));
        Near.Equal(20e-3, Budget(20, AdhesiveState.Measured).InAdhesive.Volts, 1e-12);

        static IEnumerable<string> Ids(VoltageBudget budget) => budget.Judge(RuleSet.Default, "A-1").Select(static one => one.Rule.Id);
    }

    [Fact]
    public void Readings_are_judged_and_bonding_limits_named_for_what_they_are()
    {
        ValueList<ContactReading> readings =
        [
            new("window 1", ElectricResistance.FromMilliohms(100)),
            new("window 2", ElectricResistance.FromMilliohms(101)),
            new("strip 7", foilToSteel: ElectricPotential.FromMillivolts(-26)),
            new("strip 8", foilToSteel: ElectricPotential.FromMillivolts(24)),
        ];
        Finding[] found = [.. ContactReading.Judge(readings, Driving, RuleSet.Default, "A-1")];
        Assert.Equal([RuleIds.MaximumContactResistance, RuleIds.MaximumVoltageShare, RuleIds.BondingLimits], found.Select(static one => one.Rule.Id));
        Assert.Equal("A-1 (window 2)", found[0].Subject);
        Assert.Contains("None is a corrosion requirement", found[2].Message, StringComparison.Ordinal);
        Assert.Equal("window 2, 101 mohm", readings[1].ToString());
        Assert.Empty(ContactReading.Judge([readings[3]], Driving, RuleSet.Default, "A-1"));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new FoilSheet(Length.Zero), "thicknessLeft", "0 um");
        Errors.Refused(static () => new FoilSheet(Mm(0.1), Temperature.FromDegreesCelsius(200)), "temperature", "200 degC");
        Errors.Refused(static () => FoilSheet.OfMetal(Mm(0.1), ElectricResistivity.FromOhmMeters(0)), "resistivity", "0 ohm.m");
        Errors.Refused(static () => new StripPath(Sheet, Mm(0), Mm(1)), "length", "0 mm");
        Errors.Refused(static () => new StripPath(Sheet, Mm(1), Mm(0)), "width", "0 mm");
        Errors.Refused(static () => new SheetSpread(Sheet, Mm(5), Mm(5)), "reach", "5 mm", "the radius of the disc");
        Errors.Refused(static () => Joint(0), "resistivity", "0 ohm.cm2");
        Errors.Refused(static () => AdhesiveResistance.FromJoint(ElectricResistance.Zero, Area.FromSquareCentimeters(1), AdhesiveState.Fresh), "resistance", "0 ohm");
        Errors.Refused(static () => new LongJoint(new StripPath(Sheet, Mm(1), Mm(1)), ContactResistivity.FromOhmSquareCentimeters(0)), "adhesive", "0 ohm.cm2");
        Errors.Refused(static () => new TapeDemand(CurrentDemand.Of(DemandMedium.Concrete), AreaRatio.FromRatio(101)), "bareForEachCovered", "101");
        Errors.Refused(static () => new ContactReading("w", ElectricResistance.FromOhms(-1)), "resistance", "-1 ohm");
        Errors.Refused(static () => new SpotCluster(ElectricResistivity.FromOhmMeters(1e-7), ElectricResistivity.FromOhmMeters(1e-7), []), "spots", "0 spots");
        Assert.Throws<ArgumentException>(static () => new ContactReading("w"));
        Assert.Throws<ArgumentException>(static () => VoltageBudget.Worst(
            new LayContact(new RingLay(Pipe(), Stock(), Mm(20)), new WindowLayout(new(Pipe()), [])), Sheet, Joint(1), Demand(1), Driving));
    }

    private static AdhesiveResistance Joint(double ohmCm2) => new(ContactResistivity.FromOhmSquareCentimeters(ohmCm2), AdhesiveState.EndOfLife);

    private static TapeDemand Demand(double amperesPerM2) => new(
        CurrentDemand.FromMeasurement(ElectricCurrentDensity.Zero, ElectricCurrentDensity.FromAmperesPerSquareMeter(amperesPerM2), "made up"), AreaRatio.FromRatio(1));

    private static ContactNetwork Of(RingLay lay, WindowLayout layout, double ohmCm2) => Of(lay.PlaceStrips(), layout, ohmCm2);

    private static ContactNetwork Of(ValueList<PlacedStrip> strips, WindowLayout layout, double ohmCm2) =>
        new(strips, layout, true, Sheet, Joint(ohmCm2), Demand(0.1), Mm(50));

    private static ContactNetwork OneStrip(double joined, double length, double width, FoilSheet sheet, double ohmCm2, double cell) => new(
        [new PlacedStrip(1, Mm(0), Mm(length), Mm(0), Mm(width), false)],
        new WindowLayout(
            new(new RectangularPanel(Mm(length), Mm(width))), [ContactWindow.Rectangle(Mm(joined / 2), Mm(width / 2), Mm(joined), Mm(width))]),
        true,
        sheet,
        Joint(ohmCm2),
        Demand(0.1),
        Mm(cell));
}
