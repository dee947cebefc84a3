using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// Cover of heads, reducers and columns, proved by counting: each strip is placed by the lay's public numbers, and each
/// spot's shortest line to the strip's middle tells whether the strip reaches it.
/// </summary>
[Properties(Arbitrary = [typeof(RevolvedCases)], MaxTest = 20)]
public sealed class RevolvedCover
{
    private const double ToleranceMm = 2e-4;

    [Property]
    public void No_spot_under_gores_is_bare(RevolvedCase given, int seed)
    {
        foreach (double wander in new[] { 0.0, 0.8 })
        {
            var lay = new GoreLay(given.Surface(), given.Strip(), Mm(given.LapMm), Choices(wander));
            int least = Least(given, seed, lay.Gores, lay.LayersEverywhere, wander, (foot, distance, _) => foot <= lay.Strips[0].Length.Millimeters + ToleranceMm
                && distance <= Half(lay, foot) - (wander / 2) + ToleranceMm);
            AtLeast(given, lay, least, wander);
        }
    }

    [Property]
    public void A_gore_without_its_lap_reaches_the_meridian_between_it_and_the_next(RevolvedCase given)
    {
        // Few and wide gores, where arc, chord and tangent differ most.
        RevolvedCase wide = given with { WidthShare = 2.2 };
        var lay = new GoreLay(wide.Surface(), wide.Strip(), Mm(wide.LapMm));
        var section = new RevolvedSection(wide);
        double last = section.Length - (wide.Closes ? wide.WidthMm / 4 : 0);
        for (int i = 1; i < 40; i++)
        {
            double along = section.Flange + ((last - section.Flange) * i / 40);
            if (section.Reach(section.RadiusAt(along), Math.PI / lay.Gores) is { } needed)
            {
                double half = Half(lay, along) - (lay.Lap.Millimeters / 2);
                Assert.True(half >= needed - (1e-6 * wide.DiameterMm), $"{wide} at {along}: {half} for {needed}");
            }
        }
    }

    [Property]
    public void No_spot_under_strips_along_the_meridians_is_bare(RevolvedCase given, int seed)
    {
        foreach (double wander in new[] { 0.0, 0.8 })
        {
            foreach (int? stages in new int?[] { null, 0 })
            {
                var lay = new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), stages, Choices(wander));
                double lost = wander * Math.Max(1, lay.LayersEverywhere) / 2;
                int least = Least(given, seed, lay.StripsRound, lay.LayersEverywhere, wander, (foot, distance, at) =>
                    foot <= LengthOf(lay, at) + ToleranceMm && distance <= (given.WidthMm / 2) - lost + ToleranceMm);
                AtLeast(given, lay, least, wander);
            }
        }
    }

    [Property(MaxTest = 200)]
    public void No_spot_under_rings_is_bare(RevolvedCase given)
    {
        var section = new RevolvedSection(given);
        foreach (double wander in new[] { 0.0, 0.8 })
        {
            var lay = new LatitudeRingLay(given.Surface(), given.Strip(), Mm(given.LapMm), Choices(wander));
            double spacing = given.WidthMm - lay.Lap.Millimeters;
            int least = int.MaxValue;
            for (int i = 0; i <= 2000; i++)
            {
                double along = section.Length * i / 2000;
                int over = given.Closes && section.Length - along <= (given.WidthMm / 2) - (lay.Rings % 2 == 0 ? 0 : wander) + ToleranceMm ? 1 : 0;
                for (int ring = 0; ring < lay.Rings; ring++)
                {
                    // Every other ring is laid toward the crown by all that a lap may lose.
                    double from = (ring * spacing) + (ring % 2 == 0 ? 0 : wander);
                    over += along >= from - ToleranceMm && along <= from + given.WidthMm + ToleranceMm ? 1 : 0;
                }

                least = Math.Min(least, over);
            }

            AtLeast(given, lay, least, wander);
        }
    }

    private static void AtLeast(RevolvedCase given, ILay lay, int least, double wander)
    {
        Assert.True(least >= lay.LayersEverywhere, $"{given}: {least} over some spot, {lay.LayersEverywhere} promised by {lay}");
        if (wander == 0)
        {
            Assert.True(lay.LayersEverywhere >= 1, $"{given}: {lay}");
            if (given.Closes)
            {
                Assert.Equal(least, lay.LayersEverywhere);
            }
        }
    }

    // Spots over the whole surface, its edges and the places between two strips among them.
    private static int Least(RevolvedCase given, int seed, int strips, int promised, double wander, Func<double, double, int, bool> reaches)
    {
        var section = new RevolvedSection(given);
        var random = new Random(seed);
        int least = int.MaxValue;
        double[] places = [0, section.Flange, section.Length, section.Length - (given.WidthMm / 2), section.Length - (given.WidthMm / 4)];
        for (int i = 0; i < 50; i++)
        {
            double along = i < places.Length ? Math.Max(0, places[i]) : section.Length * random.NextDouble();
            double share = i % 3 == 0 ? 0.5 : i % 3 == 1 ? random.NextDouble() : 0;
            int first = random.Next(strips);
            double radius = section.RadiusAt(along);
            int over = given.Closes && section.Length - along <= (given.WidthMm / 2) - wander + ToleranceMm ? 1 : 0;
            if (radius > 1e-6 * section.Rim)
            {
                // The nearest strips on both sides, none twice, until there are more than promised.
                int sides = Math.Min((strips - 1) / 2, (int)(given.WidthMm * strips / (Math.PI * radius)) + 1);
                for (int k = 0; k <= 2 * sides && over <= promised; k++)
                {
                    int j = k % 2 == 0 ? k / 2 : -(k + 1) / 2;
                    double angle = Math.Abs(share + j) * 2 * Math.PI / strips;
                    if (angle < Math.PI / 2)
                    {
                        (double foot, double distance) = along <= section.Flange
                            ? (along, radius * angle)
                            : From(section, section.Nearest(radius, angle));
                        over += reaches(foot, distance, Mod(first - j, strips)) ? 1 : 0;
                    }
                }
            }

            least = Math.Min(least, over);
        }

        return least;
    }

    private static (double Foot, double Distance) From(RevolvedSection section, (double Radius, double Distance) nearest) =>
        (section.FromEdge(nearest.Radius), nearest.Distance);

    private static int Mod(int value, int count) => ((value % count) + count) % count;

    // The table of a gore, joined by straight cuts.
    private static double Half(GoreLay lay, double along)
    {
        for (int i = 1; i < lay.Stations.Count; i++)
        {
            double from = lay.Stations[i - 1].FromLowEdge.Millimeters;
            double to = lay.Stations[i].FromLowEdge.Millimeters;
            if (along <= to || i == lay.Stations.Count - 1)
            {
                double share = Math.Clamp((along - from) / (to - from), 0, 1);
                return ((1 - share) * lay.Stations[i - 1].HalfWidth.Millimeters) + (share * lay.Stations[i].HalfWidth.Millimeters);
            }
        }

        throw new InvalidOperationException("A gore has two stations at least.");
    }

    // Every second strip is of the shortest length, of the rest every second one of the next.
    private static double LengthOf(MeridianStripLay lay, int at)
    {
        for (int stage = 0; stage < lay.Lengths.Count - 1; stage++)
        {
            if (at % 2 != 0)
            {
                return lay.Lengths[stage].Length.Millimeters;
            }

            at /= 2;
        }

        return lay.Lengths[^1].Length.Millimeters;
    }
}
