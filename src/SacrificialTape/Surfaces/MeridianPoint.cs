namespace SacrificialTape.Surfaces;

/// <summary>A spot on a meridian.</summary>
/// <param name="RadiusMm">Distance from the axis.</param>
/// <param name="Slope">How much that distance shrinks for each unit along the meridian, toward the crown: 0 on a cylinder, 1 on a disc.</param>
/// <param name="Curvature">Gaussian curvature of the surface there, per square millimetre.</param>
internal readonly record struct MeridianPoint(double RadiusMm, double Slope, double Curvature);
