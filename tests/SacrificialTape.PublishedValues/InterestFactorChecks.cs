using SacrificialTape.Costing;
using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Factors of compound interest against printed tables, the printed formulas and printed worked examples.</summary>
internal static class InterestFactorChecks
{
    internal static CheckGroup Group => new(
        "Tables of compound interest",
        "Four printed tables, read as pages on their own without the title page of their book unless named; a tolerance is half of the last digit printed. The formulas are those of a reference sheet, worked out in decimal by repeated multiplication.",
        [.. Annuities(), .. FactorTable(), .. CompoundAmounts(), .. Formulas(), .. Examples()]);

    private static IEnumerable<PublishedCase> Annuities()
    {
        (double Percent, double[] Printed)[] threeDigits =
        [
            (4, [4.452, 8.111, 13.590]), (6, [4.212, 7.360, 11.470]), (8, [3.993, 6.710, 9.818]), (10, [3.791, 6.145, 8.514]),
            (15, [3.352, 5.019, 6.259]), (20, [2.991, 4.192, 4.870]), (30, [2.436, 3.092, 3.316]),
        ];
        (double Percent, double[] Printed)[] fiveDigits =
        [
            (9, [3.88965, 6.41766, 9.12855]), (10, [3.79079, 6.14457, 8.51356]), (12, [3.60478, 5.65022, 7.46944]), (14, [3.43308, 5.21612, 6.62313]),
        ];
        foreach ((double percent, double[] printed) in threeDigits)
        {
            for (int i = 0; i < 3; i++)
            {
                yield return Series("table-2", percent, 5 << i, printed[i], 0.0005, Evidence.From(Sources.AnnuityTable));
            }
        }

        foreach ((double percent, double[] printed) in fiveDigits)
        {
            for (int i = 0; i < 3; i++)
            {
                yield return Series("a-5", percent, 5 << i, printed[i], 0.000005, Evidence.From(Sources.OrdinaryAnnuityTable));
            }
        }
    }

    private static IEnumerable<PublishedCase> FactorTable()
    {
        foreach ((int years, double single, double recovery, double series) in new[]
        {
            (5, 0.8626, 0.21835, 4.5797), (10, 0.7441, 0.11723, 8.5302), (20, 0.5537, 0.06722, 14.8775),
        })
        {
            Evidence evidence = Evidence.From(Sources.FactorTable);
            yield return Single("table-8", 3, years, single, 0.00005, evidence);
            yield return Recovery("table-8", 3, years, recovery, 0.000005, evidence);
            yield return Series("table-8", 3, years, series, 0.00005, evidence);
        }
    }

    // The table prints what one grows to: the inverse of what it is worth now.
    private static IEnumerable<PublishedCase> CompoundAmounts() =>
        from row in new[]
        {
            (5, 6, 1.33823), (10, 6, 1.79085), (15, 6, 2.39656), (20, 6, 3.20714), (5, 8, 1.46933), (10, 8, 2.15892), (15, 8, 3.17217),
            (5, 10, 1.61051), (10, 10, 2.59374), (15, 10, 4.17725),
        }
        let years = row.Item1
        let percent = row.Item2
        select new PublishedCase
        {
            Id = FormattableString.Invariant($"interest/c-1-growth-{percent}-percent-{years}-a"),
            What = FormattableString.Invariant($"one grown at {percent} % for {years} a: the inverse of single-payment present worth"),
            Evidence = Evidence.From(Sources.CompoundInterestTable),
            Expected = row.Item3,
            Tolerance = 0.000005,
            Unit = "1",
            Compute = () => 1 / Ask.Interest(percent, years).SinglePaymentFactor,
        };

