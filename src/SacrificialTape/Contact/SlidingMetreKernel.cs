using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>
/// The least bare area in a rectangle that slides over the unrolled surface. Doubles in mm; bare rectangles.
/// </summary>
/// <remarks>
/// What a bare rectangle shares with the sliding one is the product of two pieces of broken line, one along and one around.
/// Between the places where a side of one meets a side of the other the sum is bilinear, and a bilinear function is least at
/// a corner: so only those places have to be looked at, and the least is exact. Of a disc the rectangles that lie within it
/// count while it is cut, and the whole of it while it lies wholly inside: a lower bound.
/// </remarks>
internal static class SlidingMetreKernel
{
    /// <summary>Steps of the stair that stands within a quarter of a disc.</summary>
    private const int Steps = 6;

    internal static double RatioCm2PerM2<TSteps>(double bareM2, double coveredM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = Math.Min(1, bareM2 / coveredM2) * 10_000;
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.RatioInMetre, [bareM2, coveredM2], ratio);
        }

        return ratio;
    }

    /// <summary>The bare parts of windows; those of a disc carry what is missing of it while it is whole.</summary>
    internal static BarePart[] Parts(ReadOnlySpan<BareSpot> spots)
    {
        var parts = new List<BarePart>(spots.Length);
        foreach (ref readonly BareSpot spot in spots)
        {
            if (!spot.IsRound)
            {
                parts.Add(new(spot.LowX, spot.HighX, spot.LowY, spot.HighY, spot.Weight, 0));
                continue;
            }

            // Corners of the stair on the rim at equal angles; the widest step in the middle, the others above and below it.
            double stair = 0;
            double lastY = 0;
            for (int i = 1; i <= Steps; i++)
            {
                double angle = Math.PI / 2 * i / (Steps + 1);
                double x = spot.HalfX * Math.Cos(angle);
                double y = spot.HalfY * Math.Sin(angle);
                if (i == 1)
                {
                    parts.Add(new(spot.X - x, spot.X + x, spot.Y - y, spot.Y + y, spot.Weight, 0));
                }
                else
                {
                    parts.Add(new(spot.X - x, spot.X + x, spot.Y + lastY, spot.Y + y, spot.Weight, 0));
                    parts.Add(new(spot.X - x, spot.X + x, spot.Y - y, spot.Y - lastY, spot.Weight, 0));
                }

                stair += 4 * x * (y - lastY);
                lastY = y;
            }

            double rest = (Math.PI * spot.HalfX * spot.HalfY) - stair;
            parts.Add(new(spot.LowX, spot.HighX, spot.LowY, spot.HighY, spot.Weight, rest));
        }

        return [.. parts];
    }

    /// <summary>The least over all places of a rectangle X by Y whose lower side lies between two places around.</summary>
    internal static SlidingMetre Least(BarePart[] given, UnrolledSurface surface, double extentX, double extentY, double fromY, double toY)
    {
        double last = Math.Max(0, surface.LengthMm - extentX);
        BarePart[] parts = [.. given.OrderBy(static part => part.LowX)];
        double widest = parts.Length == 0 ? 0 : parts.Max(static part => part.HighX - part.LowX);
        var places = new List<double>((4 * parts.Length) + 2) { 0, last };
        foreach (BarePart part in parts)
        {
            places.AddRange([part.LowX, part.HighX, part.LowX - extentX, part.HighX - extentX]);
        }

        places.RemoveAll(x => x < 0 || x > last);
        places.Sort();
        var best = new SlidingMetre(double.MaxValue, 0, fromY, extentX, extentY);
        var active = new List<Line>();
        int begin = 0;
        double before = double.NaN;
        foreach (double x in places)
        {
            if (x == before)
            {
                continue;
            }

            before = x;
            while (begin < parts.Length && parts[begin].LowX < x - widest)
            {
                begin++;
            }

            active.Clear();
            for (int i = begin; i < parts.Length && parts[i].LowX < x + extentX; i++)
            {
                BarePart part = parts[i];
                double shared = Math.Min(part.HighX, x + extentX) - Math.Max(part.LowX, x);
                if (part.Rest > 0)
                {
                    if (part.LowX > x && part.HighX < x + extentX)
                    {
                        active.Add(new Line(part.LowY, part.HighY, 0, part.Rest * part.Weight));
                    }
                }
                else if (shared > 0)
                {
                    active.Add(new Line(part.LowY, part.HighY, shared * part.Weight, 0));
                }
            }

            (double least, double y) = Around(active, surface, extentY, fromY, toY);
            if (least < best.BareMm2)
            {
                best = best with { BareMm2 = least, X = x, Y = y };
            }
        }

        return best;
    }

    // For one place along: a broken line around, built from its kinks in order; steps of whole discs count only inside.
    private static (double Least, double Y) Around(List<Line> lines, UnrolledSurface surface, double extentY, double fromY, double toY)
    {
        double girth = surface.GirthMm;
        if (surface.IsClosed && extentY >= girth)
        {
            // All round: nothing is cut around, wherever the named line runs.
            double all = 0;
            foreach (Line line in lines)
            {
                all += (line.Share * (line.HighY - line.LowY)) + line.Rest;
            }

            return (all, fromY);
        }

        var kinks = new List<Kink>((lines.Count * 12) + 2) { new(fromY, 0, 0), new(toY, 0, 0) };
        double value = 0;
        double slope = 0;
        foreach (Line line in lines)
        {
            // A place around and the sliding rectangle each reach at most a turn and a half from the first turn.
            for (int turn = surface.IsClosed ? -2 : 0; turn <= (surface.IsClosed ? 2 : 0); turn++)
            {
                double low = line.LowY + (turn * girth);
                double high = line.HighY + (turn * girth);
                if (high <= fromY || low >= toY + extentY)
                {
                    continue;
                }

                double enter = low - extentY;
                double full = Math.Min(low, high - extentY);
                double leaving = Math.Max(low, high - extentY);
                if (line.Rest > 0)
                {
                    // Whole from just after one kink to just before another.
                    double whole = high - extentY;
                    if (whole < low)
                    {
                        Step(whole, line.Rest);
                        Step(low, -line.Rest);
                    }

                    continue;
                }

                Bend(enter, line.Share);
                Bend(full, -line.Share);
                Bend(leaving, -line.Share);
                Bend(high, line.Share);
            }
        }

        kinks.Sort(static (a, b) => a.Y != b.Y ? a.Y.CompareTo(b.Y) : a.Rise.CompareTo(b.Rise));
        double least = double.MaxValue;
        double at = fromY;
        double y = fromY;
        for (int i = 0; i < kinks.Count; i++)
        {
            Kink kink = kinks[i];
            value += slope * (kink.Y - y);
            y = kink.Y;
            if (kink.Rise < 0)
            {
                value += kink.Rise; // no longer whole, and here not whole any more
            }

            if ((kink.Rise <= 0 || kinks[i - 1].Y < kink.Y) && value < least)
            {
                (least, at) = (value, y);
            }

            value += Math.Max(0, kink.Rise);
            slope += kink.Slope;
        }

        return (Math.Max(0, least), at);

        void Bend(double place, double change)
        {
            if (place <= fromY)
            {
                value += change * (fromY - place);
                slope += change;
            }
            else if (place < toY)
            {
                kinks.Add(new(place, change, 0));
            }
        }

        void Step(double place, double rise)
        {
            // At its very kink a disc is not whole: a rise counts after its place, a fall from its place on.
            if (rise > 0 ? place < fromY : place <= fromY)
            {
                value += rise;
            }
            else if (rise > 0 ? place < toY : place <= toY)
            {
                kinks.Add(new(place, 0, rise));
            }
        }
    }

    private readonly record struct Line(double LowY, double HighY, double Share, double Rest);

    private readonly record struct Kink(double Y, double Slope, double Rise);
}
