using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports.Pictures;

/// <summary>The pieces in which a placed strip shows on the unrolled surface: cut at the line that was slit, and at the ends of what is drawn.</summary>
internal static class StripOutline
{
    /// <summary>The corners of each piece, in millimetres along and around.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="girthMm">Once round, or the height of a panel.</param>
    /// <param name="closed">Whether the surface closes on itself.</param>
    /// <param name="fromMm">Where the drawing begins along.</param>
    /// <param name="toMm">Where it ends.</param>
    internal static IEnumerable<IReadOnlyList<(double Along, double Around)>> Of(PlacedStrip strip, double girthMm, bool closed, double fromMm, double toMm)
    {
        double begin = strip.FromAround.Millimeters;
        double end = begin + strip.ExtentAround.Millimeters;
        if (!closed)
        {
            begin = Math.Max(begin, 0);
            end = Math.Min(end, girthMm);
        }

        double lean = strip.Lean.Millimeters / strip.ExtentAround.Millimeters;
        double At(double around) => strip.FromAlong.Millimeters + (lean * (around - strip.FromAround.Millimeters));
        double wide = strip.ExtentAlong.Millimeters;
        int first = (int)Math.Floor(begin / girthMm);
        int last = (int)Math.Ceiling(end / girthMm) - 1;
        if (lean > 0)
        {
            // Of a long spiral only the turns that the drawing shows.
            first = Math.Max(first, (int)Math.Floor((((fromMm - wide - strip.FromAlong.Millimeters) / lean) + strip.FromAround.Millimeters) / girthMm));
            last = Math.Min(last, (int)Math.Ceiling((((toMm - strip.FromAlong.Millimeters) / lean) + strip.FromAround.Millimeters) / girthMm));
        }

        for (int turn = first; turn <= last; turn++)
        {
            double low = Math.Max(begin, turn * girthMm);
            double high = Math.Min(end, (turn + 1) * girthMm);
            if (high <= low)
            {
                continue;
            }

            double shift = turn * girthMm;
            (double, double)[] corners = [(At(low), low - shift), (At(low) + wide, low - shift), (At(high) + wide, high - shift), (At(high), high - shift)];
            IReadOnlyList<(double, double)> shown = Outline.Within(corners, fromMm, toMm);
            if (shown.Count > 2)
            {
                yield return shown;
            }
        }
    }
}
