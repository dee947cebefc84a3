using SacrificialTape.Contact;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Resistance of spots, sheets, strips and joints between zinc and steel.</summary>
internal static class ContactResistanceChecks
{
    private const double SteelOhmM = 1.43e-7;
    private const double ZincOhmM = 5.90e-8;

    internal static CheckGroup Group => new(
        "Contact over paint: resistance and voltage lost",
        "Closed forms of text books and pages, worked out apart from the library; the two published forms for spots that influence each other differ, and both are shown. Sheets, joints and nets are also solved by other means: thin rings, images by recursion, a ladder of resistors. No published resistance of aged tape was found.",
        [.. Metals(), .. Spots(), .. Sheets(), .. Strips(), .. Joints(), .. Nets(), .. Limits()]);

    private static FoilSheet Zinc { get; } = new(Length.FromMillimeters(0.1));

    private static IEnumerable<PublishedCase> Metals()
    {
        yield return Case("zinc", "resistivity of zinc at 20 degC", Evidence.From(References.MetalResistivity), 5.90, 0, "1e-8 ohm.m",
            static () => Zinc.Resistivity.OhmMeters * 1e8);
        yield return Case("zinc-second-table", "resistivity of zinc at 20 degC, another table", Evidence.From(Sources.SecondResistivityTable), 5.90, 0.005, "1e-8 ohm.m",
            static () => Zinc.Resistivity.OhmMeters * 1e8);
        yield return Case("zinc-70", "resistivity of zinc at 70 degC, 0.0037 for each K", Evidence.FromFormula(References.MetalResistivity, "5.90 x 1.185"), 6.9915, 1e-9, "1e-8 ohm.m",
            static () => new FoilSheet(Length.FromMillimeters(0.1), Temperature.FromDegreesCelsius(70)).Resistivity.OhmMeters * 1e8);
        yield return Case("square", "a square of zinc 0.10 mm thick", Evidence.FromFormula(References.MetalResistivity, "5.90e-8/1e-4"), 0.590, 1e-12, "mohm",
            static () => Zinc.Square.Milliohms);
        yield return Case("steel-square", "a square of steel 1 mm thick", Evidence.FromFormula(References.SteelResistivity, "1.43e-7/1e-3"), 0.143, 1e-12, "mohm",
            static () => FoilSheet.OfMetal(Length.FromMillimeters(1), Steel).Square.Milliohms);
    }

    private static IEnumerable<PublishedCase> Spots()
    {
        yield return Case("spot", "one round spot of radius 0.1 mm, steel on steel", Evidence.FromFormula(References.ContactSpots, "rho/(2 a) = 1.43e-7/2e-4"), 0.715, 1e-12, "mohm",
            static () => Cluster(SteelOhmM, SteelOhmM, (0, 0, 100)).FarApart.Milliohms);
        yield return Case("spot-two-metals", "the same, zinc on steel", Evidence.From(References.Holm, "(5.90e-8 + 1.43e-7)/(4e-4)"), 0.505, 1e-12, "mohm",
            static () => Cluster(ZincOhmM, SteelOhmM, (0, 0, 100)).FirstAlone.Milliohms);
        yield return Case("four-far", "four spots of radius 10 um, rho 1e-7, far apart", Evidence.FromFormula(References.ContactSpots, "rho/(2 N a) = 1e-7/8e-5"), 1.25, 1e-12, "mohm",
            static () => Four().FarApart.Milliohms);
        yield return Case("four-form-a", "the same on a square of 1 mm, form A (3 pi/32)", Evidence.FromFormula(References.ContactSpots, "1.25 + 3 pi 1e-7/512 x (8/1e-3 + 4/1.41421e-3)"), 1.2699327, 5e-8, "mohm",
            static () => Four().ByHolm.Milliohms);
        yield return Case("four-form-b", "the same, form B (1/pi)", Evidence.From(References.Greenwood, "1.25 + 1e-7/(16 pi) x (8/1e-3 + 4/1.41421e-3)"), 1.2715425, 5e-8, "mohm",
            static () => Four().ByGreenwood.Milliohms);
        yield return Case("forms-disagree", "form B over form A for these four, the disagreement of the sources", Evidence.FirstPrinciples("1.2715425/1.2699327 - 1"), 0.12676, 5e-5, "%",
            static () => 100 * ((Four().ByGreenwood / Four().ByHolm) - 1));

        // Potential of the others at each spot, as if each were a point on a half space: rho I/(2 pi s) on both sides.
        yield return Case("four-by-potentials", "the same by adding the potentials of point sources", Evidence.FirstPrinciples("each spot at rho I/(4 a) and rho I/(2 pi s) of each other, twice"), PotentialsMilliohm(), 1e-9, "mohm",
            static () => Four().ByGreenwood.Milliohms);
    }

