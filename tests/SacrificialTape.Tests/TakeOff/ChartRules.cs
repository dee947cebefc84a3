namespace SacrificialTape.Tests.TakeOff;

/// <summary>The two rules that a spiral by hand can break, held against plain numbers.</summary>
internal static class ChartRules
{
    internal static bool Broken(this SpiralGeometry geometry) =>
        geometry.TrueLap.Millimeters < 10 - 1e-6 || geometry.Angle.Degrees > 30 + 1e-6;
}
