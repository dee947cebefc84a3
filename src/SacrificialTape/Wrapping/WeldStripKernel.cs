namespace SacrificialTape.Wrapping;

/// <summary>A strip centred on a weld, in doubles (mm).</summary>
internal static class WeldStripKernel
{
    internal static double ReachMm(double widthMm, double faceMm) => (widthMm - faceMm) / 2;
}