    private static IEnumerable<PublishedCase> Sheets()
    {
        yield return Case("disc-to-ring", "disc of 5 mm to a ring of 500 mm, zinc 0.10 mm", Evidence.FromFormula(References.RadialFlow, "ln(100)/(2 pi) x 0.590"), 0.43243, 5e-6, "mohm",
            static () => Spread(500).DiscToRing.Milliohms);
        yield return Case("disc-to-ring-rings", "the same by thin rings in a row", Evidence.FirstPrinciples("sum of 100 000 rings in proportion"), RingsMilliohm(), 1e-8, "mohm",
            static () => Spread(500).DiscToRing.Milliohms);
        yield return Case("two-discs", "two discs of 5 mm, 500 mm apart", Evidence.FromFormula(References.TwoDiscs, "0.590/(2 pi) x ln(b + sqrt(b^2 - 1)), b = 500^2/50 - 1"), TwoDiscsMilliohm(500), 1e-12, "mohm",
            static () => Spread(500).TwoDiscs!.Value.Milliohms);
        yield return Case("two-discs-near", "two discs of 5 mm, 12 mm apart", Evidence.FromFormula(References.TwoDiscs, "b = 12^2/50 - 1"), TwoDiscsMilliohm(12), 1e-12, "mohm",
            static () => Spread(12).TwoDiscs!.Value.Milliohms);
        yield return Case("two-discs-small", "the form of small discs, 500 mm apart", Evidence.FirstPrinciples("ln(100)/pi x 0.590"), 0.86486, 5e-6, "mohm",
            static () => Spread(500).TwoSmallDiscs.Milliohms);
        yield return Case("two-discs-images", "two discs of 5 mm, 30 mm apart, by images of each in the other", Evidence.FirstPrinciples("the place of the images by recursion, x = a^2/(L - x), then the voltage at the facing points"), ImagesMilliohm(), 1e-12, "mohm",
            static () => Spread(30).TwoDiscs!.Value.Milliohms);
    }

    private static IEnumerable<PublishedCase> Strips()
    {
        yield return Case("strip", "strip of 10 m by 50 mm, zinc 0.10 mm", Evidence.FirstPrinciples("0.590e-3 x 200"), 118, 1e-9, "mohm",
            static () => Path(10_000, 50).Resistance.Milliohms);
        yield return Case("distributed", "0.1 A/m2 collected over 10 m", Evidence.FirstPrinciples("0.1 x 0.590e-3 x 100/2"), 2.95, 1e-9, "mV",
            static () => Path(10_000, 50).DropOf(ElectricCurrentDensity.FromAmperesPerSquareMeter(0.1)).Millivolts);
    }

    private static IEnumerable<PublishedCase> Joints()
    {
        yield return Case("coupon", "0.01 ohm over a square inch", Evidence.FirstPrinciples("0.01 x 6.4516"), 0.064516, 1e-12, "ohm.cm2",
            static () => AdhesiveResistance.FromJoint(ElectricResistance.FromOhms(0.01), Area.FromSquareInches(1), AdhesiveState.Fresh).Resistivity.OhmSquareCentimeters);
        yield return Case("transfer", "transfer length at 0.0645 ohm.cm2, zinc 0.10 mm", Evidence.From(References.TransmissionLineContact, "sqrt(0.0645e-4/0.590e-3)"), 104.56, 0.005, "mm",
            static () => Joint().TransferLength.Millimeters);
        yield return Case("joint", "50 by 50 mm of it, seen from its end", Evidence.From(References.TransmissionLineContact, "sqrt(0.590e-3 x 0.0645e-4)/0.05 x coth(50/104.56)"), 2.7737, 5e-5, "mohm",
            static () => Joint().Resistance.Milliohms);
        yield return Case("joint-ladder", "the same as a ladder of resistors", Evidence.FirstPrinciples("20 000 rungs by recursion from the far end"), LadderMilliohm(), 1e-6, "mohm",
            static () => Joint().Resistance.Milliohms);
        yield return Case("joint-plain", "the same by the adhesive alone", Evidence.FirstPrinciples("0.0645/25"), 2.58, 1e-9, "mohm",
            static () => Joint().AdhesiveAlone.Milliohms);
    }

    private static IEnumerable<PublishedCase> Nets()
    {
        double closed = ClosedMillivolts();
        yield return Case("net-end-window", "net of one strip of 2 m over a window of 0.2 m at its end", Evidence.FirstPrinciples("i r_c + I R_j + i R_s L^2/2, the joint by the transmission line form"), closed, 2e-5, "mV",
            static () => Net(1).MostLost.Millivolts);
        yield return Case("net-current", "current of that net", Evidence.FirstPrinciples("0.1 A/m2 x 2 m x 0.1 m"), 20, 1e-9, "mA", static () => Net(5).Current.Milliamperes);
    }

