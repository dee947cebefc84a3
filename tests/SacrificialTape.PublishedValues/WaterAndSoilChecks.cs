using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Printed rates of zinc in water and soil.</summary>
internal static class WaterAndSoilChecks
{
    internal static CheckGroup Group => new(
        "Zinc in water and in soil",
        "Rates of hot-dip zinc as printed; none is for foil on adhesive. Sources disagree on sea water: 15 to 25 um/a (read) and, for temperate seas, 10 to 20 (recalled). The design loss in reinforced soil is printed in ounces per square foot; the recalled metric figures are rounded from it.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((WaterKind water, double low, double high) in new[]
        {
            (WaterKind.Sea, 15.0, 25.0), (WaterKind.HardFresh, 2.5, 5), (WaterKind.SoftFresh, 5, 10), (WaterKind.Distilled, 50, 200), (WaterKind.TemperateSea, 10, 20),
        })
        {
            Evidence evidence = Evidence.From(water == WaterKind.TemperateSea ? References.ZincInTemperateSea : References.ZincInWater);
            RateRange range = FirstYearRate.OfZincIn(water).Range;
            yield return Case($"{water}-low", $"zinc in water, {water}, least", low, 0, "um/a", evidence, () => range.Lowest.MicrometersPerYear);
            yield return Case($"{water}-high", $"zinc in water, {water}, most", high, 0, "um/a", evidence, () => range.Highest.MicrometersPerYear);
        }

        PiecewiseLoss soil = PiecewiseLoss.ZincInReinforcedSoil;
        double first = soil.FirstYear.MicrometersPerYear;
        Evidence printed = Evidence.FirstPrinciples("oz/ft2 x 305.15 g/m2 / 7.14 g/cm3", References.ZincInReinforcedSoil);
        Evidence metric = Evidence.From(References.ReinforcedSoilMetric);
        yield return Case("soil-first", "0.35 oz/ft2 a year", 14.958, 5e-4, "um/a", printed, () => first);
        yield return Case("soil-later", "0.09 oz/ft2 a year", 3.846, 5e-4, "um/a", printed, () => soil.Afterwards.MicrometersPerYear);
        yield return Case("soil-first-metric", "first two years in metric figures", 15, 0.5, "um/a", metric, () => first);
        yield return Case("soil-later-metric", "later years in metric figures", 4, 0.5, "um/a", metric, () => soil.Afterwards.MicrometersPerYear);
        yield return Case("soil-steel", "carbon steel after the zinc", 12, 0, "um/a", metric, static () =>
            FirstYearRate.InReinforcedSoil(Metal.CarbonSteel).Range.Highest.MicrometersPerYear);
        yield return Case("soil-86-um", "life of 86 um of zinc by the metric figures", 16, 0.5, "a",
            Evidence.FirstPrinciples("2 + (86 - 2 x 15) / 4 = 16", References.ReinforcedSoilMetric),
            static () => new PiecewiseLoss(
                "metric",
                [new RatePeriod(CorrosionRate.FromMicrometersPerYear(15), Duration.FromYears365(2))],
                CorrosionRate.FromMicrometersPerYear(4),
                Basis.OwnExperience("the recalled figures")).TimeToLoss(CorrosionRate.FromMicrometersPerYear(15), Length.FromMicrometers(86)).Duration.Years365);
        yield return Case("soil-measured", "0.032 oz/ft2 a year, as measured in walls 19 to 20 years old", 1.368, 5e-4, "um/a", printed, static () =>
            MassLossRate.FromOuncesPerSquareFootYear(0.032).ToCorrosionRate(Zinc.Density).MicrometersPerYear);
        yield return Case("soil-design-over-measured", "design loss of 20 years is above the measured one", 1, 0, "1",
            Evidence.FirstPrinciples("(2 x 0.35 + 18 x 0.09) oz/ft2 = 2.32 against 20 x 0.032 = 0.64", References.ZincInReinforcedSoil),
            () => soil.Loss(soil.FirstYear, Duration.FromYears365(20)).Micrometers > 20 * 1.368 ? 1 : 0);
        yield return Case("soil-design-20", "design loss of 20 years", 99.15, 0.005, "um",
            Evidence.FirstPrinciples("2.32 oz/ft2 x 305.15 / 7.14", References.ZincInReinforcedSoil),
            () => soil.Loss(soil.FirstYear, Duration.FromYears365(20)).Micrometers);
        yield return Case("soil-power", "x = K t^n, K = 25 um, n = 0.5, 9 years", 75, 1e-9, "um",
            Evidence.FromFormula(References.SoilPowerLaw, "25 x sqrt(9); the constants are made up"),
            static () => Ask.LossUm(PowerLawLoss.InSoil(TimeExponent.FromValue(0.5)), 25, 9));
        Evidence constants = Evidence.From(References.SoilConstants, "weakly recalled");
        yield return Case("soil-power-zinc-k", "K of zinc in soil", 25, 0, "um", constants, static () => FirstYearRate.InSoilByPowerLaw(Metal.Zinc).Range.Highest.MicrometersPerYear);
        yield return Case("soil-power-steel-k", "K of carbon steel in soil", 45, 0, "um", constants, static () => FirstYearRate.InSoilByPowerLaw(Metal.CarbonSteel).Range.Highest.MicrometersPerYear);
        yield return Case("soil-power-zinc-n", "n of zinc in soil", 0.65, 0, "1", constants, static () => PowerLawLoss.ZincInSoil.Exponent.Value);
        yield return Case("soil-power-steel-n", "n of carbon steel in soil", 0.80, 0, "1", constants, static () => PowerLawLoss.SteelInSoil.Exponent.Value);
        yield return Case("soil-power-zinc-10", "zinc in soil, 10 years", 111.67, 0.005, "um",
            Evidence.FromFormula(References.SoilPowerLaw, "25 x 10^0.65; the constants are weakly recalled"), static () => Ask.LossUm(PowerLawLoss.ZincInSoil, 25, 10));
        yield return Case("soil-power-over-measured", "the power law over 20 years is above what was measured in walls", 1, 0, "1",
            Evidence.FirstPrinciples("25 x 20^0.65 = 175 um against 20 x 1.37 = 27 um: natural soil against selected fill", References.ZincInReinforcedSoil),
            static () => Ask.LossUm(PowerLawLoss.ZincInSoil, 25, 20) > 20 * 1.368 ? 1 : 0);
    }

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "water-soil/" + id.ToLowerInvariant(),
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
