using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Contact over windows of bare steel.</content>
public sealed partial class ShownWorkings
{
    [Fact]
    public static void Of_contact_at_places()
    {
        var bend = new UnrolledSurface(new Bend(Mm(219.1), Mm(305), Angle.FromDegrees(90)));
        IReadOnlyDictionary<string, double> unrolled = Checked(bend);
        Near.Equal(bend.FactorAlong(bend.Girth / 2).Ratio, unrolled["g"], 1e-12);
        Near.Equal(bend.Surface.Area.SquareMillimeters / bend.Length.Millimeters, unrolled["G_m"], 1e-12);
        _ = Checked(new UnrolledSurface(Pipe()));
        StraightPipe pipe = Pipe(219.1, 6000);
        var lay = new RingLay(pipe, Stock(), Mm(20));
        WindowLayout layout = WindowPlan.For(lay, RuleSet.Default);
        var contact = new LayContact(lay, layout);
        Ends(Checked(layout), layout.Windows[0].ExtentAlong.Centimeters * layout.Windows[0].ExtentAround.Centimeters);
        var discs = new WindowLayout(bend, [ContactWindow.Disc(Mm(200), Mm(100), Mm(40))]);
        Near.Equal(discs.BareArea.SquareCentimeters, Checked(discs)["A_w"], 1e-12);
        Ends(Checked(contact.FindWorstMetre()), contact.FindWorstMetre().Ratio.SquareCentimetersPerSquareMeter);
        Ends(Checked(contact), contact.FindWorstMetre().Ratio.SquareCentimetersPerSquareMeter);
        Ends(Checked(contact.FindFarthest()!), contact.FindFarthest()!.Found.Millimeters);
        JoinedStrips strips = contact.Strips(Area.FromSquareCentimeters(1))!;
        Ends(Checked(strips), strips.Untouched.Count);
        var marks = new MarkingList(layout);
        Ends(Checked(marks), marks.Marks[^1].Turned!.Value.Degrees);
    }

    [Fact]
    public static void Of_voltage_lost()
    {
        var sheet = new FoilSheet(Mm(0.1), Temperature.FromDegreesCelsius(35));
        IReadOnlyDictionary<string, double> square = Checked(sheet);
        Near.Equal(sheet.Resistivity.OhmMeters, square["rho"], 1e-12);
        Ends(square, sheet.Square.Ohms);
        var cluster = new SpotCluster(
            ElectricResistivity.FromOhmMeters(1.43e-7),
            ElectricResistivity.FromOhmMeters(5.9e-8),
            [new(Mm(0), Mm(0), Mm(0.01)), new(Mm(1), Mm(0), Mm(0.02))]);
        IReadOnlyDictionary<string, double> spots = Checked(cluster);
        Near.Equal(cluster.FirstAlone.Ohms, spots["R_1"], 1e-12);
        Near.Equal(cluster.FarApart.Ohms, spots["R_N"], 1e-12);
        Near.Equal(cluster.ByHolm.Ohms, spots["R_A"], 1e-12);
        Ends(spots, cluster.ByGreenwood.Ohms);
        _ = Checked(new SpotCluster(ElectricResistivity.FromOhmMeters(1.43e-7), ElectricResistivity.FromOhmMeters(1.43e-7), [cluster.Spots[0]]));
        var spread = new SheetSpread(sheet, Mm(5), Mm(500));
        IReadOnlyDictionary<string, double> around = Checked(spread);
        Near.Equal(spread.DiscToRing.Ohms, around["R_d"], 1e-12);
        Near.Equal(spread.TwoSmallDiscs.Ohms, around["R_2s"], 1e-12);
        Ends(around, spread.TwoDiscs!.Value.Ohms);
        _ = Checked(new SheetSpread(sheet, Mm(5), Mm(8)));
        var path = new StripPath(sheet, Mm(700), Mm(100));
        Ends(Checked(path), path.Resistance.Ohms);
        AdhesiveResistance adhesive = AdhesiveResistance.FromJoint(ElectricResistance.FromOhms(0.02), Area.FromSquareCentimeters(25), AdhesiveState.Measured);
        Ends(Checked(adhesive), adhesive.Resistivity.OhmSquareCentimeters);
        var joint = new LongJoint(new StripPath(sheet, Mm(50), Mm(50)), adhesive.Resistivity);
        IReadOnlyDictionary<string, double> along = Checked(joint);
        Near.Equal(joint.AdhesiveAlone.Ohms, along["R_a"], 1e-12);
        Near.Equal(joint.TransferLength.Millimeters, along["L_T"], 1e-12);
        Ends(along, joint.Resistance.Ohms);
        var demand = new TapeDemand(CurrentDemand.Of(DemandMedium.SoilBelow1000OhmCm), AreaRatio.FromRatio(0.2));
        Ends(Checked(demand), demand.Covered.AmperesPerSquareMeter);
        var driving = new DrivingVoltage(ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.CopperSulfate));
        var budget = new VoltageBudget(path, adhesive, Area.FromSquareCentimeters(25), Area.FromSquareMeters(0.25), demand, driving);
        IReadOnlyDictionary<string, double> lost = Checked(budget);
        Near.Equal(budget.Lost.Volts, lost["V_l"], 1e-12);
        Near.Equal(budget.Current.Amperes, lost["I"], 1e-12);
        Near.Equal(100 * budget.Lost.Volts / driving.Voltage.Volts, lost["s_v"], 1e-12);
        StraightPipe pipe = Pipe(219.1, 1000);
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(500), Mm(0), Mm(50), Mm(50))]);
        ContactNetwork net = ContactNetwork.Of(new LayContact(new RingLay(pipe, Stock(), Mm(20)), layout), sheet, adhesive, demand);
        Ends(Checked(net), net.MostLost.Volts);
    }
}
