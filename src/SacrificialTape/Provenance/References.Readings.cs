namespace SacrificialTape.Provenance;

/// <content>Documents behind readings of foil that has been in service.</content>
public static partial class References
{
    /// <summary>One-sided tolerance intervals of a normal distribution.</summary>
    internal static SourceReference ToleranceIntervals { get; } = new(
        "nist-sematech-7-2-6-3",
        "NIST/SEMATECH e-Handbook of Statistical Methods",
        "7.2.6.3, tolerance intervals for a normal distribution",
        "One-sided factor by the non-central t, and Natrella's approximation: n 43, coverage 0.90, confidence 0.99: 1.8752; n 40: 1.9034 against 1.9017 exact",
        SourceReading.FirstHand);

    /// <summary>Grubbs' test for outliers.</summary>
    internal static SourceReference GrubbsTest { get; } = new(
        "grubbs-critical-values",
        "LibreTexts Chemistry, reference tables",
        "Appendix 07, critical values for Grubbs's test; the formula by Student's t as in the NIST/SEMATECH e-Handbook, 1.3.5.17.1, as quoted elsewhere",
        "Critical values at 0.05 and 0.01 for 3 to 15 readings, two-sided; two of them misprinted",
        SourceReading.FirstHand);

    /// <summary>Student's t.</summary>
    internal static SourceReference StudentTables { get; } = new(
        "student-t-tables",
        "Tables of Student's t, as in any textbook of statistics",
        "upper 95, 97.5 and 99.5 %; Welch's degrees of freedom",
        "Quantiles at 4 to 60 degrees of freedom",
        SourceReading.Recalled);

    /// <summary>Rates and remaining life from thicknesses.</summary>
    internal static SourceReference ThicknessRates { get; } = new(
        "api-570-rates",
        "API 570, 4th edition; a study guide for pressure equipment inspectors, 2014",
        "corrosion rates, remaining life, inspection interval",
        "LT = (initial - actual)/time, ST = (previous - actual)/time, RL = (actual - required)/rate; an interval of at most half the remaining life",
        SourceReading.SecondHand);

    /// <summary>Greatest values in corrosion.</summary>
    internal static SourceReference ExtremesOfCorrosion { get; } = new(
        "shibata-1994-extremes",
        "Shibata, Journal of Research of NIST 99 (4), 1994, page 327",
        "abstract and introduction",
        "Gumbel's distribution of the greatest pit, and the return period as whole area over sample area",
        SourceReading.FirstHand);

    /// <summary>Gumbel's distribution by moments.</summary>
    internal static SourceReference GumbelMoments { get; } = new(
        "gumbel-by-moments",
        "Ouranos, online climate documents for engineers, appendix A7",
        "The statistical distribution of extreme values and the Gumbel distribution",
        "scale = s sqrt(6)/pi, location = mean - 0.5772 scale; x = location - scale ln(-ln(1 - 1/T))",
        SourceReading.FirstHand);

    /// <summary>Gumbel's distribution by maximum likelihood.</summary>
    internal static SourceReference GumbelLikelihood { get; } = new(
        "gumbel-by-likelihood",
        "Kotz and Nadarajah, Extreme value distributions, Imperial College Press, 2000",
        "page 24",
        "The two equations of the maximum likelihood estimates",
        SourceReading.SecondHand);

    /// <summary>How much to sample for greatest values.</summary>
    internal static SourceReference ExtremeSampleSize { get; } = new(
        "extreme-sample-size",
        "Journal of the Japan Society of Corrosion Engineering, paper on pits in hot-water pipes",
        "abstract",
        "As a practical guide: a sample of at least 3 % of the whole, and a return period below 500",
        SourceReading.FirstHand);

    private static IEnumerable<SourceReference> Readings =>
    [
        ToleranceIntervals, GrubbsTest, StudentTables, ThicknessRates, ExtremesOfCorrosion, GumbelMoments, GumbelLikelihood, ExtremeSampleSize,
    ];
}
