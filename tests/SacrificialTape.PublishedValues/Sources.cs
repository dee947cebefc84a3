using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>Documents that checks use and that the library itself takes nothing from.</summary>
internal static partial class Sources
{
    internal static SourceReference CorragSites { get; } = new(
        "iso-corrag-one-year",
        "ISO CORRAG collaborative exposure programme, one-year loss of flat panels",
        "as listed by the American Galvanizers Association, atmospheric corrosion data",
        "First-year loss of zinc at 28 sites and of carbon steel at 27 of them, in um; spelling of sites corrected",
        SourceReading.SecondHand);

    internal static SourceReference SiteClimates { get; } = new(
        "unece-sites-1987",
        "UN/ECE exposure programme, environment of its sites",
        "annual means of 1987-88: Ahtari, Helsinki, Kasperske Hory, Kopisty",
        "Temperature, humidity and sulfur dioxide; weakly recalled, and of other years than the losses they are held against",
        SourceReading.Recalled);

    internal static SourceReference TwentyYearPanels { get; } = new(
        "astm-stp-175-panels",
        "Copson, ASTM STP 175 (1955)",
        "as listed in Fundamentals of Air Pollution, Table 9-1",
        "Loss in per cent of mass of zinc panels 9 x 12 x 0.035 in over 20 years at four sites",
        SourceReading.SecondHand);

    internal static SourceReference HangarProblem { get; } = new(
        "galvanized-hangar-problem",
        "Roberge, problem 'Thickness of a galvanized coating'",
        "the problem; its answer is not printed",
        "An aircraft hangar: chloride 314 and sulfur dioxide 42 mg/(m2.d), mean daily wet hours of each month",
        SourceReading.FirstHand);

    internal static SourceReference HotDipCoatings { get; } = new(
        "iso-1461-2009-thickness",
        "ISO 1461:2009",
        "tables of minimum local and mean coating thickness and mass",
        "Pairs of thickness and mass per area, converted at 7.2 g/cm3 by convention",
        SourceReading.SecondHand);

    internal static SourceReference OuncesPerSquareFoot { get; } = new(
        "galvinfonote-1-1-2004",
        "GalvInfoNote 1.1, rev. 2.2, January 2004",
        "conversion of coating mass",
        "1 oz/ft2 is 305.15 g/m2; G90 and Z275 are the same coating, total of both faces",
        SourceReading.FirstHand);

    internal static SourceReference LifeTable { get; } = new(
        "iso-14713-1-table-2",
        "ISO 14713-1",
        "Table 2",
        "Life to first maintenance of zinc coatings in C3 to CX, least and most, in whole years",
        SourceReading.Recalled);

    internal static SourceReference AverageRates { get; } = new(
        "iso-9224-2012-annex-b",
        "ISO 9224:2012",
        "Annex B",
        "Average corrosion rates by category: first 10 years, and steady to 30 years",
        SourceReading.Recalled);

    internal static SourceReference MaximumAttackOfSteel { get; } = new(
        "iso-9224-2012-annex-a-steel",
        "ISO 9224:2012",
        "Annex A, carbon steel, and the mean exponent 0.523",
        "Attack of carbon steel at 25 um in the first year: 25, 36, 58, 83, 103, 120 um after 1, 2, 5, 10, 15, 20 years",
        SourceReading.Recalled);

    internal static SourceReference HollowSections { get; } = new(
        "chs-surface-area",
        "Tables of circular hollow sections",
        "surface area per metre",
        "114.3, 168.3 and 323.9 mm: 0.359, 0.529 and 1.018 m2/m",
        SourceReading.Recalled);

    internal static SourceReference PaperMill { get; } = new(
        "paper-mill-example",
        "Encyclopedia article 'Cutting stock problem'",
        "the paper-mill example",
        "Rolls of 5600, 13 widths, 219 pieces: 73 rolls at best, 0.401 % waste",
        SourceReading.FirstHand);

    internal static SourceReference TripletsT60 { get; } = new(
        "falkenauer-t60-00",
        "BPPLIB and OR-Library, Falkenauer triplets",
        "instance t60_00",
        "60 items, capacity 1000: 20 bins at best",
        SourceReading.FirstHand);

    internal static SourceReference OrderBook { get; } = new(
        "ampl-book-cutting-stock",
        "AMPL: A Modeling Language for Mathematical Programming",
        "cutting-stock chapter",
        "Stock 110; 48 of 20, 35 of 45, 24 of 50, 10 of 55, 8 of 75: 47 at best",
        SourceReading.Recalled);

