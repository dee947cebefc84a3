namespace SacrificialTape.Reports.Blocks;

/// <summary>What may hurt someone, or stops the work.</summary>
internal sealed record CautionBlock(string Title, IReadOnlyList<string> Texts) : PackBlock;