    private static IEnumerable<PublishedCase> Formulas()
    {
        foreach ((int percent, int years) in new[] { (6, 5), (6, 20), (8, 10), (8, 20), (10, 5), (10, 20) })
        {
            double grown = Grown(percent, years);
            double rate = percent / 100.0;
            Evidence evidence = Evidence.FromFormula(References.CompoundInterestFactors, FormattableString.Invariant($"1.{percent:00}^{years} = {grown:0.00000000000}, by {years} multiplications in decimal"));
            yield return Single("formula", percent, years, 1 / grown, 1e-13, evidence);
            yield return Series("formula", percent, years, (grown - 1) / (rate * grown), 1e-12, evidence);
            yield return Recovery("formula", percent, years, rate * grown / (grown - 1), 1e-13, evidence);
        }
    }

    private static IEnumerable<PublishedCase> Examples()
    {
        yield return Recovery("ie-492", 10, 100, 0.10001, 0.000005, Evidence.From(References.CapitalizedCost));
        yield return Series("ie-492", 10, 100, 9.9990, 0.00005, Evidence.From(References.CapitalizedCost)) with
        {
            KnownDisagreement = "The source inverts 0.10001, a factor already rounded; the factor itself agrees, and its exact inverse is 9.99927.",
        };
        yield return new PublishedCase
        {
            Id = "interest/ie-492-without-end",
            What = "10 000 a year without end at 10 %",
            Evidence = Evidence.From(References.CapitalizedCost, "the divisor is misprinted as .01 there; the result is that of .10"),
            Expected = 100_000,
            Tolerance = 0,
            Unit = "of money",
            Compute = static () => (double)new TimeValue(DiscountRate.FromFractionPerYear(0.1), Lifetime.Unlimited)
                .PresentWorthOfSeries(new Money(10_000, "USD")).Amount,
        };
        yield return Recovery("section-6-2", 10, 5, 0.26380, 0.000005, Evidence.From(Sources.CapitalRecoveryExample));
        yield return new PublishedCase
        {
            Id = "interest/section-6-2-salvage",
            What = "50 000 now, 5 000 back after 5 a, at 10 %: yearly cost",
            Evidence = Evidence.From(Sources.CapitalRecoveryExample, "from factors of five digits, rounded to whole dollars"),
            Expected = 12_371,
            Tolerance = 0.5,
            Unit = "of money",
            Compute = static () => (double)new CostComparison(
                [
                    new CostOption(
                        "machine", Area.FromSquareMeters(1), new Money(50_000, "USD"), Ask.Years(5), Ask.Years(5),
                        [new CostItem("salvage", new Money(-5_000, "USD"), CostTiming.After(Duration.FromYears365(5)))]),
                ],
                Duration.FromYears365(5),
                DiscountRate.FromFractionPerYear(0.1)).Ranking[0].AtEarliestLife.PerSquareMeterAndYear.Amount,
        };
    }

    private static double Grown(int percent, int years)
    {
        decimal grown = 1;
        for (int year = 0; year < years; year++)
        {
            grown *= 1 + (percent / 100m);
        }

        return (double)grown;
    }

    private static PublishedCase Single(string way, double percent, int years, double expected, double tolerance, Evidence evidence) =>
        Factor("single-payment present worth", way, "single", percent, years, expected, tolerance, evidence, static value => value.SinglePaymentFactor);

    private static PublishedCase Series(string way, double percent, int years, double expected, double tolerance, Evidence evidence) =>
        Factor("series present worth", way, "series", percent, years, expected, tolerance, evidence, static value => value.SeriesFactor);

    private static PublishedCase Recovery(string way, double percent, int years, double expected, double tolerance, Evidence evidence) =>
        Factor("capital recovery", way, "recovery", percent, years, expected, tolerance, evidence, static value => value.CapitalRecoveryFactor);

    private static PublishedCase Factor(
        string what, string way, string name, double percent, int years, double expected, double tolerance, Evidence evidence, Func<TimeValue, double> factor) => new()
        {
            Id = FormattableString.Invariant($"interest/{way}-{name}-{percent}-percent-{years}-a"),
            What = FormattableString.Invariant($"{what}, {percent} %, {years} a"),
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = "1",
            Compute = () => factor(Ask.Interest(percent, years)),
        };
}
