using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>One number that a verification case gives to its calculation.</summary>
public sealed record CaseValue
{
    /// <summary>States a value.</summary>
    /// <param name="name">The name of the calculation's input.</param>
    /// <param name="value">The value with its unit.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public CaseValue(string name, Measure value)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        _ = value.Unit;
        this.Name = name;
        this.Value = value;
    }

    /// <summary>The name of the calculation's input.</summary>
    public string Name { get; }

    /// <summary>The value with its unit.</summary>
    public Measure Value { get; }

    /// <summary>Name and value.</summary>
    public override string ToString() => $"{this.Name} {MeasureText.Exact(this.Value)}";
}
