using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <content>Documents on charge and anodes.</content>
internal static partial class Sources
{
    internal static SourceReference CorrosionPaperSeventeen { get; } = new(
        "dod-technical-paper-17", "US Department of Defense, Electrical Technical Paper 17, February 2017", "1.1.3", "Zinc: 372 A.h/lb, 23.5 lb/(A.a)", SourceReading.FirstHand);

    internal static SourceReference SacrificialMetalPage { get; } = new(
        "encyclopedia-sacrificial-metal", "Encyclopedia page on sacrificial metal", "capacity of zinc", "825 A.h/kg", SourceReading.FirstHand);

    internal static SourceReference AstmG102 { get; } = new(
        "astm-g102", "ASTM G102", "Tables 1 and 2, and the usual textbook value of zinc", "K1 3.27e-3, K2 8.954e-3; zinc at 1 uA/cm2 15.0 um/a", SourceReading.Recalled);

    internal static SourceReference RateConversionPage { get; } = new(
        "corrosion-rate-conversion", "Page of corrosion-rate conversions", "conversion matrix; iron", "3.28 M/(n d) mm/a, 8.95 M/n g/(m2.d); iron 11.6 mm/a, 456 mil/a, 249 g/(m2.d) at 1 mA/cm2", SourceReading.FirstHand);

    internal static SourceReference IronRateQuestion { get; } = new(
        "iron-rate-question", "Examination question on the corrosion rate of iron", "the answer", "Iron at 1 uA/cm2: 0.46 mil/a, M 55.8, 7.86 g/cm3", SourceReading.FirstHand);

    internal static SourceReference AnodeLifeFormula { get; } = new(
        "anode-life-0-0424", "Courses on cathodic protection", "life of zinc anodes", "L = 0.0424 W E U/I, W in lb", SourceReading.Recalled);

    internal static SourceReference BulkheadDesign { get; } = new(
        "mil-hdbk-1004-10-bulkhead", "MIL-HDBK-1004/10", "page 201, steel bulkhead", "106 560 ft2 at 0.5 and 44 400 ft2 at 0.2 mA/ft2: 62.16 A; anodes of 4.75 A: 13.08, use 13", SourceReading.FirstHand);

    private static IEnumerable<SourceReference> Galvanic =>
        [BulkheadDesign, CorrosionPaperSeventeen, SacrificialMetalPage, AstmG102, RateConversionPage, IronRateQuestion, AnodeLifeFormula];
}
