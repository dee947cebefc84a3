using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>The catalogue of documents that this library's numbers and formulas come from.</summary>
/// <remarks>The docs page "Sources and marks" is made from it. Nothing here was read beyond what each entry says.</remarks>
public static partial class References
{
    /// <summary>First-year corrosion by corrosivity category, C1 to C5.</summary>
    internal static SourceReference CorrosivityCategories { get; } = new(
        "iso-9223-2012-table-2",
        "ISO 9223:2012",
        "Table 2",
        "First-year corrosion rates of zinc and carbon steel by corrosivity category; lower bound excluded, upper included",
        SourceReading.SecondHand);

    /// <summary>First-year corrosion of category CX.</summary>
    internal static SourceReference CorrosivityCategoryExtreme { get; } = new(
        "iso-9223-2012-table-2-cx",
        "ISO 9223:2012",
        "Table 2, row CX",
        "Bounds of category CX: zinc in um/a and g/(m2.a), carbon steel in g/(m2.a)",
        SourceReading.Recalled);

    /// <summary>The power law of corrosion loss over time.</summary>
    internal static SourceReference PowerLawForm { get; } = new(
        "feliu-1993",
        "Feliu, Morcillo and Feliu, Corrosion Science 34 (1993) 403",
        "equation 1",
        "Form of the power law of atmospheric corrosion loss, C = A t^n",
        SourceReading.FirstHand);

    /// <summary>Exponents of the power law and the tangent after 20 years.</summary>
    internal static SourceReference PowerLawExponents { get; } = new(
        "iso-9224-2012",
        "ISO 9224:2012",
        "equation 1 and Table 2",
        "Exponents B1 (mean) and B2 (upper) of zinc, 0.813 and 0.873; the tangent at 20 years beyond 20 years",
        SourceReading.Recalled);

    /// <summary>Life in proportion to thickness.</summary>
    internal static SourceReference LifeProportionalToThickness { get; } = new(
        "iso-1461-2009-annex-e",
        "ISO 1461:2009",
        "Annex E",
        "Life of a zinc coating is proportional to its thickness",
        SourceReading.SecondHand);

    /// <summary>Life to first maintenance, linear on the first-year rate.</summary>
    internal static SourceReference LifeToFirstMaintenance { get; } = new(
        "galvanizing-basics-2012",
        "Galvanizers Association of Australia, Basics of hot dip galvanizing, ed. 1, June 2012",
        "page 22, quoting ISO 14713-1",
        "85 um of zinc in C4: 20 to 40 years to first maintenance",
        SourceReading.FirstHand);

    /// <summary>The strip wound round a cylinder.</summary>
    internal static SourceReference TapingACylinder { get; } = new(
        "taping-a-cylinder-2001",
        "Math Forum, 'Taping a Cylinder', 2001",
        "the answer",
        "Strip without lap: sin A = w/(pi d), net length pi d h / w; with both slanted ends left on, plus sqrt(pi^2 d^2 - w^2)",
        SourceReading.FirstHand);

    /// <summary>Length of a wound roll.</summary>
    internal static SourceReference MaterialOnARoll { get; } = new(
        "material-on-a-roll-2003",
        "Math Forum, 'Determining Length of Material Remaining on a Roll', 2003",
        "the answer",
        "L = pi (Do + Di)(Do - Di) / (4 t)",
        SourceReading.FirstHand);

    /// <summary>Outside diameters of pipe by NPS.</summary>
    internal static SourceReference PipeSizesAsme { get; } = new(
        "asme-b36-10m",
        "ASME B36.10M",
        "Table 1, through the size list of an open piping library (MIT licence), schedule STD",
        "Outside diameters in mm for NPS 1/2 to 48",
        SourceReading.SecondHand);

    /// <summary>Outside diameters of pipe in inches.</summary>
    internal static SourceReference PipeSizesAsmeInch { get; } = new(
        "asme-b36-10m-inch",
        "ASME B36.10M",
        "Table 1, inch column",
        "Outside diameters in inches; NPS 14 and above equal their NPS",
        SourceReading.Recalled);

