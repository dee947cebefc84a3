namespace SacrificialTape.Reports.Blocks;

/// <summary>A column: its name, and whether it holds numbers.</summary>
internal sealed record TableColumn(string Name, bool Number = false)
{
    internal static TableColumn Of(string name) => new(name, Number: true);
}
