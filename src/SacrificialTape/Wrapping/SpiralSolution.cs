namespace SacrificialTape.Wrapping;

/// <summary>A spiral solved: everything else about it follows from these four lengths.</summary>
/// <param name="CircumferenceMm">C, round the pipe.</param>
/// <param name="WidthMm">w, of the strip.</param>
/// <param name="AdvanceMm">p, along the axis per turn.</param>
/// <param name="TrueAdvanceMm">e, across the strip per turn.</param>
internal readonly record struct SpiralSolution(
    double CircumferenceMm, double WidthMm, double AdvanceMm, double TrueAdvanceMm)
{
    /// <summary>sin(theta) = e / C.</summary>
    internal double Sine => this.TrueAdvanceMm / this.CircumferenceMm;

    /// <summary>cos(theta) = e / p.</summary>
    internal double Cosine => this.TrueAdvanceMm / this.AdvanceMm;

    /// <summary>tan(theta) = p / C.</summary>
    internal double Tangent => this.AdvanceMm / this.CircumferenceMm;

    internal double AngleDegrees => Math.Atan(this.Tangent) * (180 / Math.PI);

    internal double TrueLapMm => this.WidthMm - this.TrueAdvanceMm;

    /// <summary>w / cos(theta) - p.</summary>
    internal double LapAlongPipeMm => (this.WidthMm / this.Cosine) - this.AdvanceMm;

    internal double LayersOnAverage => this.WidthMm / this.TrueAdvanceMm;
}
