namespace SacrificialTape.Provenance;

/// <content>Electrical contact over windows of bare steel.</content>
public static partial class References
{
    /// <summary>Constriction at round spots of contact.</summary>
    internal static SourceReference ContactSpots { get; } = new(
        "contact-physics-formulas",
        "Electrical contacts wiki, 'Contact Physics - Formulas'",
        "constriction resistance of one and of several spots, after Holm and Greenwood, an excerpt",
        "R = rho/(2 a); N spots rho/(2 N a); with influence, plus 3 pi rho/(32 N^2) times the double sum of 1/s (printed there without the reciprocal, which the units demand)",
        SourceReading.FirstHand);

    /// <summary>Spots that influence each other.</summary>
    internal static SourceReference Greenwood { get; } = new(
        "greenwood-1966",
        "Greenwood, British Journal of Applied Physics 17 (1966) 1621",
        "constriction resistance of a cluster of spots",
        "R = rho/(2 sum a) + rho/(pi N^2) times the double sum of 1/s",
        SourceReading.Recalled);

    /// <summary>Spots of contact between two metals; the Holm radius.</summary>
    internal static SourceReference Holm { get; } = new(
        "holm-1967",
        "Holm, Electric Contacts, 4th ed., 1967",
        "constriction between two metals; cluster of spots",
        "R = (rho_1 + rho_2)/(4 a)",
        SourceReading.Recalled);

    /// <summary>Radial flow in a hollow cylinder.</summary>
    internal static SourceReference RadialFlow { get; } = new(
        "radial-resistance-cylinder",
        "Collection of solved problems in electromagnetics (antsim), 'Resistance of transversely split cylinder'",
        "resistance between the inner and the outer face, an excerpt",
        "R = ln(r_2/r_1)/(2 pi sigma h): with sheet resistance 1/(sigma h), a disc in a sheet to a ring",
        SourceReading.FirstHand);

    /// <summary>Two round contacts on a wide sheet.</summary>
    internal static SourceReference TwoDiscs { get; } = new(
        "two-circles-in-a-plane-2023",
        "'Resistance between two points in a plane', a web log on mathematics, May 2023",
        "the answer, an excerpt",
        "R = c/(2 pi) ln(b + sqrt(b^2 - 1)), b = D^2/(2 R^2) - 1, c the resistance of a square",
        SourceReading.FirstHand);

    /// <summary>Contact of a sheet along a line.</summary>
    internal static SourceReference TransmissionLineContact { get; } = new(
        "transmission-line-contact",
        "Berger, Solid-State Electronics 15 (1972) 145",
        "transmission line model of a contact",
        "L_T = sqrt(r_c/R_s); R = sqrt(R_s r_c)/w coth(L/L_T)",
        SourceReading.Recalled);

    /// <summary>Resistivity of metals.</summary>
    internal static SourceReference MetalResistivity { get; } = new(
        "resistivity-table-20-degc",
        "Table of electrical resistivity of a school physics reference (preproom.org)",
        "zinc; iron; copper, an excerpt",
        "At 20 degC: zinc 5.90e-8 ohm.m, 0.0037 for each K; iron 1.0e-7; copper 1.68e-8",
        SourceReading.FirstHand);

    /// <summary>Resistivity of carbon steel.</summary>
    internal static SourceReference SteelResistivity { get; } = new(
        "resistivity-table-steel",
        "Table of electrical resistivity of a radio-frequency engineering reference (rfcafe.com)",
        "carbon steel (1010), an excerpt",
        "14.3e-8 ohm.m",
        SourceReading.FirstHand);

    /// <summary>Continuity of anodes.</summary>
    internal static SourceReference AnodeContinuity { get; } = new(
        "dnv-rp-b401-7-10",
        "DNV-RP-B401 7.10; NORSOK M-503 4.2",
        "electrical continuity of anodes",
        "At most 0.10 ohm, and at most 10 % of the resistance of the anode",
        SourceReading.Recalled);

    /// <summary>Bonds against lightning.</summary>
    internal static SourceReference LightningBond { get; } = new(
        "mil-b-5087b",
        "MIL-B-5087B",
        "paragraph on bonds that carry lightning current",
        "2.5 mohm at most, from 500 V at 200 000 A",
        SourceReading.SecondHand);

    private static IEnumerable<SourceReference> Contact =>
    [
        ContactSpots, Greenwood, Holm, RadialFlow, TwoDiscs, TransmissionLineContact, MetalResistivity, SteelResistivity,
        AnodeContinuity, LightningBond,
    ];
}
