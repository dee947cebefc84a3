using SacrificialTape.Exposure;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>The recalled average rates of ISO 9224, from the losses that the library's power law gives.</summary>
internal static class AverageRateChecks
{
    internal static CheckGroup Group => new(
        "ISO 9224:2012, Annex B: average rates",
        "Recalled. Every bound is the mean of the pure power law over 10 or 30 years at the category's upper bound. The 30 years are beyond the library's tangent, so the loss is made of two shorter ones: 30^b = 15^b x 2^b. That the annex does so without the tangent shows in C5, where the mean of the loss with the tangent rounds to another figure: a known disagreement of the two definitions.",
        [.. Cases()]);

    private static readonly double[] ZincTenYears = [0.07, 0.5, 1.4, 2.7, 5.5, 16];
    private static readonly double[] ZincThirtyYears = [0.05, 0.4, 1.1, 2.2, 4.4, 13];
    private static readonly double[] SteelTenYears = [0.4, 8.3, 17, 27, 67, 233];
    private static readonly double[] SteelThirtyYears = [0.3, 4.9, 10, 16, 39, 138];

    // Half of the last digit printed, category by category.
    private static readonly double[] ZincHalfDigit = [0.005, 0.05, 0.05, 0.05, 0.05, 0.5];
    private static readonly double[] SteelHalfDigit = [0.05, 0.05, 0.5, 0.5, 0.5, 0.5];

    private static readonly PowerLawLoss Steel = new(TimeExponent.FromValue(0.523));

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Column("zinc", Metal.Zinc, PowerLawLoss.ZincMean, ZincTenYears, ZincThirtyYears, ZincHalfDigit),
        .. Column("steel", Metal.CarbonSteel, Steel, SteelTenYears, SteelThirtyYears, SteelHalfDigit),
        WithTangent(),
    ];

    private static IEnumerable<PublishedCase> Column(
        string name, Metal metal, PowerLawLoss law, double[] tenYears, double[] thirtyYears, double[] halfDigit)
    {
        for (int i = 0; i < tenYears.Length; i++)
        {
            CorrosivityCategory category = CorrosivityCategory.C1 + i;
            double Loss(double years) =>
                Ask.LossUm(law, Corrosivity.RatesOf(category, metal).Highest.MicrometersPerYear, years);
            yield return Case($"{name}-{category}/10", $"{name}, {category}, mean of 10 years", tenYears[i], halfDigit[i], () => Loss(10) / 10);
            yield return Case($"{name}-{category}/30", $"{name}, {category}, mean of 30 years, pure power law", thirtyYears[i], halfDigit[i], () => Loss(15) * Loss(2) / Loss(1) / 30);
        }
    }

    private static PublishedCase WithTangent() =>
        Case("zinc-c5/30-with-tangent", "zinc, C5, mean of 30 years, with the tangent after 20", 4.4, 0.05, static () => Ask.LossUm(PowerLawLoss.ZincMean, 8.4, 30) / 30) with
        {
            KnownDisagreement = "The annex averages the pure power law; the library goes on along the tangent after 20 years, which takes a little more zinc.",
        };

    private static PublishedCase Case(string id, string what, double expected, double tolerance, Func<double> compute) => new()
    {
        Id = "average-rate/" + id.ToLowerInvariant(),
        What = what,
        Evidence = Evidence.From(Sources.AverageRates),
        Expected = expected,
        Tolerance = tolerance,
        Unit = "um/a",
        Compute = compute,
    };
}
