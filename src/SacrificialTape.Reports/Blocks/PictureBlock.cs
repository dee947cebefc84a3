namespace SacrificialTape.Reports.Blocks;

/// <summary>A picture with its text alternative.</summary>
internal sealed record PictureBlock(Picture Picture) : PackBlock;
