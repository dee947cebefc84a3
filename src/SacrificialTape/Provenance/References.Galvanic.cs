namespace SacrificialTape.Provenance;

/// <content>Documents on galvanic protection.</content>
public static partial class References
{
    /// <summary>Constants of Faraday's law.</summary>
    internal static SourceReference FaradayConstants { get; } = new(
        "codata-iupac-faraday",
        "CODATA; IUPAC",
        "Faraday constant; atomic weights of zinc and iron",
        "96485.332 C/mol; 65.38 and 55.845 g/mol, ions of charge 2",
        SourceReading.Recalled);

    /// <summary>Capacity of zinc at 90 % efficiency.</summary>
    internal static SourceReference AnodeCourseTable { get; } = new(
        "corrosion-course-table-5-1",
        "Corrosion course of a university (KFUPM)",
        "Table 5.1",
        "Zinc: 372 A.h/lb or 820 A.h/kg theoretical, 335 A.h/lb at 90 %",
        SourceReading.FirstHand);

    /// <summary>Capacity and driving voltage of zinc anodes; equivalents of reference electrodes.</summary>
    internal static SourceReference PipelineHandbook { get; } = new(
        "pipeline-rules-of-thumb-206",
        "Pipeline Rules of Thumb Handbook",
        "page 206, Tables 3 and 4 and the criterion against three electrodes",
        "Zinc for seawater 354 A.h/lb at -1.03 V SSC; driving voltage 0.25 V; -0.85 V CSE is -0.78 V SSC and -0.776 V SCE",
        SourceReading.FirstHand);

    /// <summary>Capacity of zinc by the British code.</summary>
    internal static SourceReference BritishCathodicProtection { get; } = new(
        "bs-7361-zinc",
        "BS 7361",
        "zinc anodes",
        "At least 780 A.h/kg, at most 11.25 kg/(A.a)",
        SourceReading.SecondHand);

    /// <summary>Design figures of cathodic protection offshore.</summary>
    internal static SourceReference DnvCathodicProtection { get; } = new(
        "dnv-rp-b401-2010",
        "DNV-RP-B401 2005 and 2010",
        "Tables 10-4, 10-6 and 10-8",
        "Zinc 780 A.h/kg in seawater and 700 in sediment; breakdown constants; utilisation by shape",
        SourceReading.Recalled);

    /// <summary>Design current demand by depth and climate.</summary>
    internal static SourceReference DnvDesignDemand { get; } = new(
        "dnv-rp-b401-2010-demand",
        "DNV-RP-B401 2005 and 2010",
        "Tables 10-1 and 10-2",
        "Current demand of bare steel at the start, on the mean and at the end, by depth and climate zone, A/m2",
        SourceReading.Recalled);

    /// <summary>Output of anodes in soil.</summary>
    internal static SourceReference SoilAnodeOutput { get; } = new(
        "tm-5-811-7-c-2",
        "TM 5-811-7; MIL-HDBK-1004/10",
        "equation C-2 and Table C-4; 4.2.5 and pages 186 and 198",
        "i = C f y / P in mA, above 500 ohm.cm; C = 120 000 for magnesium on well coated structures; f = 1.00 for 17 lb, 0.71 for 9 lb",
        SourceReading.FirstHand);

    /// <summary>Constants of zinc in the output formula.</summary>
    internal static SourceReference SoilAnodeZincConstants { get; } = new(
        "tm-5-811-7-zinc-constants",
        "TM 5-811-7; MIL-HDBK-1004/10",
        "constants of zinc with equation C-2",
        "C = 50 000 for zinc on coated and 40 000 on bare structures",
        SourceReading.Recalled);

    /// <summary>Molar conductivity of sodium chloride.</summary>
    internal static SourceReference SodiumChlorideMolar { get; } = new(
        "crc-nacl-molar-conductivity",
        "CRC Handbook of Chemistry and Physics",
        "molar conductivity of aqueous electrolytes at 25 degC, NaCl",
        "123.7, 118.5 and 106.7 S.cm2/mol at 0.001, 0.01 and 0.1 mol/l",
        SourceReading.Recalled);

