using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>A strip that a line uses and that has no price among those given.</summary>
internal sealed record UnpricedStock(string Tag, StripStock Stock);
