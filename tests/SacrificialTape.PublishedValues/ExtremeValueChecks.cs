using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Gumbel's distribution of greatest losses.</summary>
internal static class ExtremeValueChecks
{
    // Mean 15 and standard deviation 4 exactly: 15 - 4, 15, 15 + 4.
    private static readonly double[] Simple = [11, 15, 19];

    private static readonly double[] Made = [12, 17, 15, 22, 31, 19, 14, 26];

    internal static CheckGroup Group => new(
        "Greatest losses: Gumbel's distribution",
        "Formulas by moments as printed, worked out by hand for a mean of 15 and a standard deviation of 4; the equations of maximum likelihood solved with thirty digits for invented losses. Sample size and return period from which findings come are those of the paper.",
        [
            Case("scale", "scale by moments", 3.11879, 0.00001, Worked(References.GumbelMoments, "4 sqrt(6)/pi"), static () => Fit(Simple, GumbelMethod.Moments, 10).Scale),
            Case("location", "location by moments", 13.19979, 0.00001, Worked(References.GumbelMoments, "15 - 0.57722 x 3.11879"), static () => Fit(Simple, GumbelMethod.Moments, 10).Location),
            .. Periods(10, 20.2182, 20.3811), .. Periods(100, 27.5467, 27.5623), .. Periods(1000, 34.7420, 34.7436),
            Case("likelihood-scale", "scale by likelihood", 4.65382291, 1e-7, Evidence.ComputedElsewhere("the two equations solved with thirty digits, general mathematics package", References.GumbelLikelihood), static () => Fit(Made, GumbelMethod.MaximumLikelihood, 10).Scale),
            Case("likelihood-location", "location by likelihood", 16.68703489, 1e-7, Evidence.ComputedElsewhere("the two equations solved with thirty digits, general mathematics package", References.GumbelLikelihood), static () => Fit(Made, GumbelMethod.MaximumLikelihood, 10).Location),
            Limit(RuleIds.ExtremeSampleShare, 3, TradeUnit.Percent, "least share sampled"),
            Limit(RuleIds.ExtremeReturnPeriod, 500, TradeUnit.One, "longest return period"),
        ]);

    private static Evidence Worked(SourceReference source, string arithmetic) => Evidence.FromFormula(source, arithmetic);

    private static IEnumerable<PublishedCase> Periods(double period, double exact, double shortcut)
    {
        yield return Case(
            FormattableString.Invariant($"greatest-{period}"), FormattableString.Invariant($"greatest of {period} areas"), exact, 0.0001,
            Worked(References.ExtremesOfCorrosion, FormattableString.Invariant($"13.19979 - 3.11879 ln(-ln(1 - 1/{period}))")),
            () => Fit(Simple, GumbelMethod.Moments, period).LargestLoss);
        yield return Case(
            FormattableString.Invariant($"shortcut-{period}"), FormattableString.Invariant($"greatest of {period} areas by the shortcut"), shortcut, 0.0001,
            Worked(References.ExtremesOfCorrosion, FormattableString.Invariant($"13.19979 + 3.11879 ln {period}")),
            () => Fit(Simple, GumbelMethod.Moments, period).LargestLossByLogarithm);
    }

    private static LargestLosses Fit(double[] um, GumbelMethod method, double period) => new(
        new ValueList<Length>(um.Select(static one => Length.FromMicrometers(one))), Area.FromSquareMeters(1), Area.FromSquareMeters(period), method);

    private static PublishedCase Case(string id, string what, double expected, double tolerance, Evidence evidence, Func<Length> compute) => new()
    {
        Id = "extreme/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "um",
        Compute = () => compute().Micrometers,
    };

    private static PublishedCase Limit(string rule, double expected, TradeUnit unit, string what) => new()
    {
        Id = "extreme/" + rule,
        What = what,
        Evidence = Evidence.From(References.ExtremeSampleSize),
        Expected = expected,
        Tolerance = 0,
        Unit = unit == TradeUnit.Percent ? "%" : "1",
        Compute = () => RuleSet.Default[rule].Limit!.Value.Number,
    };
}