    /// <summary>Capacity of pipeline anodes.</summary>
    internal static SourceReference PipelineAnodes { get; } = new(
        "iso-15589-2-zinc",
        "ISO 15589-2 2004 and 2012",
        "table of anodes, zinc up to 30 degC",
        "780 A.h/kg at -1.03 V SSC in seawater, 750 at -0.98 V buried",
        SourceReading.Recalled);

    /// <summary>Driving-voltage factors of zinc.</summary>
    internal static SourceReference DrivingVoltageFactors { get; } = new(
        "tm-5-811-7-c-5",
        "TM 5-811-7",
        "Appendix C, Table C-5",
        "Factor y of zinc at -0.70 to -1.20 V CSE: 1.60, 1.20, 1.00, 0.80, 0.40, 0, 0",
        SourceReading.FirstHand);

    /// <summary>Current demand of bare steel.</summary>
    internal static SourceReference CurrentRequirements { get; } = new(
        "mil-hdbk-1004-10-table-1",
        "MIL-HDBK-1004/10",
        "Table 1",
        "Current requirements of bare steel in soil, water and concrete, mA/ft2",
        SourceReading.FirstHand);

    /// <summary>Design current demand offshore.</summary>
    internal static SourceReference ClassRulesProtection { get; } = new(
        "class-rules-4-1-1",
        "Class rules for offshore units, external steel protection",
        "Table 4.1.1",
        "Current density at the start, on the mean and at the end by sea area, mA/m2",
        SourceReading.FirstHand);

    /// <summary>Coating breakdown over a life.</summary>
    internal static SourceReference OffshoreStructures { get; } = new(
        "offshore-structures-6-10",
        "Offshore Structures: Design, Construction and Maintenance",
        "equations 6.10 to 6.13",
        "f = a + b t; mean a + b t/2; final at most 1, and then the mean 1 - (1 - a)^2/(2 b t)",
        SourceReading.FirstHand);

    /// <summary>Resistance of flush anodes; mass of anodes.</summary>
    internal static SourceReference FlushAnodeResistance { get; } = new(
        "pipeline-cp-report-5-2",
        "Design report of a pipeline's cathodic protection, quoting DNV",
        "5.2 and 5.3",
        "R = 0.315 rho/sqrt(A); mass = current x life x 8760/(utilisation x capacity)",
        SourceReading.SecondHand);

    /// <summary>Mass of anodes from their consumption.</summary>
    internal static SourceReference MilitaryAnodeMass { get; } = new(
        "mil-hdbk-1004-10-anode-mass",
        "MIL-HDBK-1004/10",
        "worked designs, pages 158 to 209",
        "W = Y S I/E with years, lb/(A.a), A and efficiency",
        SourceReading.FirstHand);

    /// <summary>Criteria of protection in soil and water.</summary>
    internal static SourceReference ProtectionCriteria { get; } = new(
        "mil-hdbk-1004-10-criteria",
        "MIL-HDBK-1004/10",
        "3.3.1.1",
        "Steel in soil or water: -0.85 V CSE, or 100 mV of polarisation",
        SourceReading.FirstHand);

    /// <summary>Criteria of protection of buried pipelines.</summary>
    internal static SourceReference BuriedPipelineCriteria { get; } = new(
        "iso-15589-1-criteria",
        "ISO 15589-1",
        "Table 1",
        "-0.95 V CSE with anaerobic bacteria, not below -1.20 V CSE",
        SourceReading.Recalled);

    /// <summary>Criteria of protection in seawater.</summary>
    internal static SourceReference SeawaterCriteria { get; } = new(
        "en-12473-criteria",
        "EN 12473",
        "criteria in seawater",
        "-0.80 V SSC aerated, -0.90 anaerobic, not below -1.10; high-strength steel -0.83 to -0.95 V SSC",
        SourceReading.Recalled);