    private static IEnumerable<PublishedCase> Limits()
    {
        yield return Case("limit-continuity", "continuity of anodes, 0.10 ohm, the default limit of a reading", Evidence.From(References.AnodeContinuity), 100, 0, "mohm",
            static () => RuleSet.Default[RuleIds.MaximumContactResistance].Limit!.Value.Number);
        yield return Case("limit-share", "10 % of the resistance of an anode, carried over to voltage", Evidence.From(References.AnodeContinuity), 10, 0, "%",
            static () => RuleSet.Default[RuleIds.MaximumVoltageShare].Limit!.Value.Number);
    }

    private static ElectricResistivity Steel => ElectricResistivity.FromOhmMeters(SteelOhmM);

    private static SpotCluster Cluster(double one, double other, params (double X, double Y, double Radius)[] spots) => new(
        ElectricResistivity.FromOhmMeters(one),
        ElectricResistivity.FromOhmMeters(other),
        [.. spots.Select(static spot => new ContactSpot(Length.FromMicrometers(spot.X), Length.FromMicrometers(spot.Y), Length.FromMicrometers(spot.Radius)))]);

    private static SpotCluster Four() => Cluster(1e-7, 1e-7, (0, 0, 10), (1000, 0, 10), (0, 1000, 10), (1000, 1000, 10));

    private static double PotentialsMilliohm()
    {
        const double Current = 0.25;
        double own = 1e-7 * Current / (4 * 10e-6);
        double others = 1e-7 * Current / (2 * Math.PI) * ((2 / 1e-3) + (1 / (Math.Sqrt(2) * 1e-3)));
        return 2 * (own + others) * 1000;
    }

    private static SheetSpread Spread(double far) => new(Zinc, Length.FromMillimeters(5), Length.FromMillimeters(far));

    private static double RingsMilliohm()
    {
        const int Rings = 100_000;
        double ratio = Math.Pow(100, 1.0 / Rings);
        double sum = 0;
        for (int i = 0; i < Rings; i++)
        {
            // A ring from r to r ratio: as a strip of its mean circumference.
            sum += 0.590 * (ratio - 1) / (Math.PI * (ratio + 1));
        }

        return sum;
    }

    private static double TwoDiscsMilliohm(double apart)
    {
        double b = (apart * apart / 50) - 1;
        return 0.590 / (2 * Math.PI) * Math.Log(b + Math.Sqrt((b * b) - 1));
    }

    private static double ImagesMilliohm()
    {
        double x = 0;
        for (int i = 0; i < 100; i++)
        {
            x = 25 / (30 - x);
        }

        return 0.590 / Math.PI * Math.Log((25 - x) / (5 - x));
    }

    private static StripPath Path(double length, double width) => new(Zinc, Length.FromMillimeters(length), Length.FromMillimeters(width));

    private static LongJoint Joint() => new(Path(50, 50), ContactResistivity.FromOhmSquareCentimeters(0.0645));

    private static double LadderMilliohm()
    {
        const int Rungs = 20_000;
        double step = 0.05 / Rungs;
        double rail = 0.590e-3 * step / 0.05;
        double rung = 0.0645e-4 / (0.05 * step);
        double seen = rung;
        for (int i = 1; i < Rungs; i++)
        {
            seen = 1 / ((1 / rung) + (1 / (seen + rail)));
        }

        return (seen + (rail / 2)) * 1000;
    }

    private static double ClosedMillivolts()
    {
        double transfer = Math.Sqrt(1e-4 / 0.590e-3);
        double x = 0.2 / transfer;
        double joint = Math.Sqrt(0.590e-3 * 1e-4) / 0.1 * Math.Cosh(x) / Math.Sinh(x);
        return 1000 * ((0.1 * 1e-4) + (0.1 * 1.8 * 0.1 * joint) + (0.1 * 0.590e-3 * 1.8 * 1.8 / 2));
    }

    private static ContactNetwork Net(double cell)
    {
        var panel = new SacrificialTape.Surfaces.RectangularPanel(Length.FromMillimeters(2000), Length.FromMillimeters(100));
        return new(
            [new PlacedStrip(1, Length.Zero, Length.FromMillimeters(2000), Length.Zero, Length.FromMillimeters(100), false)],
            new WindowLayout(new UnrolledSurface(panel), [ContactWindow.Rectangle(
                Length.FromMillimeters(100), Length.FromMillimeters(50), Length.FromMillimeters(200), Length.FromMillimeters(100))]),
            true,
            Zinc,
            new AdhesiveResistance(ContactResistivity.FromOhmSquareCentimeters(1), AdhesiveState.EndOfLife),
            new TapeDemand(
                CurrentDemand.FromMeasurement(ElectricCurrentDensity.Zero, ElectricCurrentDensity.FromAmperesPerSquareMeter(0.1), "a round number"), AreaRatio.FromRatio(1)),
            Length.FromMillimeters(cell));
    }

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "contact/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
