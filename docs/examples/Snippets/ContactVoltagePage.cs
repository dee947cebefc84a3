using SacrificialTape.Contact;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/contact-voltage.md quotes.</summary>
public static class ContactVoltagePage
{
    public static void Budget()
    {
        #region budget
        var pipe = new StraightPipe(Length.FromMillimeters(219.1), Length.FromMeters(6));
        var stock = new StripStock(
            new Tape(new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025))), Length.FromMillimeters(100), Length.FromMeters(30));
        var lay = new RingLay(pipe, stock, Length.FromMillimeters(20));
        var contact = new LayContact(lay, WindowPlan.For(lay, RuleSet.Default));
        var sheet = new FoilSheet(Length.FromMicrometers(50)); // half of the zinc gone
        var aged = new AdhesiveResistance(ContactResistivity.FromOhmSquareCentimeters(5), AdhesiveState.EndOfLife);
        var demand = new TapeDemand(CurrentDemand.Of(DemandMedium.SoilBelow1000OhmCm), AreaRatio.FromRatio(0.2));
        var driving = new DrivingVoltage(ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.CopperSulfate));
        VoltageBudget budget = VoltageBudget.Worst(contact, sheet, aged, demand, driving);
        Console.WriteLine($"{budget.Current.Milliamperes:0.00} mA; adhesive {budget.InAdhesive.Millivolts:0.000} mV, spreading {budget.InSpreading.Millivolts:0.0000} mV, strip {budget.InStrip.Millivolts:0.0000} mV");
        Console.WriteLine(budget);
        Console.WriteLine(ContactNetwork.Of(contact, sheet, aged, demand, Length.FromMillimeters(25)));
        var fresh = new AdhesiveResistance(ContactResistivity.FromOhmSquareCentimeters(0.1), AdhesiveState.Fresh);
        foreach (Finding finding in VoltageBudget.Worst(contact, sheet, fresh, demand, driving).Judge(RuleSet.Default, "line 7"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void Forms()
    {
        #region forms
        ElectricResistivity metal = ElectricResistivity.FromOhmMeters(1e-7);
        Length um(double value) => Length.FromMicrometers(value);
        var four = new SpotCluster(metal, metal,
            [new(um(0), um(0), um(10)), new(um(1000), um(0), um(10)), new(um(0), um(1000), um(10)), new(um(1000), um(1000), um(10))]);
        Console.WriteLine($"far apart {four.FarApart.Milliohms:0.0000} mohm, form A {four.ByHolm.Milliohms:0.00000}, form B {four.ByGreenwood.Milliohms:0.00000}");
        var sheet = new FoilSheet(Length.FromMillimeters(0.1));
        var spread = new SheetSpread(sheet, Length.FromMillimeters(5), Length.FromMillimeters(500));
        Console.WriteLine($"disc to ring {spread.DiscToRing.Milliohms:0.0000} mohm, two discs {spread.TwoDiscs!.Value.Milliohms:0.0000} mohm");
        var joint = new LongJoint(
            new StripPath(sheet, Length.FromMillimeters(50), Length.FromMillimeters(50)), ContactResistivity.FromOhmSquareCentimeters(0.0645));
        Console.WriteLine($"joint {joint.Resistance.Milliohms:0.000} mohm, its adhesive alone {joint.AdhesiveAlone.Milliohms:0.000} mohm, transfer length {joint.TransferLength.Millimeters:0.0} mm");
        #endregion
    }

    public static void Readings()
    {
        #region readings
        var driving = new DrivingVoltage(ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.CopperSulfate));
        ValueList<ContactReading> readings =
        [
            new("window 3", ElectricResistance.FromMilliohms(140)),
            new("strip 12", foilToSteel: ElectricPotential.FromMillivolts(8)),
        ];
        foreach (Finding finding in ContactReading.Judge(readings, driving, RuleSet.Default, "line 7"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }
}
