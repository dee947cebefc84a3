namespace SacrificialTape.Tests;

/// <summary>Pieces to cut from rolls of one stock.</summary>
public sealed record CutCase(double RollM, double Contingency, double SpliceMm, double ShortestMm, IReadOnlyList<PieceCase> Pieces);
