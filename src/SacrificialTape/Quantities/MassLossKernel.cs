namespace SacrificialTape.Quantities;

/// <summary>Thickness and mass per area of one metal are the same thing through its density.</summary>
internal static class MassLossKernel
{
    /// <summary>1 um of a metal of 1 kg/m3 weighs 0.001 g on each square metre: m = rho d / 1000.</summary>
    internal static double GramsPerSquareMeterYear(double micrometersPerYear, double kilogramsPerCubicMeter) =>
        micrometersPerYear * kilogramsPerCubicMeter / 1000;

    /// <summary>The inverse: d = 1000 m / rho.</summary>
    internal static double MicrometersPerYear(double gramsPerSquareMeterYear, double kilogramsPerCubicMeter) =>
        gramsPerSquareMeterYear * 1000 / kilogramsPerCubicMeter;
}
