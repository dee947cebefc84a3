using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips along eccentric reducers, counted on the wall unrolled facet by facet.</summary>
[Properties(Arbitrary = [typeof(FittingLayCases)], MaxTest = 40)]
public sealed class EccentricStrips
{
    [Property]
    public void Every_spot_lies_under_as_many_strips_as_promised(EccentricCase given, byte seed)
    {
        foreach (double wander in new[] { 0.0, given.WidthMm * (seed % 20) / 100 })
        {
            EccentricReducerLay lay = given.Lay(Choices(wander));
            int least = Least(given, lay.StripsRound, wander, seed);
            Assert.True(least >= lay.LayersEverywhere, $"{least} strips where {lay.LayersEverywhere} were promised.");
        }
    }

    [Fact]
    public void The_count_sees_a_missing_strip()
    {
        var given = new EccentricCase(168.3, 114.3, 140, 50, 2);
        Assert.Equal(0, Least(given, given.Lay(Choices()).StripsRound - 2, 0, 1));
    }

    [Property(MaxTest = 20)]
    public void Each_strip_reaches_from_rim_to_rim_over_its_whole_width_with_its_end_laps_and_no_further(EccentricCase given)
    {
        EccentricReducerLay lay = given.Lay(Choices(0, 12));
        double[] lengths = [.. lay.Strips.SelectMany(static strip => Enumerable.Repeat(strip.Length.Millimeters, strip.Count)).Order()];
        Assert.Equal(lay.StripsRound, lengths.Length);
        // As many facets as leave a strip's middle on an edge between two of them.
        int perStrip = (1440 / lay.StripsRound) + 1;
        (double X, double Y)[][] rims = Unrolled(given, perStrip * lay.StripsRound);
        double[] wanted = [.. Enumerable.Range(0, lay.StripsRound).Select(i => 24 + Extent(rims, given.WidthMm / 2, (lay.StripsRound + i) * perStrip)).Order()];
        for (int i = 0; i < wanted.Length; i++)
        {
            Near.Equal(wanted[i], lengths[i], 2e-5, absolute: 0.005);
        }
    }

