using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>One number that a calculation is given.</summary>
public sealed record CalculationInput
{
    /// <summary>Describes an input.</summary>
    /// <param name="name">The name that cases use, for instance <c>outside diameter</c>.</param>
    /// <param name="unit">A unit of the kind of quantity that is wanted.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public CalculationInput(string name, TradeUnit unit)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        _ = TradeUnits.Symbol(unit);
        this.Name = name;
        this.Unit = unit;
    }

    /// <summary>The name that cases use.</summary>
    public string Name { get; }

    /// <summary>A unit of the kind of quantity that is wanted; a case may state another of the same kind.</summary>
    public TradeUnit Unit { get; }

    /// <summary>Name and unit.</summary>
    public override string ToString() => this.Unit == TradeUnit.One ? this.Name : $"{this.Name} ({TradeUnits.Symbol(this.Unit)})";
}
