using SacrificialTape.Provenance;

namespace SacrificialTape.Reports.Blocks;

/// <summary>Workings, folded until they are wanted.</summary>
internal sealed record WorkingsBlock(string Title, IReadOnlyList<Workings> Workings) : PackBlock;
