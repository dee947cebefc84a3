namespace SacrificialTape.Provenance;

/// <content>Documents on rates indoors and in soil.</content>
public static partial class References
{
    /// <summary>Indoor corrosivity categories.</summary>
    internal static SourceReference IndoorCategories { get; } = new(
        "iso-11844-1-2006-mass-loss",
        "ISO 11844-1:2006",
        "indoor corrosivity categories by loss of mass",
        "Upper bounds IC1 to IC5 in mg/(m2.a): zinc 50, 250, 700, 2500, 5000; carbon steel 70, 1000, 10 000, 70 000, 200 000",
        SourceReading.Recalled);

    /// <summary>Rooms as examples of categories.</summary>
    internal static SourceReference IndoorExamples { get; } = new(
        "iso-12944-2-interior-examples",
        "ISO 12944-2, an edition before 2017",
        "examples of interiors, through Offshore Structures: Design, Construction and Maintenance, Table 6.7",
        "C1 heated and clean, C2 unheated with condensation, C3 humid production, C4 chemical plant and pools, C5 almost permanent condensation",
        SourceReading.SecondHand);

    /// <summary>Constants of the power law in soil.</summary>
    internal static SourceReference SoilConstants { get; } = new(
        "darbin-elias-soil-constants",
        "Darbin and others; Elias, on reinforced soil",
        "constants of x = K t^n",
        "Galvanized: n 0.65, K about 25 um; plain steel: n 0.80, K about 45 um; weakly recalled",
        SourceReading.Recalled);

    /// <summary>Kinds of soil.</summary>
    internal static SourceReference SoilColour { get; } = new(
        "galvanizing-note-soil",
        "Trade note of galvanizers on zinc in soil",
        "colour and aeration",
        "Grey, poorly aerated soils are worse for zinc than red or brown, aerated ones; clay is worse than sand",
        SourceReading.FirstHand);

    private static IEnumerable<SourceReference> Places => [IndoorCategories, IndoorExamples, SoilConstants, SoilColour];
}
