namespace SacrificialTape.Provenance;

/// <content>Documents on limits that hurt people or structures, and on paint over zinc.</content>
public static partial class References
{
    /// <summary>Zinc in acid and alkali.</summary>
    internal static SourceReference ZincWaterSheet { get; } = new(
        "hot-dip-sheet-3-ph",
        "Hot Dip Galvanized Information Sheet No. 3",
        "text on pH",
        "Useful range pH above 5.5 and below 12.5; attack rises steeply below 5.5, zincate forms above 12.5",
        SourceReading.FirstHand);

    /// <summary>Zinc in acid and alkali.</summary>
    internal static SourceReference ZincHandbookWater { get; } = new(
        "galvanizing-handbook-water-ph",
        "Handbook of galvanizing, chapter on water",
        "a copy of poor quality",
        "Low rate of zinc from pH 6 to 12.5",
        SourceReading.SecondHand);

    /// <summary>Zinc in acid and alkali.</summary>
    internal static SourceReference ZincWaterAssociation { get; } = new(
        "galvanizers-water-ph",
        "American Galvanizers Association, performance in water environments",
        "text on pH, an excerpt",
        "Low rate of zinc from pH 5.5 to 12; sharp rise below 4 and above 12",
        SourceReading.FirstHand);

    /// <summary>Zinc in acid and alkali.</summary>
    internal static SourceReference ZincWaterBulletin { get; } = new(
        "zinc-in-water-2002",
        "Technical bulletin on zinc in water, rev. 3, August 2002",
        "pH; temperature",
        "Low rate of zinc from pH 6.5 to 12; polarity reversal possible above 70 degC in aerated water",
        SourceReading.FirstHand);

    /// <summary>Zinc in acid and alkali, joined to steel.</summary>
    internal static SourceReference ZincSteelCouplePh { get; } = new(
        "japan-inst-metals-1954",
        "J. Japan Inst. Metals 18(9) (1954) 501",
        "abstract",
        "Zinc joined to steel in carbonate and sulfate at 30 degC: least loss at pH 6 to 7, most at 9 to 11, none above 12.5",
        SourceReading.FirstHand);

    /// <summary>Zinc in alkali.</summary>
    internal static SourceReference ZincAlkalineFaq { get; } = new(
        "galvanizing-faq-ph",
        "Questions and answers of an Italian galvanizing trade page",
        "pH",
        "Upper end of use at pH 8 to 9",
        SourceReading.FirstHand);

    /// <summary>Ions and polarity reversal.</summary>
    internal static SourceReference ReversalIons { get; } = new(
        "reversal-ions-1949",
        "Gilbert (1948); Hoxeng and Prutton, Corrosion 5(10) (1949) 330",
        "findings",
        "Bicarbonate and nitrate favour polarity reversal, chloride and sulfate oppose it",
        SourceReading.Recalled);

    /// <summary>Noble metals beside zinc.</summary>
    internal static SourceReference NobleMetals { get; } = new(
        "galvanic-series-noble",
        "Australasian Corrosion Association, galvanic series in flowing seawater",
        "table, rows of copper, brass, 316 and zinc",
        "Copper -0.30 to -0.37 V, brass and bronze about -0.25 to -0.40 V, 316 passive 0 to -0.10 V, zinc -0.98 to -1.03 V against SCE",
        SourceReading.FirstHand);

    /// <summary>Corrosion under insulation.</summary>
    internal static SourceReference CorrosionUnderInsulation { get; } = new(
        "insulation-outlook-2018",
        "Schmidt, Corrosion Prevention, Insulation Outlook, November 2018",
        "opening of the article",
        "Corrosion under insulation of carbon steel is a concern from 32 to 250 degF (0 to 121 degC), most with changing temperature",
        SourceReading.FirstHand);

    /// <summary>Zinc under insulation.</summary>
    internal static SourceReference ZincUnderInsulation { get; } = new(
        "nace-sp0198-zinc",
        "NACE SP0198",
        "notes to its tables of coating systems",
        "No galvanizing or inorganic zinc under insulation from 50 to 150 degC in long-term or cyclic service",
        SourceReading.Recalled);

    /// <summary>Zinc that stays wet without air.</summary>
    internal static SourceReference WetStorageStain { get; } = new(
        "wet-storage-stain",
        "American Galvanizers Association; Galvanizers Association of Australia, wet storage stain",
        "texts on its cause, excerpts",
        "Zinc that stays wet without moving air forms no protective film and can be lost in a short time",
        SourceReading.FirstHand);

