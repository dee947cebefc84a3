using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>What the strips of any lay, also of a host's own, come to.</summary>
public static class LayStrips
{
    /// <summary>Length of all strips of a lay, laps and trim among it: what is cut, before spare and offcuts of the rolls.</summary>
    /// <param name="lay">The lay.</param>
    public static Length StripLength(this ILay lay)
    {
        ArgumentNullException.ThrowIfNull(lay);
        return Length.FromMicrometers(lay.Strips.TotalUm());
    }

    /// <summary>Whole micrometres, exact up to nine million kilometres.</summary>
    internal static double TotalUm(this ValueList<Strip> strips)
    {
        double sum = 0;
        foreach (Strip strip in strips.AsSpan())
        {
            sum += (double)strip.LengthUm * strip.Count;
        }

        return sum;
    }
}
