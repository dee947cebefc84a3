using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of lower tolerance limits as the workings show them.</summary>
internal static class ToleranceFormulas
{
    private static readonly Basis Normal = Basis.From(References.ToleranceIntervals, "one-sided, by the non-central t distribution; readings taken as normal and independent");

    private static readonly Basis Ranks = Basis.FirstPrinciples("how many readings fall below the share 1 - p is binomial, whatever the distribution");

    private static readonly Symbol Count = new("n", "readings", TradeUnit.One);

    internal static Formula Shift { get; } = new(
        "tolerance.shift",
        new Symbol("d", "Shift of the non-central t", TradeUnit.One),
        "z * sqrt(n)",
        @"z_p\sqrt{n}",
        Normal,
        [new Symbol("z", "quantile of the normal distribution for the coverage", TradeUnit.One), Count]);

    internal static Formula Factor { get; } = new(
        "tolerance.factor",
        new Symbol("k", "Tolerance factor", TradeUnit.One),
        "t / sqrt(n)",
        @"\frac{t'_{\gamma;\,n-1,\,d}}{\sqrt{n}}",
        Normal,
        [new Symbol("t", "quantile of the non-central t for the confidence, by bracketing", TradeUnit.One), Count]);

    internal static Formula Limit { get; } = new(
        "tolerance.limit",
        new Symbol("L", "Lower tolerance limit", TradeUnit.Micrometer),
        "x - k * s",
        @"\bar{x} - k\,s",
        Normal,
        [
            new Symbol("x", "mean", TradeUnit.Micrometer),
            new Symbol("k", "tolerance factor", TradeUnit.One),
            new Symbol("s", "standard deviation", TradeUnit.Micrometer),
        ]);

    internal static Formula LeastReadings { get; } = new(
        "tolerance.least-readings",
        new Symbol("n_min", "Readings until the lowest is a limit", TradeUnit.One),
        "ceil(ln(1 - g) / ln(p))",
        @"\left\lceil\frac{\ln(1-\gamma)}{\ln p}\right\rceil",
        Ranks,
        [new Symbol("g", "confidence", TradeUnit.One), new Symbol("p", "coverage", TradeUnit.One)]);

    internal static Formula RankConfidence { get; } = new(
        "tolerance.rank-confidence",
        new Symbol("c", "Confidence that this rank has", TradeUnit.One),
        "1 - B",
        @"1 - B",
        Ranks,
        [new Symbol("B", "binomial chance of fewer readings below the share 1 - p than the rank", TradeUnit.One)]);
}