    /// <summary>Outside diameters of pipe in the metric series 1.</summary>
    internal static SourceReference PipeSizesIso { get; } = new(
        "iso-4200-series-1",
        "ISO 4200, as EN 10220",
        "series 1",
        "Outside diameters in mm for DN 15 to 1200",
        SourceReading.Recalled);

    /// <summary>Thickness and mass of zinc sheet.</summary>
    internal static SourceReference ZincSheetConversion { get; } = new(
        "astm-a653-conversion",
        "ASTM A653",
        "conversion of coating mass to thickness",
        "7.14 g/m2 of zinc is 1.00 um: density 7.14 g/cm3",
        SourceReading.SecondHand);

    /// <summary>Polarity reversal of zinc and steel in hot water.</summary>
    internal static SourceReference PolarityReversal { get; } = new(
        "polarity-reversal-60",
        "Review 'Corrosion inhibitors for zinc'; American Galvanizers Association on polarity reversal",
        "abstract; text",
        "In many aerated hot waters zinc may become cathodic to iron at 60 degC and above; seen in tanks at 60 to 82 degC in soft water",
        SourceReading.FirstHand);

    /// <summary>Lower figure for the temperature limit of zinc anodes.</summary>
    internal static SourceReference ZincAnodeTemperature { get; } = new(
        "zinc-anode-50",
        "DNV-RP-F103; ISO 15589-2",
        "zinc anodes, temperature limit",
        "Zinc anode surface about 50 degC at most",
        SourceReading.Recalled);

    /// <summary>Zinc beside magnesium.</summary>
    internal static SourceReference GalvanicSeries { get; } = new(
        "galvanic-series-seawater",
        "Australasian Corrosion Association, galvanic series in flowing seawater",
        "table",
        "Magnesium -1.60 to -1.63 V, zinc -0.98 to -1.03 V, mild steel -0.60 to -0.72 V against SCE",
        SourceReading.FirstHand);

    /// <summary>Hydrogen embrittlement of high-strength steel.</summary>
    internal static SourceReference HighStrengthFasteners { get; } = new(
        "he-fasteners-2017",
        "Review of hydrogen embrittlement of high-strength fasteners, Phil. Trans. R. Soc. A, 2017",
        "abstract",
        "Susceptibility rises sharply above 1200 MPa tensile strength; fasteners above 1100 MPa are the concern",
        SourceReading.FirstHand);

    /// <summary>Alkali at aluminium under protection.</summary>
    internal static SourceReference AluminiumAlkali { get; } = new(
        "mil-hdbk-1004-10-aluminium",
        "MIL-HDBK-1004/10",
        "3.3.1.2",
        "Aluminium under cathodic protection: a 100 mV shift is enough; care above pH 8",
        SourceReading.FirstHand);

    /// <summary>All entries, subject by subject.</summary>
    /// <remarks>Gathered when asked for: the parts of this class are set up in no given order.</remarks>
    public static ValueList<SourceReference> All => [.. Ground, .. Bends, .. Costing, .. Fittings, .. Sections, .. Revolved, .. BendLays, .. Exposures, .. Galvanic, .. Spread, .. Limits, .. SiteConditions, .. Samplings, .. Places, .. Readings, .. Contact];

    /// <summary>The entry under an id; null where there is none.</summary>
    /// <param name="id">As <see cref="SourceReference.Id"/> states it.</param>
    public static SourceReference? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return All.FirstOrDefault(source => source.Id == id);
    }

    private static IEnumerable<SourceReference> Ground =>
    [
        CorrosivityCategories, CorrosivityCategoryExtreme, PowerLawForm, PowerLawExponents,
        LifeProportionalToThickness, LifeToFirstMaintenance, TapingACylinder, MaterialOnARoll,
        PipeSizesAsme, PipeSizesAsmeInch, PipeSizesIso, ZincSheetConversion,
        PolarityReversal, ZincAnodeTemperature, GalvanicSeries, HighStrengthFasteners, AluminiumAlkali,
    ];
}