    /// <summary>Mortar and chemicals on zinc; zinc beside other metals.</summary>
    internal static SourceReference MortarOnZinc { get; } = new(
        "galvanizers-other-environments",
        "Galvanizers Association (UK), corrosion performance in other environments",
        "building materials; chemicals; other metals",
        "Damp mortar, cement and plaster etch zinc slightly until set; no long contact with acids and strong alkalis; other metals add little loss in most open air, but can under water",
        SourceReading.FirstHand);

    /// <summary>Zinc oxide fume.</summary>
    internal static SourceReference ZincOxideLimits { get; } = new(
        "osha-zinc-oxide-2012",
        "OSHA page on zinc oxide (2012); NIOSH pages on 1314-13-2",
        "exposure limits",
        "Fume: OSHA 5 mg/m3 over 8 h; NIOSH 5, short term 10, IDLH 500; ACGIH 2, short term 10, respirable. Metal fume fever, worst about 9 h after",
        SourceReading.FirstHand);

    /// <summary>Hydrogen in plated fasteners.</summary>
    internal static SourceReference FastenerHardness { get; } = new(
        "iso-4042-1999-6",
        "ISO 4042:1999",
        "clause 6",
        "Above 320 HV a process test; above 365 HV only by written agreement",
        SourceReading.FirstHand);

    /// <summary>Hydrogen in plated fasteners, newer edition.</summary>
    internal static SourceReference FastenerHardnessNewer { get; } = new(
        "iso-4042-2018",
        "ISO 4042:2018",
        "hardness threshold",
        "390 HV",
        SourceReading.Recalled);

    /// <summary>Hydrogen in bolts under cathodic protection.</summary>
    internal static SourceReference BoltsUnderProtection { get; } = new(
        "dnv-rp-b401-5-5",
        "DNV-RP-B401",
        "5.5",
        "Bolts of at most 720 MPa specified yield and 350 HV",
        SourceReading.Recalled);

    /// <summary>Hydrogen in steel of middling strength in sea water.</summary>
    internal static SourceReference MiddlingSteelInSeawater { get; } = new(
        "e460-hydrogen",
        "Study of E460 steel under cathodic protection in sea water",
        "abstract",
        "Cleavage already at -0.95 V, embrittled at -1.05 V SCE",
        SourceReading.FirstHand);

    /// <summary>Paint over zinc.</summary>
    internal static SourceReference DuplexOverview { get; } = new(
        "duplex-overview",
        "Technical paper 'Duplex Coatings - An Overview'",
        "text on synergy",
        "Life = factor x (zinc + paint); 1.4 in extreme, 2.7 in mild surroundings; 1.4 x (15 + 10) = 35 years",
        SourceReading.FirstHand);

    /// <summary>Paint over zinc.</summary>
    internal static SourceReference DuplexTradeAssociation { get; } = new(
        "duplex-galvanizers",
        "American Galvanizers Association, duplex systems",
        "synergistic effect, an excerpt",
        "1.5 to 2.3 times the sum of both lives",
        SourceReading.FirstHand);

    /// <summary>Paint over zinc.</summary>
    internal static SourceReference DuplexVanEijnsbergen { get; } = new(
        "duplex-van-eijnsbergen",
        "Van Eijnsbergen, Duplex Systems",
        "general rule, as given by the American Galvanizers Association",
        "1.5 to 2.5 times the sum of both lives",
        SourceReading.SecondHand);

    /// <summary>Alkyd paint on zinc.</summary>
    internal static SourceReference Saponification { get; } = new(
        "saponification-article",
        "Article of a coating inspector, 'Saponification: From Paint to the Grave'",
        "opening",
        "Paint of alkyd or oil can turn to soap where it is alkaline and moist, and loses its hold",
        SourceReading.FirstHand);

    private static IEnumerable<SourceReference> Limits =>
    [
        ZincWaterSheet, ZincHandbookWater, ZincWaterAssociation, ZincWaterBulletin, ZincSteelCouplePh, ZincAlkalineFaq, ReversalIons,
        NobleMetals, CorrosionUnderInsulation, ZincUnderInsulation, WetStorageStain, MortarOnZinc, ZincOxideLimits,
        FastenerHardness, FastenerHardnessNewer, BoltsUnderProtection, MiddlingSteelInSeawater,
        DuplexOverview, DuplexTradeAssociation, DuplexVanEijnsbergen, Saponification,
    ];
}
