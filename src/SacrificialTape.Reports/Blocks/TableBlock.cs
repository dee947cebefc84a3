namespace SacrificialTape.Reports.Blocks;

/// <summary>A table with a caption. Columns of numbers stand to the right; the first column names the row.</summary>
internal sealed record TableBlock(string Caption, IReadOnlyList<TableColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : PackBlock;
