namespace SacrificialTape.Reports.Blocks;

/// <summary>Something that stands on a page.</summary>
internal abstract record PackBlock;
