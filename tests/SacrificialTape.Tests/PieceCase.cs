namespace SacrificialTape.Tests;

/// <summary>A number of like pieces, in whole micrometres.</summary>
public sealed record PieceCase(long LengthUm, int Count, bool Whole, long CoverUm, long TrimUm);
