namespace SacrificialTape.Sweeps.Files;

/// <summary>A column of numbers in a file.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Unit">The unit of its numbers; empty for a bare number, and where the file does not say.</param>
public sealed record FileColumn(string Name, string Unit)
{
    /// <summary>Name and unit.</summary>
    public override string ToString() => this.Unit.Length == 0 ? this.Name : $"{this.Name} [{this.Unit}]";
}
