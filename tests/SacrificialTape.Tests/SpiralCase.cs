namespace SacrificialTape.Tests;

/// <summary>A pipe, a strip and a true lap; long enough for a spiral between level turns.</summary>
public sealed record SpiralCase(double DiameterMm, double WidthMm, double TrueLapMm, double HeightMm, int LevelTurns)
{
    internal double CircumferenceMm => Math.PI * this.DiameterMm;

    internal double AdvanceAcrossMm => this.WidthMm - this.TrueLapMm;

    /// <summary>
    /// Where a strip is wider than the pipe is round, a flat and a steep spiral can have the same lap along the pipe; they
    /// meet where width times advance across the strip is the square of the circumference.
    /// </summary>
    internal bool OneLapAlongPipe => this.WidthMm * this.AdvanceAcrossMm < 0.9 * this.CircumferenceMm * this.CircumferenceMm;
}
