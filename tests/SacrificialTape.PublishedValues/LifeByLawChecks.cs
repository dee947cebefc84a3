using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>Life of a thickness at the upper bound of a category, under each law.</summary>
internal static class LifeByLawChecks
{
    internal static CheckGroup Group => new(
        "Life of zinc under the linear and the power law",
        "s/r, and the power law with its tangent after 20 years solved for the time, in 50-digit decimal arithmetic of another language. Exponents are recalled. No document prints such lives: the rows check the arithmetic. That life goes with thickness is quoted from ISO 1461.",
        [.. Cases()]);

    // Zinc in um, category, life in years: linear, mean exponent, upper exponent.
    private static readonly (double Um, string Category, double Linear, double Mean, double Upper)[] Rows =
    [
        (20, "C3", 9.52380952, 15.99370943, 13.21915065),
        (20, "C4", 4.76190476, 6.81833922, 5.97559432),
        (20, "C5", 2.38095238, 2.90675218, 2.70121193),
        (20, "CX", 0.80000000, 0.75997533, 0.77444747),
        (25, "C3", 11.90476190, 21.04003483, 17.06913783),
        (25, "C4", 5.95238095, 8.97179026, 7.71594528),
        (25, "C5", 2.97619048, 3.82479810, 3.48792142),
        (25, "CX", 1.00000000, 1.00000000, 1.00000000),
        (50, "C3", 23.80952381, 46.68031565, 36.98997620),
        (50, "C4", 11.90476190, 21.04003483, 17.06913783),
        (50, "C5", 5.95238095, 8.97179026, 7.71594528),
        (50, "CX", 2.00000000, 2.34568990, 2.21219011),
        (85, "C3", 40.47619048, 82.57670881, 64.91961475),
        (85, "C4", 20.23809524, 38.98823141, 31.00505365),
        (85, "C5", 10.11904762, 17.23193787, 14.16976680),
        (85, "CX", 3.40000000, 4.50531961, 4.06252466),
        (100, "C3", 47.61904762, 97.96087731, 76.88945984),
        (100, "C4", 23.80952381, 46.68031565, 36.98997620),
        (100, "C5", 11.90476190, 21.04003483, 17.06913783),
        (100, "CX", 4.00000000, 5.50226109, 4.89378508),
        (200, "C3", 95.23809524, 200.52200062, 156.68842713),
        (200, "C4", 47.61904762, 97.96087731, 76.88945984),
        (200, "C5", 23.80952381, 46.68031565, 36.98997620),
        (200, "CX", 8.00000000, 12.90659826, 10.82598296),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double um, string category, double linear, double mean, double upper) in Rows)
        {
            yield return Life(um, category, "linear", linear, LinearLoss.Law, Evidence.ComputedElsewhere(
                "s/r, decimal", References.CorrosivityCategories));
            yield return Life(um, category, "mean", mean, PowerLawLoss.ZincMean, Evidence.ComputedElsewhere(
                "exp(ln(s/r)/b) or the tangent, decimal", References.PowerLawExponents));
            yield return Life(um, category, "upper", upper, PowerLawLoss.ZincUpper, Evidence.ComputedElsewhere(
                "exp(ln(s/r)/b) or the tangent, decimal", References.PowerLawExponents));
        }

        foreach ((double thin, double thick) in new[] { (85.0, 170.0), (50, 125), (100, 10) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"life/proportional-{thin}-{thick}"),
                What = FormattableString.Invariant($"life of {thick} um over life of {thin} um, linear law, 3.3 um/a"),
                Evidence = Evidence.From(References.LifeProportionalToThickness, "the same as the thicknesses"),
                Expected = thick / thin,
                Tolerance = 1e-12,
                Unit = "1",
                Compute = () => Ask.LifeYears(LinearLoss.Law, thick, 3.3) / Ask.LifeYears(LinearLoss.Law, thin, 3.3),
            };
        }
    }

    private static PublishedCase Life(
        double um, string category, string name, double years, ILossLaw law, Evidence evidence) => new()
        {
            Id = FormattableString.Invariant($"life/{um}-um-{category}/{name}").ToLowerInvariant(),
            What = FormattableString.Invariant($"{um} um at the upper bound of {category}, {law.Name}"),
            Evidence = evidence,
            Expected = years,
            Tolerance = 1e-8,
            Unit = "a",
            Compute = () => Ask.LifeYears(
                law, um, Corrosivity.RatesOf(Enum.Parse<CorrosivityCategory>(category), Metal.Zinc).Highest.MicrometersPerYear),
        };
}
