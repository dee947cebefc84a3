using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>An exact half, third or quarter lap neither gains nor loses a strip or a layer by rounding.</summary>
public sealed class ExactShares
{
    public static TheoryData<int> Shares => [2, 3, 4, 5, 6];

    [Theory]
    [MemberData(nameof(Shares))]
    public void Of_a_spiral_give_exactly_that_many_layers(int n)
    {
        StraightPipe pipe = Pipe(610, 3000);
        for (int tenths = 100; tenths <= 3000; tenths += 7)
        {
            double width = tenths / 10.0;
            foreach (double lap in new[] { width - (width / n), width * (n - 1) / n, (double)((decimal)width * (n - 1) / n) })
            {
                Assert.Equal(n, new SpiralLay(pipe, Stock(width), SpiralSetting.FromTrueLap(Mm(lap)), null, Choices()).LayersEverywhere);
            }

            // Half a hair less lap is one layer less.
            Assert.Equal(n - 1, new SpiralLay(pipe, Stock(width), SpiralSetting.FromTrueLap(Mm((width * (n - 1) / n) - 1e-5)), null, Choices()).LayersEverywhere);
        }
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Of_a_ring_fill_the_pipe_with_exactly_that_many(int n)
    {
        for (int tenths = 100; tenths <= 3000; tenths += 7)
        {
            double width = tenths / 10.0;
            double lap = width * (n - 1) / n;
            foreach (int rings in new[] { 2, 3, 7, 10, 100, 999 })
            {
                double height = (rings * (width - lap)) + lap;
                var lay = new RingLay(Pipe(168.3, height), Stock(width), Mm(lap), Choices());
                Assert.Equal(rings, lay.Rings);
                Near.Equal(lap, lay.Lap.Millimeters, 1e-8);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Of_a_strip_along_close_the_circumference_with_exactly_that_many(int n)
    {
        for (int tenths = 100; tenths <= 3000; tenths += 7)
        {
            double width = tenths / 10.0;
            double lap = width * (n - 1) / n;
            foreach (int strips in new[] { n, 7, 10, 100 })
            {
                var lay = new AlongPipeLay(Pipe(strips * (width - lap) / Math.PI, 1000), Stock(width), Mm(lap), Choices());
                Assert.Equal(strips, lay.StripsRound);
                Assert.Equal(n, lay.LayersEverywhere);
            }
        }
    }
}
