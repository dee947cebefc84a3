namespace SacrificialTape.Galvanic;

/// <summary>
/// Design current demand of bare steel by depth and climate, A/m2 at the start, on the mean and at the end (DNV-RP-B401,
/// 2005 and 2010, Tables 10-1 and 10-2; recalled, check before use).
/// </summary>
internal static class MarineDemandTable
{
    internal static readonly double[] DeepestMetres = [30, 100, 300, double.PositiveInfinity];

    internal static readonly (double Initial, double Mean, double Final)[][] Amperes =
    [
        [(0.150, 0.070, 0.100), (0.170, 0.080, 0.110), (0.200, 0.100, 0.130), (0.250, 0.120, 0.170)],
        [(0.120, 0.060, 0.080), (0.140, 0.070, 0.090), (0.170, 0.080, 0.110), (0.200, 0.100, 0.130)],
        [(0.140, 0.070, 0.090), (0.160, 0.080, 0.110), (0.190, 0.090, 0.140), (0.220, 0.110, 0.170)],
        [(0.180, 0.090, 0.130), (0.200, 0.100, 0.150), (0.220, 0.110, 0.170), (0.220, 0.110, 0.170)],
    ];

    internal static readonly string[] Depths = ["to 30 m", "30 to 100 m", "100 to 300 m", "below 300 m"];
}
