using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Thickness and mass of zinc sheet.</summary>
internal static class ZincSheetConversionChecks
{
    internal static CheckGroup Group => new(
        "ASTM A653 and GalvInfoNote 1.1: thickness and mass of zinc",
        "7.14 g/m2 of zinc is 1.00 um and 1 oz/ft2 is 1.68 mil, as quoted from ASTM A653; an ounce per square foot in grams, and that G90 and Z275 are one coating, from GalvInfoNote 1.1. Masses of foil are arithmetic: a square metre one micrometre thick is a cubic centimetre.",
        [.. Cases()]);

    private static readonly int[] FoilUm = [10, 20, 25, 35, 45, 50, 55, 70, 80, 85, 100, 150];

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence quoted = Evidence.From(References.ZincSheetConversion);
        yield return Case("one-um", "thickness of 7.14 g/m2", 1.00, 0.005, "um", quoted, static () => Um(7.14));
        yield return Case("one-um-back", "mass of 1 um", 7.14, 0.005, "g/m2", quoted, static () =>
            CorrosionRate.FromMicrometersPerYear(1).ToMassLoss(Zinc.Density).GramsPerSquareMeterYear);
        yield return Case("ounce", "thickness of 1 oz/ft2, which is 305.15 g/m2", 1.68, 0.005, "mil", quoted, static () => Um(305.15) / 25.4);
        yield return Case(
            "ounce-back", "mass of 1.68 mil", 305.15, 0.005 * 25.4 * 7.14, "g/m2",
            Evidence.From(Sources.OuncesPerSquareFoot, "tolerance: half a digit of 1.68 mil"),
            static () => CorrosionRate.FromMilsPerYear(1.68).ToMassLoss(Zinc.Density).GramsPerSquareMeterYear);
        yield return Case(
            "z275", "thickness on each face of Z275 (G90)", 19.3, 0.05, "um",
            Evidence.FirstPrinciples("275/2 = 137.5 g/m2 a face; 19.3 x 7.14 = 137.8, 19.2 x 7.14 = 137.1", Sources.OuncesPerSquareFoot),
            static () => Um(275.0 / 2));
        yield return Case(
            "fifty-metres", "zinc in 50 m of strip 100 mm wide, foil 0.1 mm", 3.570, 5e-10, "kg",
            Evidence.FirstPrinciples("0.01 x 10 x 5000 cm = 500 cm3; 500 x 7.14 g = 3570 g", References.ZincSheetConversion),
            static () => Ask.PlainStock(100, 100).ZincMass(Length.FromMeters(50)).Kilograms);
        foreach (int um in FoilUm)
        {
            yield return Case(
                FormattableString.Invariant($"foil-{um}-um"), FormattableString.Invariant($"1 m2 of foil {um} um"), (double)(um * 7.14m), 1e-9, "g",
                Evidence.FirstPrinciples(FormattableString.Invariant($"{um} cm3 of 7.14 g"), References.ZincSheetConversion),
                () => Ask.PlainStock(1000, um).ZincMass(Length.FromMeters(1)).Kilograms * 1000);
        }
    }

    private static double Um(double gramsPerSquareMeter) => MassLossRate
        .FromGramsPerSquareMeterYear(gramsPerSquareMeter).ToCorrosionRate(Zinc.Density).MicrometersPerYear;

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "zinc-sheet/" + id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
