using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>Sums over the strips of a lay.</summary>
internal static class StripSums
{
    /// <summary>Tape that stays on the surface over the area of the surface.</summary>
    internal static AreaRatio OnAverage(this ValueList<Strip> strips, Surface surface)
    {
        double laidM2 = 0;
        foreach (Strip strip in strips.AsSpan())
        {
            laidM2 += (strip.LengthUm - strip.TrimUm) * (double)strip.Count * strip.Stock.WidthMm / 1e9;
        }

        return AreaRatio.FromRatio(laidM2 / UnitConversions.SquareMeters(surface.Area));
    }
}
