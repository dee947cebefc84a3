using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>Strips that touch bare steel, themselves or through laps.</summary>
[Properties(MaxTest = 150)]
public sealed class JoinedToSteel
{
    private static readonly Area Least = Area.FromSquareCentimeters(1);

    [Property]
    public void The_order_of_the_strips_changes_nothing(int seed)
    {
        var random = new Random(seed);
        (ValueList<PlacedStrip> strips, WindowLayout layout) = Scattered(random);
        foreach (bool conducts in new[] { true, false })
        {
            var one = new JoinedStrips(strips, layout, conducts, Least);
            PlacedStrip[] mixed = [.. strips];
            random.Shuffle(mixed);
            var other = new JoinedStrips(new ValueList<PlacedStrip>(mixed), layout, conducts, Least);
            Assert.Equal(one.Sets, other.Sets);
            Assert.Equal(one.Untouched.Select(static strip => strip.Number).Order(), other.Untouched.Select(static strip => strip.Number).Order());
        }
    }

    [Property]
    public void Over_a_film_nothing_is_joined_and_no_strip_gains(int seed)
    {
        (ValueList<PlacedStrip> strips, WindowLayout layout) = Scattered(new Random(seed));
        var plain = new JoinedStrips(strips, layout, true, Least);
        var faced = new JoinedStrips(strips, layout, false, Least);
        Assert.Equal(strips.Count, faced.Sets);
        Assert.True(faced.Untouched.Count >= plain.Untouched.Count);
        Assert.True(plain.Sets <= strips.Count);
    }

    [Property]
    public void More_or_larger_windows_are_never_worse(int seed)
    {
        var random = new Random(seed);
        (ValueList<PlacedStrip> strips, WindowLayout layout) = Scattered(random);
        foreach (WindowLayout? better in new[] { LayoutCase.OneMore(random, layout), LayoutCase.Larger(random, layout) })
        {
            foreach (bool conducts in new[] { true, false })
            {
                if (better is not null)
                {
                    Assert.Subset(
                        new JoinedStrips(strips, layout, conducts, Least).Untouched.Select(static strip => strip.Number).ToHashSet(),
                        new JoinedStrips(strips, better, conducts, Least).Untouched.Select(static strip => strip.Number).ToHashSet());
                }
            }
        }
    }

    [Property]
    public void It_is_what_a_look_at_every_pair_finds(int seed)
    {
        (ValueList<PlacedStrip> strips, WindowLayout layout) = Scattered(new Random(seed));
        int[] root = [.. Enumerable.Range(0, strips.Count)];
        for (int i = 0; i < strips.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (Shared(strips[i], strips[j], layout.Surface) >= 100)
                {
                    (int from, int to) = (root[i], root[j]);
                    root = [.. root.Select(one => one == from ? to : one)];
                }
            }
        }

