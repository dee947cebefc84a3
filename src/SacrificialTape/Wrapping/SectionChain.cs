namespace SacrificialTape.Wrapping;

/// <summary>
/// Places strips round an outline so that both edges of each lie in the zones where an edge may lie and each laps on the
/// next by at least the lap asked for.
/// </summary>
/// <remarks>
/// Each strip reaches as far as its width and the zones let it, and the next begins as late as the lap and the zones let
/// it. Since a later beginning never ends earlier, no other strips get farther from the same beginning. Strips of the
/// best round can be pushed forward until one of their edges lies on the end of a zone; so it is enough to try those
/// beginnings, and the fewest strips found are the fewest there are.
/// </remarks>
internal static class SectionChain
{
    internal const int Most = 100_000;

    /// <summary>The fewest strips round the outline; null when no strip of this width gets past some fold.</summary>
    internal static List<(double Start, double End)>? Round(LapZones zones, double widthMm, double lapMm)
    {
        double best = 0;
        int fewest = int.MaxValue;
        for (int zone = 0; zone < zones.Count; zone++)
        {
            foreach (double start in new[] { zones.HighMm(zone), zones.BackMm(zones.HighMm(zone) - lapMm) })
            {
                int count = Count(zones, widthMm, lapMm, start, fewest);
                if (count == 0)
                {
                    return null;
                }

                if (count < fewest)
                {
                    (best, fewest) = (start, count);
                }
            }
        }

        return Widened(zones, widthMm, Along(zones, widthMm, lapMm, best, best + zones.PerimeterMm + lapMm));
    }

    /// <summary>Each wide face with strips of its own, from before the fold at its beginning to after the one at its end.</summary>
    internal static List<(double Start, double End)>? FaceByFace(LapZones zones, double widthMm, double lapMm)
    {
        var all = new List<(double Start, double End)>();
        for (int face = 0; face < zones.Count; face++)
        {
            if (Count(zones, widthMm, lapMm, zones.HighMm(face - 1), int.MaxValue) == 0)
            {
                return null;
            }

            all.AddRange(Along(zones, widthMm, lapMm, zones.HighMm(face - 1), zones.LowMm(face + 1)));
        }

        return Widened(zones, widthMm, all);
    }

    // One past what is still counted is as good as any larger number.
    private static int Count(LapZones zones, double widthMm, double lapMm, double start, int fewest)
    {
        double begin = start;
        for (int count = 1; ; count++)
        {
            double next = zones.BackMm(zones.BackMm(begin + widthMm) - lapMm);
            if (next >= start + zones.PerimeterMm - zones.SlackMm || count > Most || count >= fewest)
            {
                return count;
            }

            if (next <= begin + zones.SlackMm)
            {
                return 0;
            }

            begin = next;
        }
    }

    private static List<(double Start, double End)> Along(LapZones zones, double widthMm, double lapMm, double start, double until)
    {
        var strips = new List<(double Start, double End)>();
        double begin = start;
        while (strips.Count <= Most)
        {
            double end = zones.BackMm(begin + widthMm);
            strips.Add((begin, end));
            if (end >= until - zones.SlackMm)
            {
                break;
            }

            begin = zones.BackMm(end - lapMm);
        }

        return strips;
    }

    // A strip that would have to be trimmed keeps its width where it can lie farther back on the strip before.
    private static List<(double Start, double End)> Widened(LapZones zones, double widthMm, List<(double Start, double End)> strips) =>
        [.. strips.Select(strip => zones.Holds(strip.End - widthMm) ? (strip.End - widthMm, strip.End) : strip)];
}
