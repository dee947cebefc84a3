using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>How the calculations are called that cases can name.</summary>
internal static partial class LibraryCalculations
{
    /// <summary>All of them.</summary>
    internal static ValueList<CaseCalculation> All { get; } = [.. Geometry(), .. ZincLife(), .. Current()];

    private static CaseCalculation Of(string id, string title, CalculationInput[] inputs, TradeUnit result, Func<CalculationArguments, double> compute) =>
        new(id, title, inputs, result, arguments => new Measure(compute(arguments), result));

    private static CalculationInput Mm(string name) => new(name, TradeUnit.Millimeter);

    private static CalculationInput Number(string name) => new(name, TradeUnit.One);

    private static CalculationInput Given(string name, TradeUnit unit) => new(name, unit);
}
