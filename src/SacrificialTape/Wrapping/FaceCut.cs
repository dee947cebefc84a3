using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>What parallel strips on a face come to.</summary>
/// <param name="SideBySide">Strips side by side in one pass, interrupted or not.</param>
/// <param name="LapMm">The lap between neighbours, made equal; zero for a single strip.</param>
/// <param name="LayersEverywhere">Layers everywhere of all passes.</param>
/// <param name="Strips">The pieces to cut, the longest first, one entry for each length.</param>
internal sealed record FaceCut(int SideBySide, double LapMm, int LayersEverywhere, ValueList<Strip> Strips);
