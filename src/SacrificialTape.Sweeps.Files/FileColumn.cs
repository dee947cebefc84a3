namespace SacrificialTape.Sweeps.Files;

/// <summary>A column of numbers in a file.</summary>
public sealed record FileColumn
{
    internal FileColumn(string name, string unit)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(unit);
        this.Name = name;
        this.Unit = unit;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The unit of its numbers; empty for a bare number, and where the file does not say.</summary>
    public string Unit { get; }

    /// <summary>Name and unit.</summary>
    public override string ToString() => this.Unit.Length == 0 ? this.Name : $"{this.Name} [{this.Unit}]";
}
