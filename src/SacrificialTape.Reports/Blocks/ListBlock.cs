namespace SacrificialTape.Reports.Blocks;

/// <summary>Steps in their order, or points.</summary>
internal sealed record ListBlock(bool Numbered, IReadOnlyList<ListItem> Items) : PackBlock;
