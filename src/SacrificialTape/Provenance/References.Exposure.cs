namespace SacrificialTape.Provenance;

/// <content>Documents on how fast zinc and steel go: in the open air, in water, in soil.</content>
public static partial class References
{
    /// <summary>Dose-response function of zinc.</summary>
    internal static SourceReference DoseResponseZinc { get; } = new(
        "iso-9223-2012-equation-2",
        "ISO 9223:2012",
        "clause 8, equation 2",
        "First-year rate of zinc from temperature, humidity and deposition of sulfur dioxide and chloride",
        SourceReading.Recalled);

    /// <summary>Dose-response function of carbon steel.</summary>
    internal static SourceReference DoseResponseSteel { get; } = new(
        "iso-9223-2012-equation-1",
        "ISO 9223:2012",
        "clause 8, equation 1",
        "First-year rate of carbon steel from temperature, humidity and deposition of sulfur dioxide and chloride",
        SourceReading.Recalled);

    /// <summary>Intervals of the data behind the dose-response functions.</summary>
    internal static SourceReference DoseResponseIntervals { get; } = new(
        "iso-9223-2012-table-3",
        "ISO 9223:2012",
        "Table 3",
        "T -17.1 to 28.7 degC, RH 34 to 93 %, sulfur dioxide 0.7 to 150.4 and chloride 0.4 to 760.5 mg/(m2.d)",
        SourceReading.Recalled);

    /// <summary>How errors of the rate are distributed.</summary>
    internal static SourceReference RateErrorModel { get; } = new(
        "iso-9223-2012-annex-a-2",
        "ISO 9223:2012",
        "A.2",
        "Errors are log-normal: interval r exp(-s) to r exp(+s); s = 0.7 is -50 % / +100 %, s = 0.01 is +-1 %",
        SourceReading.SecondHand);

    /// <summary>Uncertainty of an estimate by dose-response function.</summary>
    internal static SourceReference EstimationUncertainty { get; } = new(
        "iso-9223-2012-table-a-1",
        "ISO 9223:2012",
        "Table A.1",
        "Zinc and steel by dose-response function: -33 % / +50 %",
        SourceReading.Recalled);

    /// <summary>Bounds of the sulfur dioxide classes that changed in 2012.</summary>
    internal static SourceReference SulfurDioxideClasses2012 { get; } = new(
        "iso-9223-2012-table-b-3",
        "ISO 9223:2012",
        "Table B.3, through Santana et al., Metals 9 (2019) 1105, page 10",
        "P0 to 4, P1 4 to 24, P2 from 24 mg/(m2.d)",
        SourceReading.SecondHand);

    /// <summary>The rest of the 2012 classes of sulfur dioxide, and the conversion of a concentration.</summary>
    internal static SourceReference SulfurDioxideConversion { get; } = new(
        "iso-9223-2012-table-b-3-rest",
        "ISO 9223:2012",
        "Table B.3 with its note",
        "P2 to 80, P3 to 200 mg/(m2.d); concentrations to 5, 30, 90, 250 ug/m3; deposition in mg/(m2.d) is 0.8 times concentration in ug/m3",
        SourceReading.Recalled);

    /// <summary>Classes of 1992.</summary>
    internal static SourceReference PollutionClasses1992 { get; } = new(
        "iso-9223-1992-classes",
        "ISO 9223:1992",
        "classes of pollution and wetness, through Roberge, Corrosion Engineering, 2008, Tables 9.2 and 9.3",
        "P0 to P3 to 10, 35, 80, 200 and S0 to S3 to 3, 60, 300, 1500 mg/(m2.d); tau1 to tau3 to 10, 250, 2500 h in a year",
        SourceReading.SecondHand);

    /// <summary>Upper classes of wetness.</summary>
    internal static SourceReference WetnessHours { get; } = new(
        "iso-9223-1992-wetness",
        "ISO 9223:1992",
        "classes of wetness, upper end",
        "tau4 2500 to 5500 h, tau5 above 5500 h in a year",
        SourceReading.Recalled);

    /// <summary>Classes of chloride and wetness in 2012.</summary>
    internal static SourceReference ChlorideClasses2012 { get; } = new(
        "iso-9223-2012-chloride-wetness",
        "ISO 9223:2012",
        "classes of chloride deposition and of wetness",
        "Chloride and wetness bounds as in 1992",
        SourceReading.Recalled);

