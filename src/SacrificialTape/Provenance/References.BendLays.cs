namespace SacrificialTape.Provenance;

/// <content>Curves on curved surfaces.</content>
public static partial class References
{
    /// <summary>Sideways curvature of a curve on a surface.</summary>
    internal static SourceReference GeodesicCurvature { get; } = new(
        "geodesic-curvature-liouville",
        "Any text on differential geometry",
        "Liouville's formula for geodesic curvature in orthogonal coordinates",
        "k_g = d(alpha)/ds + k_1 cos(alpha) + k_2 sin(alpha), alpha the angle to the first coordinate line, k_1 and k_2 the geodesic curvatures of the coordinate lines",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> BendLays => [GeodesicCurvature];
}
