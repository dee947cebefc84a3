using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Contact;

/// <summary>The formulas of resistance and of voltage lost between zinc and steel as the workings show them.</summary>
internal static class VoltageFormulas
{
    private static readonly Basis Ohm = Basis.FirstPrinciples("Ohm's law");

    private static readonly Symbol Sheet = new("R_s", "resistance of a square of foil", TradeUnit.Ohm);
    private static readonly Symbol Joint = new("r_c", "adhesive resistance times area", TradeUnit.OhmSquareCentimeter);
    private static readonly Symbol Length = new("L", "length", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "width", TradeUnit.Millimeter);
    private static readonly Symbol Disc = new("a", "radius of the disc", TradeUnit.Millimeter);
    private static readonly Symbol Demand = new("i", "current for each covered area", TradeUnit.AmperePerSquareMeter);
    private static readonly Symbol Resistivity = new("rho", "resistivity", TradeUnit.OhmMeter);
    private static readonly Symbol SumOfRadii = new("S_a", "sum of the radii", TradeUnit.Micrometer);
    private static readonly Symbol Spots = new("N", "spots", TradeUnit.One);
    private static readonly Symbol Spacing = new("s_h", "one over the sum of 1/s, each pair both ways", TradeUnit.Micrometer);

    internal static Formula AtTemperature { get; } = new(
        "contact.resistivity-at-temperature",
        new Symbol("rho", "Resistivity of zinc", TradeUnit.OhmMeter),
        "rho_20 * (1 + 0.0037 * (T - 20))",
        @"\rho_{20}\left(1 + 0.0037\,(T-20)\right)",
        Basis.From(References.MetalResistivity),
        [new Symbol("rho_20", "resistivity at 20 degC", TradeUnit.OhmMeter), new Symbol("T", "temperature", TradeUnit.DegreeCelsius)]);

    internal static Formula SheetResistance { get; } = new(
        "contact.sheet-resistance",
        new Symbol("R_s", "Resistance of a square of foil", TradeUnit.Ohm),
        "rho / (t * 0.000001)",
        @"\frac{\rho}{t}",
        Ohm,
        [Resistivity, new Symbol("t", "zinc left", TradeUnit.Micrometer)]);

    internal static Formula TwoMetalSpot { get; } = new(
        "contact.spot-of-two-metals",
        new Symbol("R_1", "Resistance of a round spot", TradeUnit.Ohm),
        "(rho_1 + rho_2) / (4 * a_s * 0.000001)",
        @"\frac{\rho_1+\rho_2}{4\,a}",
        Basis.From(References.Holm),
        [
            new Symbol("rho_1", "resistivity of one metal", TradeUnit.OhmMeter),
            new Symbol("rho_2", "resistivity of the other", TradeUnit.OhmMeter),
            new Symbol("a_s", "radius of the spot", TradeUnit.Micrometer),
        ]);

    internal static Formula SpotsFarApart { get; } = new(
        "contact.spots-far-apart",
        new Symbol("R_N", "Resistance of spots far apart", TradeUnit.Ohm),
        "rho / (2 * S_a * 0.000001)",
        @"\frac{\rho}{2\sum a}",
        Basis.From(References.ContactSpots),
        [Resistivity, SumOfRadii]);

    internal static Formula SpotsHolm { get; } = new(
        "contact.spots-three-pi-over-32",
        new Symbol("R_A", "Resistance of spots, form A", TradeUnit.Ohm),
        "rho / (2 * S_a * 0.000001) + 3 * pi * rho / (32 * N * N * s_h * 0.000001)",
        @"\frac{\rho}{2\sum a} + \frac{3\pi\rho}{32 N^2}\sum_{i\neq j}\frac{1}{s_{ij}}",
        Basis.From(References.ContactSpots),
        [Resistivity, SumOfRadii, Spots, Spacing]);

    internal static Formula SpotsGreenwood { get; } = new(
        "contact.spots-one-over-pi",
        new Symbol("R_B", "Resistance of spots, form B", TradeUnit.Ohm),
        "rho / (2 * S_a * 0.000001) + rho / (pi * N * N * s_h * 0.000001)",
        @"\frac{\rho}{2\sum a} + \frac{\rho}{\pi N^2}\sum_{i\neq j}\frac{1}{s_{ij}}",
        Basis.From(References.Greenwood),
        [Resistivity, SumOfRadii, Spots, Spacing]);

    internal static Formula Coupon { get; } = new(
        "contact.coupon",
        new Symbol("r_c", "Adhesive resistance times area", TradeUnit.OhmSquareCentimeter),
        "R_k * A_k",
        @"R_k\,A_k",
        Basis.FirstPrinciples("equal areas side by side"),
        [new Symbol("R_k", "resistance of the joint", TradeUnit.Ohm), new Symbol("A_k", "its area", TradeUnit.SquareCentimeter)]);

    internal static Formula Adhesive { get; } = new(
        "contact.adhesive",
        new Symbol("R_a", "Resistance of the adhesive", TradeUnit.Ohm),
        "r_c / A_c",
        @"\frac{r_c}{A_c}",
        Basis.FirstPrinciples("equal areas side by side"),
        [Joint, new Symbol("A_c", "area in contact", TradeUnit.SquareCentimeter)]);

    internal static Formula DiscToRing { get; } = new(
        "contact.disc-to-ring",
        new Symbol("R_d", "Resistance from disc to ring", TradeUnit.Ohm),
        "R_s / (2 * pi) * ln(b / a)",
        @"\frac{R_s}{2\pi}\ln\frac{b}{a}",
        Basis.From(References.RadialFlow),
        [Sheet, new Symbol("b", "radius of the ring", TradeUnit.Millimeter), Disc]);

