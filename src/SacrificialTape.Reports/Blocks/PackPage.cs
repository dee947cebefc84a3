namespace SacrificialTape.Reports.Blocks;

/// <summary>A page: its title, the language of its numbers, and what stands on it from top to bottom.</summary>
internal sealed record PackPage(string Title, IReadOnlyList<PackBlock> Blocks);
