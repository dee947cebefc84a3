using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Numbers the strips of a lay, pass by pass; later passes lie where the first does.</summary>
internal static class StripPlacing
{
    internal static ValueList<PlacedStrip> EachPass(int passes, IReadOnlyList<Band> bands)
    {
        var placed = new PlacedStrip[checked(passes * bands.Count)];
        for (int i = 0; i < placed.Length; i++)
        {
            Band band = bands[i % bands.Count];
            placed[i] = new PlacedStrip(
                i + 1, band.FromAlongMm, band.AlongMm, band.FromAroundMm, band.AroundMm, band.RunsAround, band.LeanMm, 1 + (i / bands.Count));
        }

        return ValueList<PlacedStrip>.Owning(placed);
    }

    /// <summary>Like strips side by side along the surface, each all round it.</summary>
    internal static ValueList<PlacedStrip> Rings(int passes, int rings, double firstMm, double spacingMm, double widthMm, double ringMm) =>
        EachPass(passes, [.. Enumerable.Range(0, rings).Select(i => new Band(firstMm + (i * spacingMm), widthMm, 0, ringMm, true))]);

    /// <summary>Like strips side by side round the surface, each all along it.</summary>
    internal static ValueList<PlacedStrip> Alongside(int passes, int strips, double fromMm, double lengthMm, double spacingMm, double widthMm) =>
        EachPass(passes, [.. Enumerable.Range(0, strips).Select(i => new Band(fromMm, lengthMm, i * spacingMm, widthMm, false))]);

    /// <summary>The place of one strip in mm.</summary>
    internal readonly record struct Band(
        double FromAlongMm, double AlongMm, double FromAroundMm, double AroundMm, bool RunsAround, double LeanMm = 0);
}