    /// <summary>A criterion of galvanic coatings.</summary>
    internal static SourceReference GalvanicCoatingCriterion { get; } = new(
        "wilde-1990",
        "Wilde, CIM Bulletin 83 (1990)",
        "abstract",
        "Steel sheet in aerated salt water corrodes less than 1 mil a year at -0.725 V SCE",
        SourceReading.FirstHand);

    /// <summary>Oxygen in water.</summary>
    internal static SourceReference OxygenInWater { get; } = new(
        "oxygen-in-water-25",
        "Handbook values of oxygen in water at 25 degC",
        "diffusivity and solubility under air",
        "2e-9 m2/s; 0.26 mol/m3",
        SourceReading.Recalled);

    /// <summary>Corrosion as the meeting of two reactions.</summary>
    internal static SourceReference MixedPotential { get; } = new(
        "wagner-traud-1938",
        "Wagner and Traud, Z. Elektrochem. 44 (1938) 391",
        "mixed potential",
        "A metal's current is the sum of its own dissolution and of the reduction on it",
        SourceReading.Recalled);

    /// <summary>Polarisation resistance from Tafel slopes.</summary>
    internal static SourceReference SternGeary { get; } = new(
        "stern-geary-1957",
        "Stern and Geary, J. Electrochem. Soc. 104 (1957) 56",
        "polarisation resistance",
        "R_p = b_a b_c/(2.303 i_corr (b_a + b_c))",
        SourceReading.Recalled);

    /// <summary>Water on metal in the open air.</summary>
    internal static SourceReference WaterOnMetal { get; } = new(
        "water-on-metal",
        "Texts on atmospheric corrosion",
        "water on metal",
        "1, 10 and 100 g/m2 at 100 % humidity, as dew and wet from rain",
        SourceReading.Recalled);

    /// <summary>Conductivity of rain.</summary>
    internal static SourceReference RainConductivity { get; } = new(
        "rain-conductivity",
        "Precipitation networks",
        "conductivity of rain",
        "4 to 150 uS/cm",
        SourceReading.Recalled);

    /// <summary>Conductivity of natural waters.</summary>
    internal static SourceReference WaterConductivity { get; } = new(
        "water-conductivity",
        "Encyclopedia article on electrolytic conductivity, and a table of resistivities",
        "drinking water; seawater",
        "200 to 800 uS/cm; about 50 mS/cm, and 4.8 S/m at 20 degC",
        SourceReading.FirstHand);

    /// <summary>Conductivity of salt solutions.</summary>
    internal static SourceReference SaltConductivity { get; } = new(
        "crc-conductivity-salts",
        "CRC Handbook, electrical conductivity of aqueous solutions",
        "rows MgCl2 and CaCl2, 20 degC",
        "0.5 to 30 and 0.5 to 40 mass %, mS/cm",
        SourceReading.FirstHand);

    /// <summary>Conductivity of salt water.</summary>
    internal static SourceReference SodiumChlorideConductivity { get; } = new(
        "crc-conductivity-nacl",
        "CRC Handbook, electrical conductivity of aqueous solutions",
        "row NaCl, 20 degC",
        "0.5 to 25 mass %, mS/cm",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Galvanic =>
    [
        FaradayConstants, AnodeCourseTable, PipelineHandbook, BritishCathodicProtection, DnvCathodicProtection, PipelineAnodes,
        DrivingVoltageFactors, CurrentRequirements, ClassRulesProtection, DnvDesignDemand, SoilAnodeOutput, SoilAnodeZincConstants, SodiumChlorideMolar, OffshoreStructures, FlushAnodeResistance, MilitaryAnodeMass,
        ProtectionCriteria, BuriedPipelineCriteria, SeawaterCriteria, GalvanicCoatingCriterion, OxygenInWater, MixedPotential, SternGeary,
        WaterOnMetal, RainConductivity, WaterConductivity, SaltConductivity, SodiumChlorideConductivity,
    ];
}
