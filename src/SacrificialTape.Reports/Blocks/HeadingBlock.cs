namespace SacrificialTape.Reports.Blocks;

/// <summary>A heading, level 2 or 3 (the title is the only one of level 1).</summary>
internal sealed record HeadingBlock(int Level, string Text, bool NewSheet = false) : PackBlock;
