using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>One letter of a formula: what it is called in the formula, what it means, and its unit there.</summary>
public sealed record Symbol
{
    /// <summary>Describes a symbol.</summary>
    /// <param name="name">As written in the expression, for instance <c>theta</c>.</param>
    /// <param name="meaning">What it stands for.</param>
    /// <param name="unit">The unit its number is in.</param>
    /// <exception cref="ArgumentException">Name or meaning is empty.</exception>
    public Symbol(string name, string meaning, TradeUnit unit)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentException.ThrowIfNullOrWhiteSpace(meaning);
        this.Name = name;
        this.Meaning = meaning;
        this.Unit = unit;
    }

    /// <summary>As written in the expression.</summary>
    public string Name { get; }

    /// <summary>What it stands for.</summary>
    public string Meaning { get; }

    /// <summary>The unit its number is in.</summary>
    public TradeUnit Unit { get; }
}
