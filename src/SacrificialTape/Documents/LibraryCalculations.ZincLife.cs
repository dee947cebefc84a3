using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <content>Rates, losses and lives of zinc.</content>
internal static partial class LibraryCalculations
{
    private static CalculationInput Rate => new("first-year rate", TradeUnit.MicrometerPerYear);

    private static CalculationInput Time => new("time", TradeUnit.Year);

    private static CalculationInput Zinc => new("zinc", TradeUnit.Micrometer);

    private static IEnumerable<CaseCalculation> ZincLife() =>
    [
        Of("dose-response.zinc", "first-year rate of zinc by ISO 9223", Climate(), TradeUnit.MicrometerPerYear, static given => Response(given, Metal.Zinc)),
        Of("dose-response.steel", "first-year rate of carbon steel by ISO 9223", Climate(), TradeUnit.MicrometerPerYear, static given => Response(given, Metal.CarbonSteel)),
        Of("loss.power-law", "loss by the power law, on its tangent after 20 years", [Rate, Number("exponent"), Time],
            TradeUnit.Micrometer, static given => Power(given).Loss(given[Rate.Name].ToCorrosionRate(), given[Time.Name].ToDuration()).Micrometers),
        Of("life.linear", "time until zinc is gone at a constant rate", [Zinc, Rate],
            TradeUnit.Year, static given => LinearLoss.Law.TimeToLoss(given[Rate.Name].ToCorrosionRate(), given[Zinc.Name].ToLength()).Duration.Years365),
        Of("life.power-law", "time until zinc is gone by the power law", [Zinc, Rate, Number("exponent")],
            TradeUnit.Year, static given => Power(given).TimeToLoss(given[Rate.Name].ToCorrosionRate(), given[Zinc.Name].ToLength()).Duration.Years365),
    ];

    private static CalculationInput[] Climate() =>
    [
        Given("temperature", TradeUnit.DegreeCelsius), Given("relative humidity", TradeUnit.Percent),
        Given("sulfur dioxide", TradeUnit.MilligramPerSquareMeterDay), Given("chloride", TradeUnit.MilligramPerSquareMeterDay),
    ];

    private static PowerLawLoss Power(CalculationArguments given) => new(TimeExponent.FromValue(given.In(TradeUnit.One, "exponent")));

    private static double Response(CalculationArguments given, Metal metal) => new DoseResponse(metal, new AnnualAtmosphere(
        given["temperature"].ToTemperature(),
        RelativeHumidity.FromPercent(given.In(TradeUnit.Percent, "relative humidity")),
        DepositionRate.FromMilligramsPerSquareMeterDay(given.In(TradeUnit.MilligramPerSquareMeterDay, "sulfur dioxide")),
        DepositionRate.FromMilligramsPerSquareMeterDay(given.In(TradeUnit.MilligramPerSquareMeterDay, "chloride")))).Rate.MicrometersPerYear;
}
