using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>The numbers that a case gives to its calculation, by name; all are there and of the right kind.</summary>
public sealed class CalculationArguments
{
    private readonly Dictionary<string, Measure> byName;

    internal CalculationArguments(IEnumerable<CaseValue> values) =>
        this.byName = values.ToDictionary(static value => value.Name, static value => value.Value, StringComparer.Ordinal);

    /// <summary>The value of an input.</summary>
    /// <param name="name">One of the calculation's inputs.</param>
    /// <exception cref="KeyNotFoundException">The calculation has no such input.</exception>
    public Measure this[string name] => this.byName.TryGetValue(name, out Measure value)
        ? value
        : throw new KeyNotFoundException($"The calculation has no input '{name}'.");

    internal double In(TradeUnit unit, string name) => this[name].In(unit);
}
