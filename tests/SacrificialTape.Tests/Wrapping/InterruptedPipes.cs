using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// A pipe with bands, drawn whole: every strip at its place on the whole pipe, spot by spot. The spans are covered as
/// promised and on the bands lies nothing.
/// </summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 30)]
public sealed class InterruptedPipes
{
    [Property]
    public void Rings_cover_the_spans_and_nothing_else(SpanCase given, byte seed)
    {
        InterruptedPipe pipe = With(219.1, given.SpanMm, seed);
        var lay = InterruptedLay.Of(pipe, span => new RingLay(span, Stock(given.WidthMm), Mm(given.LapMm), Choices(0, 0)));
        var drawn = new UnrolledPipe(219.1 * Math.PI, pipe.Pipe.Length.Millimeters);
        int rings = 0;
        for (int i = 0; i < pipe.Spans.Count; i++)
        {
            var one = (RingLay)lay.Spans[i];
            Draw(drawn, pipe.Spans[i], one, one.Rings);
            rings += one.Rings;
        }

        Assert.Equal(rings, lay.Strips.Sum(static strip => strip.Count));
        Look(drawn, pipe, lay, seed, given.WidthMm);
    }

    [Property]
    public void Strips_along_cover_the_spans_and_nothing_else(SpanCase given, byte seed)
    {
        InterruptedPipe pipe = With(given.SpanMm / Math.PI, 900, seed);
        var lay = InterruptedLay.Of(pipe, span => new AlongPipeLay(span, Stock(given.WidthMm), Mm(given.LapMm), Choices()));
        var drawn = new UnrolledPipe(given.SpanMm, pipe.Pipe.Length.Millimeters);
        for (int i = 0; i < pipe.Spans.Count; i++)
        {
            var one = (AlongPipeLay)lay.Spans[i];
            for (int k = 0; k < one.StripsRound; k++)
            {
                drawn.Along(k * given.SpanMm / one.StripsRound, given.WidthMm, pipe.Spans[i].From.Millimeters, one.Strips[0].Length.Millimeters);
            }
        }

        Look(drawn, pipe, lay, seed, given.WidthMm);
    }

    [Property]
    public void Spirals_between_level_turns_cover_the_spans_and_nothing_else(SpiralCase given, byte seed)
    {
        InterruptedPipe pipe = With(given.DiameterMm, given.HeightMm, seed);
        var lay = InterruptedLay.Of(pipe, span => new SpiralLay(span, Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), SpiralEnds.LevelTurns(), Choices(0, 0)));
        var drawn = new UnrolledPipe(given.CircumferenceMm, pipe.Pipe.Length.Millimeters);
        for (int i = 0; i < pipe.Spans.Count; i++)
        {
            var one = (SpiralLay)lay.Spans[i];
            drawn.Wind(0, pipe.Spans[i].From.Millimeters, one.Strips[0].Length.Millimeters, given.WidthMm, one.Geometry.Advance.Millimeters);
            drawn.Ring(pipe.Spans[i].From.Millimeters, given.WidthMm);
            drawn.Ring(pipe.Spans[i].To.Millimeters - given.WidthMm, given.WidthMm);
        }

