using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>Whether a surface can stand in for another to the last bit. Equality of surfaces looks at 15 digits only.</summary>
internal static class SurfaceBits
{
    internal static bool Same(Surface one, Surface other) => ReferenceEquals(one, other)
        || (one is StraightPipe pipe && other is StraightPipe known && pipe.DiameterMm.Equals(known.DiameterMm) && pipe.LengthMm.Equals(known.LengthMm));
}
