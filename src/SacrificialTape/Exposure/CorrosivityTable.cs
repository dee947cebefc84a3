namespace SacrificialTape.Exposure;

/// <summary>
/// Upper bounds of the first-year rates by category, C1 to CX. Each column is rounded on its own in the standard. C1 to
/// C5 are as quoted from ISO 9223:2012 Table 2; of CX only the steel column in um/a is, the others are recalled, check
/// before use. The lower bound of a category is the upper bound of the one before, excluded; that of C1 is zero.
/// </summary>
internal static class CorrosivityTable
{
    /// <summary>Carbon steel, kg/m3 (ASTM G1, recalled).</summary>
    internal const double SteelKilogramsPerCubicMeter = 7860;

    internal static ReadOnlySpan<double> UpperMicrometersPerYear(Metal metal) => metal switch
    {
        Metal.Zinc => [0.1, 0.7, 2.1, 4.2, 8.4, 25],
        Metal.CarbonSteel => [1.3, 25, 50, 80, 200, 700],
        _ => throw Unknown(metal),
    };

    internal static ReadOnlySpan<double> UpperGramsPerSquareMeterYear(Metal metal) => metal switch
    {
        Metal.Zinc => [0.7, 5, 15, 30, 60, 180],
        Metal.CarbonSteel => [10, 200, 400, 650, 1500, 5500],
        _ => throw Unknown(metal),
    };

    private static ArgumentOutOfRangeException Unknown(Metal metal) => new(nameof(metal), metal, "Not a metal known here.");
}