        Assert.Equal(root.Distinct().Count(), new JoinedStrips(strips, layout, true, Least).Sets);
    }

    [Property]
    public void A_turn_of_the_windows_changes_nothing(int seed)
    {
        var random = new Random(seed);
        (ValueList<PlacedStrip> strips, WindowLayout layout) = Scattered(random);
        Assert.Equal(
            new JoinedStrips(strips, layout, false, Least).Untouched,
            new JoinedStrips(strips, LayoutCase.Turned(layout, 1), false, Least).Untouched);
    }

    [Fact]
    public void Rings_that_lap_are_one_and_rings_over_film_are_each_their_own()
    {
        StraightPipe pipe = Pipe(168.3, 1000);
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(45), Mm(100), Mm(40), Mm(40))]);
        var plain = new LayContact(new RingLay(pipe, Stock(), Mm(20)), layout);
        JoinedStrips joined = plain.Strips(Least)!;
        Assert.Equal(1, joined.Sets);
        Assert.Empty(joined.Untouched);
        var faced = new LayContact(new RingLay(pipe, new StripStock(Tape(faced: true), Mm(100), Length.FromMeters(30)), Mm(20)), layout);
        JoinedStrips apart = faced.Strips(Least)!;
        Assert.Equal(apart.Strips.Count, apart.Sets);
        Assert.Equal(apart.Strips.Count - 1, apart.Untouched.Count);
        Assert.DoesNotContain(1, apart.Untouched.Select(static strip => strip.Number));
    }

    [Fact]
    public void A_window_under_a_lap_alone_counts_for_neither_strip_over_film_but_for_both_without()
    {
        // Two rings with a lap of 40 mm from 60 to 100 mm: who lies below there is not known.
        StraightPipe pipe = Pipe(168.3, 160);
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(80), Mm(100), Mm(38), Mm(38))]);
        ValueList<PlacedStrip> strips = [new(1, Mm(0), Mm(100), Mm(0), Mm(600), true), new(2, Mm(60), Mm(100), Mm(0), Mm(600), true)];
        Assert.Equal(2, new JoinedStrips(strips, layout, false, Least).Untouched.Count);
        Assert.Empty(new JoinedStrips(strips, layout, true, Least).Untouched);
        Near.Equal(14.44, new JoinedStrips(strips, layout, true, Least).LeastTouched.SquareCentimeters, 1e-12);
    }

    [Fact]
    public void A_later_pass_lies_on_tape_and_touches_only_through_it()
    {
        StraightPipe pipe = Pipe(168.3, 1000);
        var layout = new WindowLayout(new(pipe), [ContactWindow.Rectangle(Mm(500), Mm(100), Mm(50), Mm(50))]);
        var twice = new LayContact(new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(Mm(20)), null, Choices(0, 10, 2)), layout);
        Assert.Empty(twice.Strips(Least)!.Untouched);
        var faced = new LayContact(
            new SpiralLay(pipe, new StripStock(Tape(faced: true), Mm(100), Length.FromMeters(30)), SpiralSetting.FromTrueLap(Mm(20)), null, Choices(0, 10, 2)), layout);
        Assert.Equal([2], faced.Strips(Least)!.Untouched.Select(static strip => strip.Pass));
        Near.Equal(0, faced.Strips(Least)!.LeastTouched.SquareCentimeters, 0);
    }

    [Property]
    public void A_spiral_touches_all_of_a_window(int seed)
    {
        var random = new Random(seed);
        double diameter = 60 + (random.NextDouble() * 500);
        StraightPipe pipe = Pipe(diameter, 2000);
        var lay = new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(Mm(10 + (random.NextDouble() * 35))));
        bool round = random.Next(2) == 0;
        double side = 10 + (random.NextDouble() * 60);
        var shape = round ? WindowShape.Disc(Mm(side)) : WindowShape.Rectangle(Mm(side), Mm(side));
        var layout = new WindowLayout(new(pipe), [shape.At(Mm(50 + (random.NextDouble() * 1800)), Mm(random.NextDouble() * 600))]);
        Near.Equal(layout.BareArea.SquareCentimeters, new JoinedStrips(lay.PlaceStrips(), layout, false, Area.FromSquareMillimeters(1)).LeastTouched.SquareCentimeters, 1e-9);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        var layout = new WindowLayout(new(Pipe()), []);
        Errors.Refused(() => new JoinedStrips([], layout, true, Area.Zero), "leastContact", "0 mm2");
        Errors.Refused(() => new JoinedStrips([], layout, true, Area.FromSquareMeters(2)), "leastContact");
        Assert.Equal(0, new JoinedStrips([], layout, true, Least).Sets);
        ArgumentException other = Assert.Throws<ArgumentException>(() => new LayContact(new RingLay(Pipe(100), Stock(), Mm(20)), layout));
        Assert.Contains("both must be the same surface", other.Message, StringComparison.Ordinal);
    }

    private static (ValueList<PlacedStrip> Strips, WindowLayout Layout) Scattered(Random random)
    {
        UnrolledSurface surface = new(Pipe(50 + (random.NextDouble() * 400), 1000 + (random.NextDouble() * 2000)));
        double girth = surface.Girth.Millimeters;
        int count = random.Next(1, 40);
        PlacedStrip[] strips = [.. Enumerable.Range(1, count).Select(i => random.Next(3) == 0
            ? new PlacedStrip(i, Mm(random.NextDouble() * 2500), Mm(20 + (random.NextDouble() * 100)), Mm(0), Mm(girth + 10), true)
            : new PlacedStrip(i, Mm((random.NextDouble() * 2500) - 100), Mm(20 + (random.NextDouble() * 500)), Mm(random.NextDouble() * girth), Mm(10 + (random.NextDouble() * girth * 0.5)), random.Next(2) == 0))];
        return (new ValueList<PlacedStrip>(strips), LayoutCase.Make(random, surface));
    }

    // Every strip here is an upright rectangle; a ring covers all round.
    private static double Shared(PlacedStrip a, PlacedStrip b, UnrolledSurface surface)
    {
        double length = surface.Length.Millimeters;
        double girth = surface.Girth.Millimeters;
        double x = Math.Min(Math.Min((a.FromAlong + a.ExtentAlong).Millimeters, (b.FromAlong + b.ExtentAlong).Millimeters), length)
            - Math.Max(Math.Max(a.FromAlong.Millimeters, b.FromAlong.Millimeters), 0);
        double best = 0;
        foreach ((double fromA, double longA) in Parts(a, girth))
        {
            foreach ((double fromB, double longB) in Parts(b, girth))
            {
                double one = 0;
                for (int turn = -2; turn <= 2; turn++)
                {
                    one += Math.Max(0, Math.Min(fromA + longA, fromB + longB + (turn * girth)) - Math.Max(fromA, fromB + (turn * girth)));
                }

                best = Math.Max(best, one);
            }
        }

        return Math.Max(0, x) * best;
    }

    private static IEnumerable<(double From, double Long)> Parts(PlacedStrip strip, double girth)
    {
        double from = strip.FromAround.Millimeters;
        double all = strip.ExtentAround.Millimeters;
        yield return (from, Math.Min(girth, all));
        if (all > girth)
        {
            yield return (from, all - girth);
        }
    }
}
