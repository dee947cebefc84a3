namespace SacrificialTape.Reports.Blocks;

/// <summary>A sentence or some.</summary>
internal sealed record ParagraphBlock(string Text) : PackBlock;