    [Property]
    public void Cover_is_the_area_of_the_reducer_and_the_ledger_closes(EccentricCase given)
    {
        EccentricReducerLay lay = given.Lay(Choices());
        Near.Equal(given.Reducer().Area.SquareMeters * 1e6 / given.WidthMm, lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count), 1e-8, absolute: 0.003 * lay.StripsRound);
        Assert.All(lay.Strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm));
        Assert.True(lay.LayersOnAverage.Ratio >= lay.LayersEverywhere * (1 - 1e-6));
        Assert.True(lay.SmallEndLap >= lay.Lap);
    }

    [Property]
    public void Equal_ends_are_strips_along_a_pipe(EccentricCase given)
    {
        var lay = new EccentricReducerLay(new EccentricReducer(Mm(given.LargeMm), Mm(given.LargeMm), Mm(given.LengthMm)), Stock(given.WidthMm), Mm(given.LapMm), Choices(1, 0));
        var pipe = new AlongPipeLay(Pipe(given.LargeMm, given.LengthMm), Stock(given.WidthMm), Mm(given.LapMm), Choices(1, 0));
        Assert.Equal(pipe.StripsRound, lay.StripsRound);
        Assert.Equal(pipe.LayersEverywhere, lay.LayersEverywhere);
        Near.Equal(pipe.Strips[0].Length.Millimeters, lay.Strips.Single().Length.Millimeters, 0, absolute: 0.001);
        Near.Equal(pipe.Strips[0].Cover.Millimeters, lay.Strips[0].Cover.Millimeters, 0, absolute: 0.002);
        Near.Equal(0, lay.Strips[0].Trim.Millimeters, 0, absolute: 0.002);
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(EccentricCase given) => Assert.True(
        (given with { LapMm = (given.LapMm + given.WidthMm) / 2 }).Lay(Choices()).StripsRound >= given.Lay(Choices()).StripsRound);

    [Property(MaxTest = 15)]
    public void A_strip_meets_what_lies_under_it_on_the_wall_unrolled(EccentricCase given, byte place)
    {
        const int Facets = 1536;
        int centre = Facets + (place * Facets / 256);
        double half = given.WidthMm / 2;
        ObliqueBand band = ObliqueConeKernel.Band(given.LargeMm, given.SmallMm, given.LengthMm, 2 * Math.PI * place / 256, given.WidthMm)!.Value;
        (double X, double Y)[][] rims = Unrolled(given, Facets);
        double area = 0;
        Span<(double X, double Y)> facet = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        for (int i = centre - (Facets / 2); i < centre + (Facets / 2); i++)
        {
            facet[0] = Placed(rims, centre, rims[0][i]);
            facet[1] = Placed(rims, centre, rims[0][i + 1]);
            facet[2] = Placed(rims, centre, rims[1][i + 1]);
            facet[3] = Placed(rims, centre, rims[1][i]);
            int corners = ClipKernel.Cut(facet, 4, 0, 1, half);
            area += ClipKernel.Area(facet[..ClipKernel.Cut(facet, corners, 0, -1, half)]);
        }

        Near.Equal(area, band.AreaMm2, 2e-5);
        double generator = given.Reducer().Generator(Angle.FromDegrees(360.0 * place / 256)).Millimeters;
        Near.Equal(Extent(rims, half, centre), band.OverMm + generator, 2e-5, absolute: 0.005);
    }

    [Fact]
    public void Lines_by_hand()
    {
        // 168.3 to 114.3 over 140: straight side 140, sloping side sqrt(140^2 + 54^2), between them sqrt(140^2 + 54^2 / 2).
        var reducer = new EccentricReducer(Mm(168.3), Mm(114.3), Mm(140));
        Near.Equal(140, reducer.Generator(Angle.FromDegrees(0)).Millimeters, 1e-15);
        Near.Equal(Math.Sqrt(21058), reducer.Generator(Angle.FromDegrees(90)).Millimeters, 1e-14);
        Near.Equal(reducer.SlopingSide.Millimeters, reducer.Generator(Angle.FromDegrees(180)).Millimeters, 1e-15);
    }

    [Fact]
    public void A_strip_too_wide_for_the_small_end_is_refused() => Errors.Refused(
        static () => new EccentricReducerLay(new EccentricReducer(Mm(168.3), Mm(21.3), Mm(140)), Stock(100), Mm(10)), "stock", "must be narrower");

    // Places of both rims in the plane, unrolled triangle by triangle from their lengths in space; two turns to each side.
    private static (double X, double Y)[][] Unrolled(EccentricCase given, int facets)
    {
        const int Turns = 3;
        var large = new (double X, double Y)[(Turns * facets) + 1];
        var small = new (double X, double Y)[(Turns * facets) + 1];
        large[0] = (given.LengthMm, 0);
        small[0] = (0, 0);
        for (int i = 1; i < large.Length; i++)
        {
            large[i] = Third(small[i - 1], large[i - 1], Apart(given, facets, i - 1, false, i, true), Apart(given, facets, i - 1, true, i, true));
            small[i] = Third(small[i - 1], large[i], Apart(given, facets, i - 1, false, i, false), Apart(given, facets, i, true, i, false));
        }

        return [large, small];
    }

    private static double Apart(EccentricCase given, int facets, int i, bool largeI, int j, bool largeJ)
    {
        (double x, double y, double z) = Space(i, largeI);
        (double u, double v, double w) = Space(j, largeJ);
        return Math.Sqrt(Math.Pow(x - u, 2) + Math.Pow(y - v, 2) + Math.Pow(z - w, 2));

        (double, double, double) Space(int at, bool large)
        {
            double r = (large ? given.LargeMm : given.SmallMm) / 2;
            double t = 2 * Math.PI * at / facets;
            return ((given.LargeMm / 2) - r + (r * Math.Cos(t)), r * Math.Sin(t), large ? given.LengthMm : 0);
        }
    }

    // The corner of a triangle over a base, at given distances from its ends, on the side of larger angles.
    private static (double X, double Y) Third((double X, double Y) a, (double X, double Y) b, double fromA, double fromB)
    {
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double c = Math.Sqrt((dx * dx) + (dy * dy));
        double along = ((fromA * fromA) - (fromB * fromB) + (c * c)) / (2 * c);
        double off = Math.Sqrt(Math.Max(0, (fromA * fromA) - (along * along)));
        return (a.X + (((dx * along) - (dy * off)) / c), a.Y + (((dy * along) + (dx * off)) / c));
    }

    private static double Extent((double X, double Y)[][] rims, double half, int centre)
    {
        int turn = (rims[0].Length - 1) / 3;
        double high = double.MinValue;
        double low = double.MaxValue;
        for (int i = centre - (turn / 2); i < centre + (turn / 2); i++)
        {
            foreach (double along in Within(rims[0]))
            {
                high = Math.Max(high, along);
            }

            foreach (double along in Within(rims[1]))
            {
                low = Math.Min(low, along);
            }

            // The ends of one facet's rim, or where it leaves the strip.
            IEnumerable<double> Within((double X, double Y)[] rim)
            {
                (double along, double across) = Placed(rims, centre, rim[i]);
                (double next, double beyond) = Placed(rims, centre, rim[i + 1]);
                if (Math.Abs(across) <= half)
                {
                    yield return along;
                }

                foreach (double edge in new[] { -half, half })
                {
                    if ((across - edge) * (beyond - edge) < 0)
                    {
                        yield return along + ((next - along) * (edge - across) / (beyond - across));
                    }
                }
            }
        }

        return high - low;
    }

    private static (double Along, double Across) Placed((double X, double Y)[][] rims, int centre, (double X, double Y) spot)
    {
        (double X, double Y) from = rims[1][centre];
        (double X, double Y) to = rims[0][centre];
        double length = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
        double x = (to.X - from.X) / length;
        double y = (to.Y - from.Y) / length;
        return (((spot.X - from.X) * x) + ((spot.Y - from.Y) * y), ((spot.Y - from.Y) * x) - ((spot.X - from.X) * y));
    }

    private static int Least(EccentricCase given, int strips, double wander, int seed)
    {
        const int Facets = 1440;
        (double X, double Y)[][] rims = Unrolled(given, Facets);
        var random = new Random(seed);
        int least = int.MaxValue;
        for (int spot = 0; spot < 250; spot++)
        {
            int at = Facets + random.Next(Facets);
            double share = (spot % 4) switch { 0 => 1, 1 => 0, _ => random.NextDouble() };
            (double X, double Y) place = (
                rims[1][at].X + (share * (rims[0][at].X - rims[1][at].X)), rims[1][at].Y + (share * (rims[0][at].Y - rims[1][at].Y)));
            int over = 0;
            for (int i = -strips; i < 2 * strips; i++)
            {
                double centre = Facets + ((double)i / strips * Facets);
                int near = (int)Math.Round(centre);
                if (near < 0 || near >= rims[0].Length || Math.Abs(near - at) > Facets / 2)
                {
                    continue;
                }

                // Marks lie between facets: up to half a facet of the large rim is given.
                double shift = i % 2 == 0 ? 0 : wander;
                double half = (given.WidthMm / 2) + (Math.PI * given.LargeMm / Facets / 2) + 1e-3;
                double across = Placed(rims, near, place).Across;
                over += across >= -half + shift && across <= half + shift ? 1 : 0;
            }

            least = Math.Min(least, over);
        }

        return least;
    }
}
