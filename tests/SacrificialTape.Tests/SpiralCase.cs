namespace SacrificialTape.Tests;

/// <summary>A pipe, a strip and a true lap; long enough for a spiral between level turns.</summary>
public sealed record SpiralCase(double DiameterMm, double WidthMm, double TrueLapMm, double HeightMm, int LevelTurns)
{
    internal double CircumferenceMm => Math.PI * this.DiameterMm;
}
