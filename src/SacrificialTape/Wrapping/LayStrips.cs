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
        decimal micrometers = 0;
        foreach (Strip strip in lay.Strips)
        {
            micrometers += (decimal)strip.LengthUm * strip.Count;
        }

        return Length.FromMicrometers((double)micrometers);
    }
}
