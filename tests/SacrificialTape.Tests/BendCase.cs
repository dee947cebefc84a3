using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>A bend, and a strip that may be laid on it.</summary>
public sealed record BendCase(double DiameterMm, double RadiusMm, double Degrees, double WidthMm, double LapMm)
{
    internal Bend Bend() => new(Mm(this.DiameterMm), Mm(this.RadiusMm), Angle.FromDegrees(this.Degrees));
}