        Assert.Equal(2 * pipe.Spans.Count, lay.Strips.Where(static strip => strip.Purpose == StripPurpose.LevelTurn).Sum(static strip => strip.Count));
        Look(drawn, pipe, lay, seed, given.WidthMm);
    }

    [Property]
    public void Flush_spirals_have_the_trim_of_every_end(SpiralCase given, byte seed)
    {
        InterruptedPipe pipe = With(given.DiameterMm, given.HeightMm, seed);
        var lay = InterruptedLay.Of(pipe, span => new SpiralLay(span, Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), null, Choices()));
        double tape = lay.Strips.Sum(static strip => (strip.Length.Millimeters - strip.Trim.Millimeters) * strip.Count) * given.WidthMm;
        double advance = lay.Spans.OfType<SpiralLay>().First().Geometry.Advance.Millimeters;

        // By the parallelogram: what stays of a slanted strip is its width over the advance of one turn, as often as it goes round.
        double angle = Math.Atan(advance / given.CircumferenceMm);
        double expected = pipe.Area.SquareMeters * 1e6 * given.WidthMm / (advance * Math.Cos(angle));
        Near.Equal(expected, tape, 1e-5);
        Near.Equal(
            pipe.Spans.Count * given.WidthMm / Math.Tan(angle), lay.Strips.Sum(static strip => strip.Trim.Millimeters * strip.Count), 1e-5, absolute: 0.01);
        Assert.Equal(lay.Spans.Min(static span => span.LayersEverywhere), lay.LayersEverywhere);
    }

    [Fact]
    public void The_look_sees_a_ring_too_few_and_a_ring_on_a_band()
    {
        InterruptedPipe pipe = With(219.1, 1000, 7);
        var lay = InterruptedLay.Of(pipe, static span => new RingLay(span, Stock(), Mm(20), Choices(0, 0)));
        UnrolledPipe Drawn(int fewer)
        {
            var drawn = new UnrolledPipe(219.1 * Math.PI, pipe.Pipe.Length.Millimeters);
            for (int i = 0; i < pipe.Spans.Count; i++)
            {
                Draw(drawn, pipe.Spans[i], (RingLay)lay.Spans[i], ((RingLay)lay.Spans[i]).Rings - fewer);
            }

            return drawn;
        }

        Look(Drawn(0), pipe, lay, 7, 100);
        Assert.NotNull(Record.Exception(() => Look(Drawn(1), pipe, lay, 7, 100)));
        UnrolledPipe stray = Drawn(0);
        stray.Ring(pipe.Spans[0].To.Millimeters - 50, 100);
        Assert.NotNull(Record.Exception(() => Look(stray, pipe, lay, 7, 100)));
    }

    [Property]
    public void A_band_of_next_to_nothing_at_an_end_changes_next_to_nothing(SpanCase given)
    {
        StraightPipe whole = Pipe(168.3, given.SpanMm + 1e-3);
        var pipe = new InterruptedPipe(whole, [StayClear.Band(StayClearKind.FlangedJoint, Mm(1e-3), 1, Mm(0)).At(Mm(given.SpanMm + 0.5e-3))]);
        var lay = InterruptedLay.Of(pipe, span => new RingLay(span, Stock(given.WidthMm), Mm(given.LapMm)));
        var plain = new RingLay(Pipe(168.3, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm));
        Assert.InRange(lay.Strips.Sum(static strip => strip.Count), plain.Rings - 1, plain.Rings + 1);
        Assert.Equal(plain.LayersEverywhere, lay.LayersEverywhere);
    }

    [Fact]
    public void Like_strips_of_all_spans_are_cut_as_one_kind()
    {
        var pipe = new InterruptedPipe(Pipe(168.3, 10_000), [StayClear.Band(StayClearKind.FlangedJoint, Mm(400), 3)]);
        var lay = InterruptedLay.Of(pipe, static span => new RingLay(span, Stock(), Mm(20)));
        Strip strip = Assert.Single(lay.Strips);

        // Four spans of (10 000 - 3 x 500) / 4 = 2125 mm: ceil(2105 / 80) = 27 rings each.
        Assert.Equal(4 * 27, strip.Count);
        Assert.Equal(StripCourse.RoundWithEndLap, lay.Course);
        Assert.Contains("From 0.000 to 2.125 m, from 2.625 to 4.750 m, from 5.250 to 7.375 m, from 7.875 to 10.000 m: Lay 27 rings", lay.Instruction, StringComparison.Ordinal);
        Assert.StartsWith("4 span(s) between bands that stay clear: 4 times 27 ring(s)", lay.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Lays_that_do_not_fit_the_spans_are_refused()
    {
        var pipe = new InterruptedPipe(Pipe(168.3, 10_000), [StayClear.Band(StayClearKind.FlangedJoint, Mm(400))]);
        ILay right = new RingLay(pipe.Spans[0].Pipe, Stock(), Mm(20));
        Assert.Contains("2 span(s), but 1 lay(s)", Assert.Throws<ArgumentException>(() => new InterruptedLay(pipe, [right])).Message, StringComparison.Ordinal);
        Assert.Contains("Lay 2 is on pipe 168.3 mm, 12 m long", Assert.Throws<ArgumentException>(() => new InterruptedLay(pipe, [right, new RingLay(Pipe(), Stock(), Mm(20))])).Message, StringComparison.Ordinal);
        Assert.Contains("Lay 2 is of 0.1 x 50 mm", Assert.Throws<ArgumentException>(() => new InterruptedLay(pipe, [right, new RingLay(pipe.Spans[0].Pipe, Stock(50), Mm(20))])).Message, StringComparison.Ordinal);
    }

    // Bands of several widths at uneven places, one of them at an end when the seed says so.
    private static InterruptedPipe With(double diameter, double spanMm, byte seed)
    {
        var random = new Random(seed);
        var bands = new List<StayClear>();
        double at = seed % 3 == 0 ? 0 : spanMm;
        int count = 1 + (seed % 3);
        for (int i = 0; i < count; i++)
        {
            double length = 20 + random.Next(400);
            double margin = random.Next(100);
            at += (length / 2) + margin;
            bands.Add(StayClear.Band(StayClearKind.FlangedJoint, Mm(length), 1, Mm(margin)).At(Mm(at)));
            at += (length / 2) + margin + (spanMm * (1 + random.NextDouble()));
        }

        return new InterruptedPipe(Pipe(diameter, at), new ValueList<StayClear>(bands));
    }

    private static void Draw(UnrolledPipe drawn, PipeSpan span, RingLay lay, int rings)
    {
        double width = lay.Stock.Width.Millimeters;
        if (lay.Rings == 1)
        {
            // What of a single ring stands over the span is cut off.
            drawn.Ring(span.From.Millimeters, rings * Math.Min(width, span.Pipe.Length.Millimeters));
            return;
        }

        for (int i = 0; i < rings; i++)
        {
            drawn.Ring(span.From.Millimeters + (i * (width - lay.Lap.Millimeters)), width);
        }
    }

    private static void Look(UnrolledPipe drawn, InterruptedPipe pipe, InterruptedLay lay, byte seed, double width)
    {
        var random = new Random(seed);
        int least = int.MaxValue;
        foreach (PipeSpan span in pipe.Spans)
        {
            double from = span.From.Millimeters;
            double to = span.To.Millimeters;
            IEnumerable<double> heights = new[] { from, from + 0.01, from + 1, from + width, from + width + 0.01, to - width, to - width - 0.01, to - 1, to - 0.01, to }
                .Concat(Enumerable.Range(0, 60).Select(_ => from + (random.NextDouble() * (to - from))))
                .Concat(lay.Spans[0] is RingLay { Rings: > 1 and < 100 } rings
                    ? Enumerable.Range(0, rings.Rings).Select(i => from + (i * (width - rings.Lap.Millimeters)))
                    : [])
                .Where(z => z >= from && z <= to);
            foreach (double z in heights)
            {
                for (int i = 0; i < 16; i++)
                {
                    least = Math.Min(least, drawn.Over((i + random.NextDouble()) / 16 * drawn.Circumference, z, true));
                }
            }
        }

        Assert.True(least >= 1 && least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
        double[] edges = [0, .. pipe.Spans.SelectMany(static span => new[] { span.From.Millimeters, span.To.Millimeters }), pipe.Pipe.Length.Millimeters];
        for (int i = 0; i < edges.Length; i += 2)
        {
            double from = edges[i];
            double to = edges[i + 1];
            if (to - from < 0.02)
            {
                continue;
            }

            foreach (double share in new[] { 0, 0.001, 0.25, 0.5, 0.75, 0.999, 1, random.NextDouble(), random.NextDouble() })
            {
                double z = Math.Clamp(from + (share * (to - from)), from + 0.003, to - 0.003);
                for (int k = 0; k < 16; k++)
                {
                    Assert.Equal(0, drawn.Over((k + random.NextDouble()) / 16 * drawn.Circumference, z, false));
                }
            }
        }
    }
}