    /// <summary>Category CX of carbon steel in um/a.</summary>
    internal static SourceReference ExtremeCategoryOfSteel { get; } = new(
        "iso-12944-2-2017-cx-steel",
        "ISO 12944-2:2017",
        "category CX, carbon steel",
        "First-year rate of carbon steel in CX: 200 to 700 um/a",
        SourceReading.SecondHand);

    /// <summary>Rate from the mass that a coupon lost.</summary>
    internal static SourceReference CouponMassLoss { get; } = new(
        "astm-g1-section-8",
        "ASTM G1",
        "section 8",
        "Rate = K W / (A T D); K = 8.76e4 for mm/a and 3.45e6 for mil/a with W in g, A in cm2, T in h, D in g/cm3",
        SourceReading.Recalled);

    /// <summary>Zinc in water.</summary>
    internal static SourceReference ZincInWater { get; } = new(
        "galvanizing-basics-2012-water",
        "Galvanizers Association of Australia, Basics of hot dip galvanizing, ed. 1, June 2012",
        "page 22, waters",
        "Zinc in um/a: sea water 15 to 25, hard fresh 2.5 to 5, soft fresh 5 to 10, distilled 50 to 200",
        SourceReading.FirstHand);

    /// <summary>Zinc in temperate sea water.</summary>
    internal static SourceReference ZincInTemperateSea { get; } = new(
        "iso-14713-1999-sea",
        "ISO 14713:1999",
        "Table 1, immersion in sea water, temperate",
        "Zinc 10 to 20 um/a",
        SourceReading.Recalled);

    /// <summary>Zinc in the fill of reinforced-soil walls.</summary>
    internal static SourceReference ZincInReinforcedSoil { get; } = new(
        "aashto-2017-reinforced-soil",
        "AASHTO LRFD bridge design, 2017",
        "loss of zinc in reinforced soil, through a thesis on motorway walls (Brigham Young University), abstract",
        "Zinc 0.35 oz/ft2 a year for 2 years, 0.09 after; 0.032 oz/ft2 a year measured in walls 19 to 20 years old",
        SourceReading.SecondHand);

    /// <summary>Design losses in reinforced soil in metric units.</summary>
    internal static SourceReference ReinforcedSoilMetric { get; } = new(
        "fhwa-nhi-09-087",
        "FHWA-NHI-09-087",
        "design losses of galvanized reinforcement",
        "Zinc 15 um/a for 2 years, 4 um/a after; then carbon steel 12 um/a, each side",
        SourceReading.Recalled);

    /// <summary>The power law of loss in soil.</summary>
    internal static SourceReference SoilPowerLaw { get; } = new(
        "nchrp-675-equation-a-1",
        "NCHRP Report 675 (2011), after Romanoff 1957",
        "page 51, Appendix A, equation A-1",
        "Form of the loss of metal in soil, x = K t^n",
        SourceReading.FirstHand);

    /// <summary>Exponents of carbon steel.</summary>
    internal static SourceReference SteelExponents { get; } = new(
        "iso-9224-2012-steel",
        "ISO 9224:2012",
        "Table 2, carbon steel",
        "Exponents B1 (mean) and B2 (upper) of carbon steel, 0.523 and 0.575",
        SourceReading.Recalled);

    /// <summary>Cubic through points that never turns back.</summary>
    internal static SourceReference MonotoneCubic { get; } = new(
        "fritsch-butland-1984",
        "Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300; Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238",
        "slopes at the points",
        "Slopes of a piecewise cubic Hermite curve that is monotone where its points are; three-point slopes at the ends",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Exposures =>
    [
        DoseResponseZinc, DoseResponseSteel, DoseResponseIntervals, RateErrorModel, EstimationUncertainty,
        SulfurDioxideClasses2012, SulfurDioxideConversion, PollutionClasses1992, WetnessHours, ChlorideClasses2012,
        ExtremeCategoryOfSteel, CouponMassLoss, ZincInWater, ZincInTemperateSea, ZincInReinforcedSoil,
        ReinforcedSoilMetric, SoilPowerLaw, SteelExponents, MonotoneCubic,
    ];
}
