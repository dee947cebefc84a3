using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>A bend that is long enough for a spiral of this strip, which does not fold there.</summary>
public sealed record BendSpiralCase(double DiameterMm, double RadiusMm, double Degrees, double WidthMm, double LapMm)
{
    internal Bend Bend() => new(Mm(this.DiameterMm), Mm(this.RadiusMm), Angle.FromDegrees(this.Degrees));

    internal BendSpiralLay Lay(LayChoices choices) => new(this.Bend(), Stock(this.WidthMm), Mm(this.LapMm), choices);
}
