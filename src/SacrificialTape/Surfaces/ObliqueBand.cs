namespace SacrificialTape.Surfaces;

/// <summary>What a straight strip along a generator meets of an eccentric reducer.</summary>
/// <param name="OverMm">By how much the rims within the strip's width reach beyond the generator, both ends together.</param>
/// <param name="AreaMm2">Area of the surface under the strip, from rim to rim.</param>
internal readonly record struct ObliqueBand(double OverMm, double AreaMm2);