    internal static Formula TwoDiscs { get; } = new(
        "contact.two-discs",
        new Symbol("R_2", "Resistance between two discs", TradeUnit.Ohm),
        "R_s / pi * ln(L / (2 * a) + sqrt(L / (2 * a) * L / (2 * a) - 1))",
        @"\frac{R_s}{\pi}\,\mathrm{arcosh}\frac{L}{2a}",
        Basis.From(References.TwoDiscs),
        [Sheet, Length, Disc]);

    internal static Formula TwoSmallDiscs { get; } = new(
        "contact.two-small-discs",
        new Symbol("R_2s", "Resistance between two small discs", TradeUnit.Ohm),
        "R_s / pi * ln(L / a)",
        @"\frac{R_s}{\pi}\ln\frac{L}{a}",
        Basis.FirstPrinciples("the exact form where the discs are small against their distance"),
        [Sheet, Length, Disc]);

    internal static Formula Strip { get; } = new(
        "contact.strip",
        new Symbol("R_t", "Resistance of the strip", TradeUnit.Ohm),
        "R_s * L / w",
        @"\frac{R_s\,L}{w}",
        Ohm,
        [Sheet, Length, Width]);

    internal static Formula Distributed { get; } = new(
        "contact.distributed",
        new Symbol("V_i", "Voltage lost to current collected all along", TradeUnit.Volt),
        "i * R_s * (L / 1000) * (L / 1000) / 2",
        @"\frac{i\,R_s\,L^2}{2}",
        Basis.FirstPrinciples("current that grows evenly along the strip to where it is fed"),
        [Demand, Sheet, Length]);

    internal static Formula TransferLength { get; } = new(
        "contact.transfer-length",
        new Symbol("L_T", "Transfer length", TradeUnit.Millimeter),
        "10 * sqrt(r_c / R_s)",
        @"\sqrt{\frac{r_c}{R_s}}",
        Basis.From(References.TransmissionLineContact),
        [Joint, Sheet]);

    internal static Formula LongJoint { get; } = new(
        "contact.long-joint",
        new Symbol("R_j", "Resistance of the joint from its end", TradeUnit.Ohm),
        "10 * sqrt(R_s * r_c) / w * (1 + exp(-2 * L / L_T)) / (1 - exp(-2 * L / L_T))",
        @"\frac{\sqrt{R_s\,r_c}}{w}\coth\frac{L}{L_T}",
        Basis.From(References.TransmissionLineContact),
        [Sheet, Joint, Width, Length, new Symbol("L_T", "transfer length", TradeUnit.Millimeter)]);

    internal static Formula CoveredDemand { get; } = new(
        "contact.covered-demand",
        new Symbol("i", "Current for each covered area", TradeUnit.AmperePerSquareMeter),
        "i_s * f",
        @"i_s\,f",
        Basis.FirstPrinciples("the demand of bare steel times the share that is bare"),
        [new Symbol("i_s", "highest demand of bare steel", TradeUnit.AmperePerSquareMeter), new Symbol("f", "bare steel served for each covered area", TradeUnit.One)]);

    internal static Formula WindowCurrent { get; } = new(
        "contact.window-current",
        new Symbol("I", "Current through the window", TradeUnit.Ampere),
        "i * A_s",
        @"i\,A_s",
        Basis.FirstPrinciples("current for each area times area"),
        [Demand, new Symbol("A_s", "area served by the window", TradeUnit.SquareMeter)]);

    internal static Formula EqualDisc { get; } = new(
        "contact.equal-disc",
        new Symbol("r_e", "Radius of the disc of equal area", TradeUnit.Millimeter),
        "sqrt(A * 100 / pi)",
        @"\sqrt{\frac{A}{\pi}}",
        Basis.FirstPrinciples("area of a disc"),
        [new Symbol("A", "area", TradeUnit.SquareCentimeter)]);

    internal static Formula Total { get; } = new(
        "contact.voltage-lost",
        new Symbol("V_l", "Voltage lost between zinc and steel", TradeUnit.Volt),
        "I * (R_a + R_d + R_t) + V_i",
        @"I\,(R_a + R_d + R_t) + V_i",
        Basis.FirstPrinciples("in a row; what is collected on the way is counted as if all came from the far end as well: the safe side"),
        [
            new Symbol("I", "current through the window", TradeUnit.Ampere),
            new Symbol("R_a", "adhesive", TradeUnit.Ohm),
            new Symbol("R_d", "spreading in the foil", TradeUnit.Ohm),
            new Symbol("R_t", "strip", TradeUnit.Ohm),
            new Symbol("V_i", "voltage lost to current collected all along", TradeUnit.Volt),
        ]);

    internal static Formula Share { get; } = new(
        "contact.voltage-share",
        new Symbol("s_v", "Share of the driving voltage", TradeUnit.Percent),
        "100 * V_l / U",
        @"\frac{100\,V_l}{U}",
        Basis.FirstPrinciples("voltage lost over driving voltage"),
        [new Symbol("V_l", "voltage lost", TradeUnit.Volt), new Symbol("U", "driving voltage", TradeUnit.Volt)]);

    internal static Formula NetworkDrop { get; } = new(
        "contact.network-drop",
        new Symbol("V_n", "Largest voltage lost in the net", TradeUnit.Volt),
        "max(V_1, V_2)",
        @"\max V_k",
        Basis.FirstPrinciples("Kirchhoff's laws on the net of strips, laps and windows; what flows in flows out"),
        [new Symbol("V_1", "voltage at the worst place", TradeUnit.Volt), new Symbol("V_2", "least voltage, at the best place", TradeUnit.Volt)]);
}
