using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>A mitred bend, a strip, and a reach past its welds that its pieces have room for.</summary>
public sealed record MitredCase(double DiameterMm, double RadiusMm, double Degrees, int Joints, double WidthMm, double LapMm, double WeldLapMm)
{
    internal MitredBend Bend() => new(Mm(this.DiameterMm), Mm(this.RadiusMm), Angle.FromDegrees(this.Degrees), this.Joints);

    internal MitredBendLay Lay(LayChoices choices) => new(this.Bend(), Stock(this.WidthMm), Mm(this.LapMm), Mm(this.WeldLapMm), choices);
}
