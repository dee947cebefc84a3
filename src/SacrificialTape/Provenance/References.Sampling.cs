namespace SacrificialTape.Provenance;

/// <content>Documents on how many readings to take and how to accept them.</content>
public static partial class References
{
    /// <summary>Four documents compared.</summary>
    internal static SourceReference SamplingComparison { get; } = new(
        "francis-2009-readings", "Francis, 'Dry film thickness measurements: how many are enough?', J. Protective Coatings and Linings, December 2009", "Tables 1 and 2; text on acceptance",
        "Readings by area of ISO 19840, SSPC-PA 2, AS 3894.3 and IMO PSPC; on 500 m2: 70, 35, 35 and 100; 80-20 and 90/10", SourceReading.FirstHand);

    /// <summary>SSPC-PA 2.</summary>
    internal static SourceReference SamplingPa2 { get; } = new(
        "sspc-pa-2-article", "SSPC-PA 2, as an article of its publisher and a summary describe it", "required number of measurements; restriction levels",
        "Spot of 3 readings, area of 5 spots on 10 m2; each 10 m2 up to 30 m2, three to 100 m2, one more each 100 m2; 8 to 12: spots 6.4 to 14.4", SourceReading.SecondHand);

    /// <summary>Smallest area of ISO 19840.</summary>
    internal static SourceReference SamplingSmallest { get; } = new(
        "iso-19840-1-m2", "ISO 19840", "table of the sampling plan, first row",
        "5 readings up to 1 m2", SourceReading.Recalled);

    private static IEnumerable<SourceReference> Samplings => [SamplingComparison, SamplingPa2, SamplingSmallest];
}
