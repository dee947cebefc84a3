using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>Quantiles of the normal distribution as every textbook prints them.</summary>
internal static class NormalQuantileChecks
{
    internal static CheckGroup Group => new(
        "Normal distribution: printed quantiles",
        "Recalled, as printed in any table of the normal distribution. Asked through bounds of a rate that lie e and 1/e from its middle, of which s is 1/z. A general maths library is the second witness, in the unit tests.",
        [Case(0.9, 1.2816), Case(0.95, 1.6449), Case(0.975, 1.9600), Case(0.99, 2.3263), Case(0.995, 2.5758)]);

    private static PublishedCase Case(double share, double z) => new()
    {
        Id = FormattableString.Invariant($"normal-quantile/{share}"),
        What = FormattableString.Invariant($"z of {share}"),
        Evidence = Evidence.From(References.NormalDistribution, "tables of the normal distribution"),
        Expected = z,
        Tolerance = 0.00005,
        Unit = "1",
        Compute = () => 1 / UncertainRate.FromBounds(
            new RateRange(CorrosionRate.FromMicrometersPerYear(1 / Math.E), CorrosionRate.FromMicrometersPerYear(Math.E)), Probability.FromFraction(1 - share), Basis.FirstPrinciples("e and 1/e")).LogNormal.Spread.Value,
    };
}
