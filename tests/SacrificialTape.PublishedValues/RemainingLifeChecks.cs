using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Rates and remaining life of the codes for pressure equipment.</summary>
internal static class RemainingLifeChecks
{
    internal static CheckGroup Group => new(
        "Rates and remaining life",
        "Examples of study guides for inspectors of pressure equipment, which count as tape does: thickness lost over time. The third is worked out here by hand from the printed formulas.",
        [
            Case("inch", "0.375 to 0.250 in at 0.020 in a year", 6.25, 0.005, "a", Evidence.From(References.ThicknessRates), static () =>
                new RemainingLifeByRate(
                    Length.FromInches(0.5), new ThicknessPoint(Duration.FromYears365(6.25), Length.FromInches(0.375)), Length.FromInches(0.25)).Remaining!.Value.Years365),
            Case("long-term", "7.8 to 3.24 mm in 15 years", 0.304, 0.0005, "mm/a", Evidence.From(References.ThicknessRates), static () =>
                Life(7.8, 15, 3.24, 1, RateChoice.LongTerm).Rate!.Value.MicrometersPerYear / 1000),
            Case("example-long", "12.0 mm, 10.2 mm at 14 years: long-term rate", 0.12857, 0.000005, "mm/a", Worked("1.8/14"), static () =>
                Life(12, 14, 10.2, 7, RateChoice.LongTerm, true).Rate!.Value.MicrometersPerYear / 1000),
            Case("example-short", "10.8 mm at 10 years, 10.2 at 14: short-term rate", 0.150, 0.0000005, "mm/a", Worked("0.6/4"), static () =>
                Life(12, 14, 10.2, 7, RateChoice.ShortTerm, true).Rate!.Value.MicrometersPerYear / 1000),
            Case("example-life", "to 7.0 mm at the larger rate", 21.333, 0.0005, "a", Worked("3.2/0.150"), static () =>
                Life(12, 14, 10.2, 7, RateChoice.Larger, true).Remaining!.Value.Years365),
        ]);

    private static Evidence Worked(string arithmetic) => Evidence.FromFormula(References.ThicknessRates, arithmetic);

    private static RemainingLifeByRate Life(double suppliedMm, double years, double nowMm, double requiredMm, RateChoice choice, bool before = false) => new(
        Length.FromMillimeters(suppliedMm),
        new ThicknessPoint(Duration.FromYears365(years), Length.FromMillimeters(nowMm)),
        Length.FromMillimeters(requiredMm),
        before ? new ThicknessPoint(Duration.FromYears365(10), Length.FromMillimeters(10.8)) : null,
        choice);

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
    {
        Id = "remaining-life/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
