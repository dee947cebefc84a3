using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>What every lay on a surface of revolution comes to.</summary>
/// <param name="SideBySide">Strips or rings in one pass, without the disc on the crown.</param>
/// <param name="LapMm">Lap between neighbours, made equal; zero for a single ring.</param>
/// <param name="LeastLapMm">The least lap anywhere, that of the disc included; zero when nothing laps.</param>
/// <param name="LayersEverywhere">Layers everywhere of all passes.</param>
/// <param name="Pucker">Most pucker.</param>
/// <param name="Strips">The strips to cut.</param>
internal readonly record struct RevolvedCut(
    int SideBySide, double LapMm, double LeastLapMm, int LayersEverywhere, double Pucker, ValueList<Strip> Strips);
