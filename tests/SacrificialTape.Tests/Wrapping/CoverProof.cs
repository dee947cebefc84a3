using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// The layers that a lay promises, counted spot by spot on the unrolled pipe with the strips it has cut: no spot has
/// fewer, and where the promise is exact some spot has no more.
/// </summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 20)]
public sealed class CoverProof
{
    [Property]
    public void A_flush_spiral_covers_as_promised_and_no_better(SpiralCase given)
    {
        var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), null, Choices());
        UnrolledPipe pipe = Flush(given, lay, null);
        (int least, int leastInside, double mean) = Count(pipe, given.WidthMm, lay.Geometry.Advance.Millimeters);
        Assert.True(lay.LayersEverywhere >= 1);
        Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");

        // Just short of one more layer the thin spots are slivers that no grid of spots is sure to meet.
        double layers = given.WidthMm / (given.WidthMm - given.TrueLapMm);
        bool sliver = Math.Ceiling(layers) - layers < 0.02;
        Assert.True(sliver || leastInside <= lay.LayersEverywhere, $"Every spot has {leastInside} layers, but only {lay.LayersEverywhere} were promised.");
        Near.Equal(lay.LayersOnAverage.Ratio, mean, 0.02);
        Near.Equal(given.WidthMm / (given.WidthMm - given.TrueLapMm), lay.LayersOnAverage.Ratio, 1e-6);
    }

    [Property]
    public void A_spiral_between_level_turns_covers_as_promised(SpiralCase given)
    {
        var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), SpiralEnds.LevelTurns(given.LevelTurns), Choices(0, 0));
        UnrolledPipe pipe = Level(given, lay, null);
        (int least, _, double mean) = Count(pipe, given.WidthMm, lay.Geometry.Advance.Millimeters);
        Assert.True(least >= 1, "A bare spot.");
        Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
        Near.Equal(lay.LayersOnAverage.Ratio, mean, 0.03);
    }

    [Property]
    public void What_square_ends_leave_bare_is_the_cover_of_the_level_turns(SpiralCase given)
    {
        var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), SpiralEnds.LevelTurns(), Choices(0, 0));
        double cover = lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count) * given.WidthMm;
        Near.Equal(given.CircumferenceMm * given.HeightMm, cover, 1e-5);

        // The bare wedge at one end, by its share of sampled spots up to one advance from the end.
        var pipe = new UnrolledPipe(given.CircumferenceMm, given.HeightMm);
        double advance = lay.Geometry.Advance.Millimeters;
        pipe.Wind(0, 0, lay.Strips[0].Length.Millimeters, given.WidthMm, advance);
        const int Side = 250;
        int bare = 0;
        for (int i = 0; i < Side * Side; i++)
        {
            bare += pipe.Over((i % Side + 0.5) / Side * given.CircumferenceMm, (i / Side + 0.5) / Side * advance, true) == 0 ? 1 : 0;
        }

        double wedge = bare / (double)(Side * Side) * given.CircumferenceMm * advance;
        Near.Equal(lay.Strips[1].Cover.Millimeters * given.WidthMm, wedge, 0.02, absolute: 1.5);
    }

    [Property]
    public void Wander_up_to_the_allowance_leaves_the_promise_standing(SpiralCase given, byte seed)
    {
        double wander = given.WidthMm * (seed % 30) / 100;
        var random = new Random(seed);
        double[] shifts = [.. Enumerable.Range(0, 997).Select(_ => random.NextDouble() * wander)];
        Func<int, double>[] hands = [k => (k & 1) == 0 ? 0 : wander, k => shifts[((k % 997) + 997) % 997]];
        StraightPipe surface = Pipe(given.DiameterMm, given.HeightMm);
        var setting = SpiralSetting.FromTrueLap(Mm(given.TrueLapMm));
        var flush = new SpiralLay(surface, Stock(given.WidthMm), setting, null, Choices(wander));
        var level = new SpiralLay(surface, Stock(given.WidthMm), setting, SpiralEnds.LevelTurns(given.LevelTurns), Choices(wander, 0));
        foreach (Func<int, double> hand in hands)
        {
            // A strip that wanders off the end of the pipe is led back: only the body is looked at.
            (int least, _, _) = Count(Flush(given, flush, hand), given.WidthMm, flush.Geometry.Advance.Millimeters, wander * 2);
            Assert.True(least >= flush.LayersEverywhere, $"{least} layers where {flush.LayersEverywhere} were promised with {wander} mm of wander.");
            (least, _, _) = Count(Level(given, level, hand), given.WidthMm, level.Geometry.Advance.Millimeters);
            Assert.True(least >= level.LayersEverywhere, $"{least} layers where {level.LayersEverywhere} were promised with {wander} mm of wander.");
        }
    }

    [Property]
    public void Rings_cover_as_promised_and_no_better(SpanCase given)
    {
        var lay = new RingLay(Pipe(219.1, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), Choices(0, 0));
        var pipe = new UnrolledPipe(219.1 * Math.PI, given.SpanMm);
        double spacing = given.WidthMm - lay.Lap.Millimeters;
        for (int i = 0; i < lay.Rings; i++)
        {
            pipe.Ring(i * spacing, given.WidthMm);
        }

        // The last ring ends at the end of the pipe.
        if (lay.Rings > 1)
        {
            Near.Equal(given.SpanMm, ((lay.Rings - 1) * spacing) + given.WidthMm, 1e-9);
        }

        (int least, int leastInside, double mean) = Count(pipe, given.WidthMm, spacing);
        Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
        Assert.True(leastInside <= lay.LayersEverywhere);
        Near.Equal(lay.LayersOnAverage.Ratio, mean, 0.03);
    }

    [Property]
    public void Strips_along_cover_as_promised_and_no_better(SpanCase given)
    {
        var lay = new AlongPipeLay(Pipe(given.SpanMm / Math.PI, 700), Stock(given.WidthMm), Mm(given.LapMm), Choices());
        var pipe = new UnrolledPipe(given.SpanMm, 700);
        for (int i = 0; i < lay.StripsRound; i++)
        {
            pipe.Along(i * given.SpanMm / lay.StripsRound, given.WidthMm);
        }

        int least = int.MaxValue;
        int leastInside = int.MaxValue;
        for (int i = 0; i < lay.StripsRound; i++)
        {
            foreach (double edge in new[] { -0.01, 0, 0.01, 0.37 * given.WidthMm, given.WidthMm - 0.01, given.WidthMm, given.WidthMm + 0.01 })
            {
                double x = (((i * given.SpanMm / lay.StripsRound) + edge) % given.SpanMm + given.SpanMm) % given.SpanMm;
                least = Math.Min(least, pipe.Over(x, 350, true));
                leastInside = Math.Min(leastInside, pipe.Over(x, 350, false));
            }
        }

        Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
        Assert.True(leastInside <= lay.LayersEverywhere);
        Near.Equal(lay.StripsRound * given.WidthMm / given.SpanMm, lay.LayersOnAverage.Ratio, 1e-6);
    }

    [Fact]
    public void The_count_sees_a_gap()
    {
        // Advance too large by a millimetre: bare spots must show.
        var pipe = new UnrolledPipe(500, 2000);
        pipe.Wind(0, -500, 20_000, 100, 105);
        Assert.Equal(0, Count(pipe, 100, 105).Least);
        Assert.Equal(2, new UnrolledPipe(500, 2000).Also(static p => p.Ring(0, 100)).Also(static p => p.Ring(50, 100)).Over(10, 75, false));
    }

    private static UnrolledPipe Flush(SpiralCase given, SpiralLay lay, Func<int, double>? hand)
    {
        // The strip starts so far below the pipe that its upper corner just clears the end.
        double advance = lay.Geometry.Advance.Millimeters;
        double slant = Math.Sqrt((given.CircumferenceMm * given.CircumferenceMm) + (advance * advance));
        var pipe = new UnrolledPipe(given.CircumferenceMm, given.HeightMm);
        double below = given.WidthMm * given.CircumferenceMm / slant;
        double back = below * given.CircumferenceMm / advance;
        pipe.Wind(-back, -below, lay.Strips[0].Length.Millimeters, given.WidthMm, advance, hand);
        return pipe;
    }

    private static UnrolledPipe Level(SpiralCase given, SpiralLay lay, Func<int, double>? hand)
    {
        var pipe = new UnrolledPipe(given.CircumferenceMm, given.HeightMm);
        pipe.Wind(0, 0, lay.Strips[0].Length.Millimeters, given.WidthMm, lay.Geometry.Advance.Millimeters, hand);
        int turns = lay.Strips.Where(static strip => strip.Purpose == StripPurpose.LevelTurn).Sum(static strip => strip.Count);
        Assert.Equal(2 * given.LevelTurns, turns);
        for (int i = 0; i < given.LevelTurns; i++)
        {
            pipe.Ring(0, given.WidthMm);
            pipe.Ring(given.HeightMm - given.WidthMm, given.WidthMm);
        }

        return pipe;
    }

    // Spots on a fine grid near both ends, all along the pipe, and close to where edges of rings and turns lie.
    private static (int Least, int LeastInside, double Mean) Count(UnrolledPipe pipe, double width, double advance, double endsLeftOut = 0)
    {
        var random = new Random(20_010);
        var heights = new List<double>();
        double length = pipe.Length;
        foreach (double near in new[] { 0, width, advance, width + advance, 2 * width, length - width, length - advance, length - width - advance, length })
        {
            foreach (double off in new[] { -1, -0.01, 0, 0.01, 1 })
            {
                heights.Add(near + off);
            }
        }

        for (int i = 0; i < 20; i++)
        {
            heights.Add(random.NextDouble() * Math.Min(length, 2 * (width + advance)));
            heights.Add(length - (random.NextDouble() * Math.Min(length, 2 * (width + advance))));
        }

        int least = int.MaxValue;
        int leastInside = int.MaxValue;
        foreach (double z in heights.Where(z => z >= endsLeftOut && z <= length - endsLeftOut))
        {
            for (int i = 0; i < 48; i++)
            {
                double x = (i + random.NextDouble()) / 48 * pipe.Circumference;
                least = Math.Min(least, pipe.Over(x, z, true));
                leastInside = Math.Min(leastInside, pipe.Over(x, z, false));
            }

            // Across one whole advance at fixed x the count takes every value it has.
            for (int i = 0; i < 12; i++)
            {
                double along = Math.Clamp(z + (advance * i / 12), endsLeftOut, length - endsLeftOut);
                least = Math.Min(least, pipe.Over(0.123 * pipe.Circumference, along, true));
                leastInside = Math.Min(leastInside, pipe.Over(0.123 * pipe.Circumference, along, false));
            }
        }

        double sum = 0;
        const int Rows = 400;
        const int Columns = 24;
        for (int i = 0; i < Rows * Columns; i++)
        {
            double z = (i / Columns + random.NextDouble()) / Rows * length;
            sum += pipe.Over((i % Columns + random.NextDouble()) / Columns * pipe.Circumference, z, true);
        }

        return (least, leastInside, sum / (Rows * Columns));
    }
}
