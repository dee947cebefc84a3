namespace SacrificialTape.Sweeps.Sampling;

/// <summary>One input of a sweep: its name, its unit and what values it takes.</summary>
public sealed record SweepInput
{
    /// <summary>Describes an input.</summary>
    /// <param name="name">A name of its own in the sweep, for instance a column heading.</param>
    /// <param name="unit">The unit of its values, empty for a bare number; the model must expect the same.</param>
    /// <param name="values">What values it takes.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public SweepInput(string name, string unit, InputValues values)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(values);
        this.Name = name;
        this.Unit = unit;
        this.Values = values;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The unit of its values.</summary>
    public string Unit { get; }

    /// <summary>What values it takes.</summary>
    public InputValues Values { get; }

    /// <summary>Name, values and unit as invariant text.</summary>
    public override string ToString() => this.Unit.Length == 0 ? $"{this.Name}: {this.Values}" : $"{this.Name}: {this.Values} {this.Unit}";
}
