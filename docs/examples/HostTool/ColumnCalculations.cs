using SacrificialTape.Documents;
using SacrificialTape.Quantities;

namespace HostTool;

/// <summary>What verification cases can ask of this tool, beside the calculations of the library.</summary>
internal static class ColumnCalculations
{
    #region calculation
    internal static ValueList<CaseCalculation> All { get; } =
    [
        new CaseCalculation(
            "lighting.octagonal-column.area",
            "outside of an octagonal column",
            [
                new CalculationInput("across flats at foot", TradeUnit.Millimeter),
                new CalculationInput("across flats at head", TradeUnit.Millimeter),
                new CalculationInput("height", TradeUnit.Meter),
            ],
            TradeUnit.SquareMeter,
            static given => new Measure(
                new OctagonalColumn(
                    given["across flats at foot"].ToLength(), given["across flats at head"].ToLength(), given["height"].ToLength()).Area.SquareMeters,
                TradeUnit.SquareMeter)),
    ];
    #endregion
}
