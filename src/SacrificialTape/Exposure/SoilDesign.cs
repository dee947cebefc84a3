using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>
/// Design loss in the fill of reinforced-soil walls. For zinc mass per area is printed, so mass is what stands here:
/// 0.35 oz/ft2 a year for two years, 0.09 after. For steel once its zinc is gone, 12 um/a (recalled).
/// </summary>
internal static class SoilDesign
{
    internal const double FirstYears = 2;

    internal static CorrosionRate ZincAtFirst { get; } = Of(0.35);

    internal static CorrosionRate ZincLater { get; } = Of(0.09);

    internal static CorrosionRate Steel { get; } = CorrosionRate.FromMicrometersPerYear(12);

    /// <summary>K of the power law, weakly recalled: galvanized.</summary>
    internal static CorrosionRate PowerZinc { get; } = CorrosionRate.FromMicrometersPerYear(25);

    /// <summary>K of the power law, weakly recalled: plain steel.</summary>
    internal static CorrosionRate PowerSteel { get; } = CorrosionRate.FromMicrometersPerYear(45);

    private static CorrosionRate Of(double ouncesPerSquareFoot) =>
        MassLossRate.FromOuncesPerSquareFootYear(ouncesPerSquareFoot).ToCorrosionRate(Tapes.Zinc.Density);
}
