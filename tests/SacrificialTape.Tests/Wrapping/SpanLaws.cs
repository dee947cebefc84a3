using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Rings and strips along: no fewer would do, none too many, laps equal and never less than asked.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 500)]
public sealed class SpanLaws
{
    [Property]
    public void Rings_close_the_pipe_with_the_lap_asked_and_one_fewer_would_not(SpanCase given)
    {
        var lay = new RingLay(Pipe(168.3, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), Choices());
        double n = lay.Rings;
        double lap = lay.Lap.Millimeters;
        if (lay.Rings == 1)
        {
            Assert.True(given.SpanMm <= given.WidthMm + 1e-9);
            return;
        }

        Assert.True(lap >= given.LapMm - (1e-9 * given.SpanMm));
        Near.Equal(given.SpanMm, (n * given.WidthMm) - ((n - 1) * lap), 1e-11);
        Assert.True(((n - 1) * given.WidthMm) - ((n - 2) * given.LapMm) < given.SpanMm + (1e-9 * given.SpanMm));
    }

    [Property]
    public void Strips_along_close_the_circumference_with_the_lap_asked_and_one_fewer_would_not(SpanCase given)
    {
        var lay = new AlongPipeLay(Pipe(given.SpanMm / Math.PI, 1000), Stock(given.WidthMm), Mm(given.LapMm), Choices());
        double n = lay.StripsRound;
        double lap = lay.Lap.Millimeters;
        Assert.True(lap >= given.LapMm - (1e-9 * given.SpanMm));
        Near.Equal(given.SpanMm, n * (given.WidthMm - lap), 1e-11);
        Assert.True((n - 1) * (given.WidthMm - given.LapMm) < given.SpanMm);
    }

    [Property]
    public void Strips_of_rings_add_up(SpanCase given)
    {
        var lay = new RingLay(Pipe(168.3, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), Choices(0, 12, 3));
        Strip ring = lay.Strips.Single();
        Assert.Equal(3 * lay.Rings, ring.Count);
        Near.Equal((Math.PI * 168.3) + 12, ring.Length.Millimeters, 0, absolute: 0.000501);
        Assert.Equal(ring.LengthUm, ring.CoverUm + ring.LapUm + ring.TrimUm);
        Assert.True(ring.LapUm >= 0);
        Near.Equal(Math.PI * 168.3 * given.SpanMm * 3, ring.Cover.Millimeters * ring.Count * given.WidthMm, 1e-9, absolute: 0.000501 * ring.Count * given.WidthMm);
    }

    [Fact]
    public void A_lap_that_leaves_next_to_no_strip_is_refused_where_the_count_has_no_end()
    {
        ArgumentOutOfRangeException rings = Assert.Throws<ArgumentOutOfRangeException>(static () =>
            new RingLay(Pipe(168.3, 1e9), Stock(100), Mm(99.9999), Choices(0, 10, 20)));
        Assert.Equal("leastLap", rings.ParamName);
        ArgumentOutOfRangeException along = Assert.Throws<ArgumentOutOfRangeException>(static () =>
            new AlongPipeLay(Pipe(100_000, 1000), Stock(100), Mm(99.999999), Choices(0, 10, 20)));
        Assert.Equal("leastLap", along.ParamName);
    }
}
