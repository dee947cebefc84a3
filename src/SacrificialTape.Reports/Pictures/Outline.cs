namespace SacrificialTape.Reports.Pictures;

/// <summary>Cuts the outline of a convex shape at the edges of what is drawn.</summary>
internal static class Outline
{
    /// <summary>What lies between two places along.</summary>
    internal static IReadOnlyList<(double Along, double Around)> Within(IReadOnlyList<(double Along, double Around)> corners, double from, double to) =>
        Cut(Cut(corners, static corner => corner.Along, from, 1), static corner => corner.Along, to, -1);

    /// <summary>What lies between two places around.</summary>
    internal static IReadOnlyList<(double Along, double Around)> WithinAround(IReadOnlyList<(double Along, double Around)> corners, double from, double to) =>
        Cut(Cut(corners, static corner => corner.Around, from, 1), static corner => corner.Around, to, -1);

    // One side at a time: corners on the right side stay, edges that cross it are cut there.
    private static List<(double Along, double Around)> Cut(
        IReadOnlyList<(double Along, double Around)> corners, Func<(double Along, double Around), double> place, double at, int sign)
    {
        var kept = new List<(double, double)>();
        for (int i = 0; i < corners.Count; i++)
        {
            (double Along, double Around) one = corners[i];
            (double Along, double Around) next = corners[(i + 1) % corners.Count];
            double inside = sign * (place(one) - at);
            double nextInside = sign * (place(next) - at);
            if (inside >= 0)
            {
                kept.Add(one);
            }

            if (inside >= 0 != nextInside >= 0)
            {
                double share = inside / (inside - nextInside);
                kept.Add((one.Along + (share * (next.Along - one.Along)), one.Around + (share * (next.Around - one.Around))));
            }
        }

        return kept;
    }
}
