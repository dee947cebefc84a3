namespace SacrificialTape.Wrapping;

/// <summary>What a lay of parallel strips comes to.</summary>
/// <param name="SideBySide">Strips side by side in one pass.</param>
/// <param name="LapMm">The lap between neighbours, made equal; zero for a single strip.</param>
/// <param name="LayersEverywhere">Layers everywhere of all passes.</param>
/// <param name="Strip">The strips to cut.</param>
internal readonly record struct ParallelCut(int SideBySide, double LapMm, int LayersEverywhere, Strip Strip);
