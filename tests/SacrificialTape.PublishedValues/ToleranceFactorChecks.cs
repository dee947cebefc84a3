using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.PublishedValues;

/// <summary>One-sided tolerance factors and limits by rank.</summary>
internal static class ToleranceFactorChecks
{
    internal static CheckGroup Group => new(
        "Tolerance factors and limits by rank",
        "Factors k of a handbook for composites (coverage 0.90 and 0.99 with 95 % confidence), which differ from exact ones by up to 0.002, and of the NIST/SEMATECH handbook. Natrella's approximation stands in this check only: the library does not use it, since for few readings it is poor. Numbers with many digits were worked out with thirty digits by a general package.",
        [
            Handbook(3, 0.99, 10.553), Handbook(5, 0.99, 5.741), Handbook(8, 0.99, 4.354), Handbook(10, 0.90, 2.355), Handbook(10, 0.99, 3.981),
            Handbook(15, 0.90, 2.069), Handbook(15, 0.99, 3.520), Handbook(20, 0.90, 1.927), Handbook(20, 0.99, 3.295), Handbook(30, 0.90, 1.778),
            Handbook(30, 0.99, 3.064), Handbook(50, 0.90, 1.646), Handbook(50, 0.99, 2.862), Handbook(100, 0.90, 1.527), Handbook(100, 0.99, 2.684),
            Case("exact", 10, 0.90, 0.95, 2.35464, 0.000005, Evidence.From(Sources.CompositeFactors, "the exact factor beside the table")),
            Case("nist", 40, 0.90, 0.99, 1.9017, 0.00005, Evidence.From(References.ToleranceIntervals)),
            Case("digits", 2, 0.90, 0.95, 20.581467624, 1e-8, Digits), Case("digits", 3, 0.95, 0.95, 7.655900133, 1e-8, Digits),
            Case("digits", 43, 0.90, 0.99, 1.873953606, 1e-8, Digits), Case("digits", 1000, 0.95, 0.95, 1.727263270, 1e-8, Digits),
            Case("digits", 10_000, 0.99, 0.95, 2.358366669, 1e-8, Digits),
            Natrella(43, 1.8752), Natrella(40, 1.9034),
            Rank(0.90, 29, Evidence.From(Sources.CompositeFactors, "ranks")), Rank(0.99, 299, Evidence.From(Sources.CompositeFactors, "ranks")),
            Rank(0.95, 59, Evidence.FirstPrinciples("0.95^58 = 0.0510 and 0.95^59 = 0.0485")),
        ]);

    private static Evidence Digits => Evidence.ComputedElsewhere("quadrature over the chi distribution and root, thirty digits, general mathematics package");

    private static PublishedCase Handbook(int count, double coverage, double factor) =>
        Case("handbook", count, coverage, 0.95, factor, 0.0021, Evidence.From(Sources.CompositeFactors));

    private static PublishedCase Case(string kind, int count, double coverage, double confidence, double factor, double tolerance, Evidence evidence) => new()
    {
        Id = FormattableString.Invariant($"tolerance-factor/{kind}/{count}-{coverage}-{confidence}"),
        What = FormattableString.Invariant($"k, {count} readings, coverage {coverage}, confidence {confidence}"),
        Evidence = evidence,
        Expected = factor,
        Tolerance = tolerance,
        Unit = "1",
        Compute = () => new ToleranceFactor(count, Probability.FromFraction(coverage), Probability.FromFraction(confidence)).Value,
    };

    private static PublishedCase Natrella(int count, double printed) => new()
    {
        Id = FormattableString.Invariant($"tolerance-factor/natrella/{count}"),
        What = FormattableString.Invariant($"k of {count} readings, 0.90 and 0.99, against Natrella's approximation"),
        Evidence = Evidence.From(References.ToleranceIntervals, "an approximation, 0.1 % above the exact factor here"),
        Expected = printed,
        Tolerance = 0.002,
        Unit = "1",
        Compute = () => new ToleranceFactor(count, Probability.FromFraction(0.9), Probability.FromFraction(0.99)).Value,
    };

    private static PublishedCase Rank(double coverage, int least, Evidence evidence) => new()
    {
        Id = FormattableString.Invariant($"tolerance-rank/{coverage}"),
        What = FormattableString.Invariant($"readings until the lowest is a limit, coverage {coverage}, confidence 0.95"),
        Evidence = evidence,
        Expected = least,
        Tolerance = 0,
        Unit = "1",
        Compute = () => RankLimit.LeastReadings(Probability.FromFraction(coverage), Probability.FromFraction(0.95)),
    };
}