    internal static SourceReference TankHeadTests { get; } = new(
        "fluids-tests-heads",
        "Test suite of the open library fluids (MIT licence)",
        "tests of tank geometry",
        "Outside area of a full cone, a half sphere and a half spheroid of diameter 2: 4.442882938158366, 6.283185307179586, 6.278996936093318",
        SourceReading.FirstHand);

    internal static SourceReference EllipsoidalFactor { get; } = new(
        "handbook-two-to-one",
        "Pressure vessel handbooks",
        "2:1 ellipsoidal head",
        "Area 1.084 times the diameter squared",
        SourceReading.Recalled);

    internal static SourceReference TorisphericalFactor { get; } = new(
        "handbook-torispherical",
        "Pressure vessel handbooks",
        "torispherical head, crown radius D, knuckle radius 0.06 D",
        "Area 0.931 times the diameter squared",
        SourceReading.Recalled);

    internal static SourceReference AnnuityTable { get; } = new(
        "blocher-9e-chapter-12-table-2",
        "Blocher, 9th edition, tables of the publisher's companion pages",
        "chapter 12, Table 2, 'Present Value of Annuity of $1'",
        "Series present worth at 4 to 30 %, 1 to 20 periods, three decimals",
        SourceReading.FirstHand);

    internal static SourceReference OrdinaryAnnuityTable { get; } = new(
        "interest-tables-a-5",
        "Appendix A 'Interest Tables' of a textbook (title page not seen)",
        "page A-5, 'Present Value of Ordinary Annuity of $1 per Period'",
        "Series present worth at 9 to 14 %, 1 to 45 periods, five decimals",
        SourceReading.FirstHand);

    internal static SourceReference FactorTable { get; } = new(
        "compound-interest-factor-tables-8",
        "Compound Interest Factor Tables, appendix of a textbook (title page not seen)",
        "Table 8, 'Discrete Cash Flow: Compound Interest Factors 3%'",
        "P/F, A/P and P/A at 3 %, 1 to 26 periods; scanned, blanks within numbers closed up",
        SourceReading.FirstHand);

    internal static SourceReference CompoundInterestTable { get; } = new(
        "retirement-countdown-c-1",
        "Retirement Countdown",
        "Appendix C, Table C-1, 'Compound Interest Table', and the text above it",
        "What one grows to at 1 to 12 % in 1 to 17 years, and at 6 % in 20; five decimals",
        SourceReading.FirstHand);

    internal static SourceReference CapitalRecoveryExample { get; } = new(
        "capital-recovery-section-6-2",
        "Exercise to section 6.2 of a textbook of engineering economy, as set with its solution on a page of questions and answers",
        "the exercise and its solution",
        "(A/P, 10 %, 5) = 0.26380; 50 000 less 5 000 after 5 years comes to 12 371 a year",
        SourceReading.SecondHand);

    internal static SourceReference Containers { get; } = new(
        "iso-668-2013-outside",
        "ISO 668:2013",
        "outside dimensions, through a published table of them",
        "1CC 6058 x 2438 x 2591 mm, 1AA 12192 x 2438 x 2591 mm, 1AAA 12192 x 2438 x 2896 mm",
        SourceReading.SecondHand);

    internal static SourceReference CrossSections { get; } = new(
        "rolled-section-areas",
        "EN 10365",
        "cross-sections of IPE and HEB, through a published guide and an open data set of profiles",
        "IPE 80 7.64 cm2 to IPE 330 62.6 cm2, HEB 100 26.0 cm2",
        SourceReading.SecondHand);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<SourceReference> All =>
    [
        CorragSites, SiteClimates, TwentyYearPanels, HangarProblem, HotDipCoatings, OuncesPerSquareFoot, LifeTable, AverageRates,
        MaximumAttackOfSteel, HollowSections, PaperMill, TripletsT60, OrderBook,
        TankHeadTests, EllipsoidalFactor, TorisphericalFactor, Containers, CrossSections,
        AnnuityTable, OrdinaryAnnuityTable, FactorTable, CompoundInterestTable, CapitalRecoveryExample,
        .. Galvanic,
        DewPointTable, SaturationTable, PsychrometerExample, TetensAt15, MarginInFahrenheit, OffshoreSalts,
        CompositeFactors,
        DuplexArticle, DuplexGalvanizer, SecondResistivityTable,
    ];
}
