namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// Steel of a flat face in plain coordinates, u along the strips and v across, without any formula of the library: what
/// is inside the outline and in none of the holes.
/// </summary>
internal sealed class FaceSpots(bool round, double along, double across)
{
    // Strips are counted in whole micrometres: edges are that exact and no better.
    private const double Edge = 2e-3;

    private readonly List<(bool Round, double U, double V, double Along, double Across)> holes = [];

    internal double Across => across;

    internal static FaceSpots Of(PanelCase given, PanelLay lay)
    {
        bool turned = lay.Direction == PanelDirection.AlongHeight;
        FaceSpots spots = given.Form == 0 && turned
            ? new(false, given.HeightMm, given.WidthMm)
            : new(given.Form != 0, given.WidthMm, given.Form == 0 ? given.HeightMm : given.WidthMm);
        if (given.Form == 2)
        {
            spots.Hole(true, 0, 0, given.HoleMm, given.HoleMm);
        }

        foreach (PanelOpening one in lay.Panel.Openings.Where(static one => one.IsPlaced))
        {
            (double right, double up) = (one.MiddleRight!.Value.Millimeters, one.MiddleUp!.Value.Millimeters);
            (double width, double height) = (one.Width.Millimeters, one.Height.Millimeters);
            spots.Hole(one.IsRound, turned ? up : right, turned ? right : up, turned ? height : width, turned ? width : height);
        }

        return spots;
    }

    internal void Hole(bool isRound, double u, double v, double holeAlong, double holeAcross) => this.holes.Add((isRound, u, v, holeAlong, holeAcross));

    internal bool IsSteel(double u, double v) =>
        (round ? double.Hypot(u, v) <= along / 2 : Math.Abs(u) <= along / 2 && Math.Abs(v) <= across / 2)
        && !this.holes.Exists(hole => hole.Round
            ? double.Hypot(u - hole.U, v - hole.V) < hole.Along / 2
            : Math.Abs(u - hole.U) < hole.Along / 2 && Math.Abs(v - hole.V) < hole.Across / 2);

    /// <summary>The runs of steel along the line at v.</summary>
    internal List<(double From, double To)> Runs(double v)
    {
        double half = !round ? along / 2 : Math.Abs(v) < along / 2 ? Math.Sqrt((along * along / 4) - (v * v)) : 0;
        var runs = new List<(double From, double To)>();
        double from = -half;
        foreach ((double gapFrom, double gapTo) in this.holes.Select(hole => Gap(hole, v)).Where(static gap => gap.To > gap.From).Order())
        {
            runs.Add((from, gapFrom));
            from = gapTo;
        }

        runs.Add((from, half));
        return runs;
    }

    /// <summary>The least number of pieces over any spot that is tried; each other strip may be laid off by the wander.</summary>
    internal int Least(IReadOnlyList<StripPlace> places, double width, double wander, Random random)
    {
        var bands = places.GroupBy(static place => place.LowerEdge.Millimeters).OrderBy(static band => band.Key)
            .Select((band, i) => (Low: band.Key + (i % 2 == 0 ? 0 : wander), Pieces: band.Select(static one => (From: one.Begin.Millimeters, To: one.Begin.Millimeters + one.Length.Millimeters)).ToArray()))
            .ToArray();
        int least = int.MaxValue;
        foreach ((double u, double v) in this.Spots(bands.Select(static band => band.Low), width, random).Where(spot => this.IsSteel(spot.U, spot.V)))
        {
            int over = 0;
            foreach ((double low, (double From, double To)[] pieces) in bands)
            {
                if (v >= low - Edge && v <= low + width + Edge)
                {
                    over += pieces.Count(piece => u >= piece.From - Edge && u <= piece.To + Edge);
                }
            }

            least = Math.Min(least, over);
        }

        return least;
    }

    /// <summary>Steel under the pieces, counted once for each piece over it: by slices across the strips.</summary>
    internal double Under(IReadOnlyList<StripPlace> places, double width)
    {
        const int Slices = 400;
        double area = 0;
        foreach (IGrouping<double, StripPlace> band in places.GroupBy(static place => place.LowerEdge.Millimeters))
        {
            for (int i = 0; i < Slices; i++)
            {
                double v = band.Key + (width * (i + 0.5) / Slices);
                if (Math.Abs(v) > across / 2)
                {
                    continue;
                }

                foreach ((double from, double to) in this.Runs(v))
                {
                    area += band.Sum(piece => Math.Max(
                        0, Math.Min(to, piece.Begin.Millimeters + piece.Length.Millimeters) - Math.Max(from, piece.Begin.Millimeters))) * width / Slices;
                }
            }
        }

        return area;
    }

    private static (double From, double To) Gap((bool Round, double U, double V, double Along, double Across) hole, double v)
    {
        double off = Math.Abs(v - hole.V);
        if (off >= hole.Across / 2)
        {
            return (0, 0);
        }

        double half = hole.Round ? Math.Sqrt((hole.Along * hole.Along / 4) - (off * off)) : hole.Along / 2;
        return (hole.U - half, hole.U + half);
    }

    // At every joint and just beside it, both ends of each run of steel; the rims of all holes; and spots at random.
    private IEnumerable<(double U, double V)> Spots(IEnumerable<double> lows, double width, Random random)
    {
        const double Near = 1e-4;
        foreach (double low in lows)
        {
            foreach (double v in new[] { low - 0.01, low, low + 0.01, low + (width / 2), low + width - 0.01, low + width, low + width + 0.01 })
            {
                double inside = Math.Clamp(v, -across / 2, across / 2);
                foreach ((double from, double to) in this.Runs(inside))
                {
                    yield return (from + Near, inside);
                    yield return (to - Near, inside);
                    yield return ((from + to) / 2, inside);
                }
            }
        }

        foreach ((bool isRound, double u, double v, double holeAlong, double holeAcross) in this.holes)
        {
            for (int i = 0; i < 72; i++)
            {
                double angle = i * Math.PI / 36;
                yield return isRound
                    ? (u + (((holeAlong / 2) + Near) * Math.Cos(angle)), v + (((holeAcross / 2) + Near) * Math.Sin(angle)))
                    : (u + (((holeAlong / 2) + Near) * Math.Clamp(1.5 * Math.Cos(angle), -1, 1)), v + (((holeAcross / 2) + Near) * Math.Clamp(1.5 * Math.Sin(angle), -1, 1)));
            }
        }

        for (int i = 0; i < 72; i++)
        {
            double angle = i * Math.PI / 36;
            yield return ((along / 2) * 0.9999999 * Math.Cos(angle), (across / 2) * 0.9999999 * Math.Sin(angle));
        }

        for (int i = 0; i < 400; i++)
        {
            yield return (along * (random.NextDouble() - 0.5), across * (random.NextDouble() - 0.5));
        }
    }
}
