using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>The monotone cubic in exact fractions, the slopes of the laws, and the exponents of steel.</summary>
internal static class LossCurveChecks
{
    internal static CheckGroup Group => new(
        "Loss curves: monotone cubic, slopes, exponents of steel",
        "The cubic goes through made-up points; slopes and values are in exact fractions of another language, by the Hermite polynomials and not by the nested form of the library. The rule for the slopes is recalled. Exponents of steel are recalled.",
        [.. Cases()]);

    private static readonly MeasuredLoss Curve = new(
        [Point(1, 2), Point(3, 5), Point(7, 8), Point(20, 14)],
        CurveInterpolation.MonotoneCubic,
        CurveEnd.EndTangent,
        Basis.OwnExperience("made up"));

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence exact = Evidence.ComputedElsewhere("exact fractions", References.MonotoneCubic);
        foreach ((double years, double um, string fraction) in new[]
        {
            (0.5, 1.053091397849, "1567/1488"), (2, 3.675868486352, "11851/3224"), (5, 6.720985155196, "19921/2964"),
            (10, 9.741649533349, "13825953/1419262"), (15, 12.269696973967, "26120872/2128893"),
        })
        {
            yield return Case(
                FormattableString.Invariant($"cubic/{years}"), FormattableString.Invariant($"loss after {years} years, {fraction}"), um, 1e-12, "um", exact,
                () => Curve.Loss(Curve.FirstYear, Duration.FromYears365(years)).Micrometers);
            yield return Case(
                FormattableString.Invariant($"cubic/back-{years}"), FormattableString.Invariant($"time to that loss, {fraction} um"), years, 1e-10, "a", exact,
                () => Ask.LifeYears(Curve, um, Curve.FirstYear.MicrometersPerYear));
        }

        foreach ((double years, double slope, string fraction) in new[]
        {
            (0.0, 2.1666666666666665, "13/6"), (1, 1.7419354838709677, "54/31"), (3, 1.0384615384615385, "27/26"),
            (7, 0.5964912280701754, "34/57"), (20, 0.2409502262443439, "213/884"),
        })
        {
            yield return Case(
                FormattableString.Invariant($"cubic/slope-{years}"), FormattableString.Invariant($"slope at {years} years, {fraction}"), slope, 1e-13, "um/a", exact,
                () => Curve.RateAt(Curve.FirstYear, Duration.FromYears365(years)).MicrometersPerYear);
        }

        yield return Case("slope/power-4", "rate after 4 years, b = 0.5, 6 um/a at first", 1.5, 1e-12, "um/a",
            Evidence.FirstPrinciples("6 x 0.5 / sqrt(4)"), static () => Rate(new PowerLawLoss(TimeExponent.FromValue(0.5)), 6, 4));
        yield return Case("slope/power-40", "rate after 40 years, mean exponent of zinc, 1 um/a at first", 0.4642992011, 1e-10, "um/a",
            Evidence.ComputedElsewhere("0.813 x 20^-0.187, decimal, 50 digits", References.PowerLawExponents), static () => Rate(PowerLawLoss.ZincMean, 1, 40));
        yield return Case("steel/mean", "exponent of carbon steel, mean", 0.523, 0, "1", Evidence.From(References.SteelExponents), static () => PowerLawLoss.SteelMean.Exponent.Value);
        yield return Case("steel/upper", "exponent of carbon steel, upper", 0.575, 0, "1", Evidence.From(References.SteelExponents), static () => PowerLawLoss.SteelUpper.Exponent.Value);
    }

    private static LossPoint Point(double years, double um) => new(Duration.FromYears365(years), Length.FromMicrometers(um));

    private static double Rate(PowerLawLoss law, double first, double years) =>
        law.RateAt(CorrosionRate.FromMicrometersPerYear(first), Duration.FromYears365(years)).MicrometersPerYear;

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "loss-curve/" + id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
