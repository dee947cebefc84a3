using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Two spirals of opposite hand, counted on the unrolled pipe.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 20)]
public sealed class SpiralPairs
{
    [Property]
    public void Every_spot_lies_under_the_layers_of_both_and_some_under_no_more(SpiralCase given, byte seed)
    {
        double wider = Math.Round(given.WidthMm * 0.8, 1);
        SpiralLay first = Lay(given, given.WidthMm, given.TrueLapMm);
        SpiralLay second = Lay(given, wider, Math.Max(wider * seed / 300, wider - (0.9 * given.CircumferenceMm)));
        var lay = new SpiralPairLay(first, second);
        Assert.Equal(first.LayersEverywhere + second.LayersEverywhere, lay.LayersEverywhere);
        Near.Equal(first.LayersOnAverage.Ratio + second.LayersOnAverage.Ratio, lay.LayersOnAverage.Ratio, 1e-12);
        Assert.Equal(first.Strips.Concat(second.Strips), lay.Strips);
        var random = new Random(seed);
        int least = int.MaxValue;
        int leastInside = int.MaxValue;
        for (int i = 0; i < 6000; i++)
        {
            double x = random.NextDouble() * given.CircumferenceMm;
            double z = random.NextDouble() * given.HeightMm;
            least = Math.Min(least, Over(given, first, x, z, 1e-3) + Over(given, second, -x, z, 1e-3));
            leastInside = Math.Min(leastInside, Over(given, first, x, z, -1e-3) + Over(given, second, -x, z, -1e-3));
        }

        Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
        double[] shares = [first.Geometry.LayersOnAverage.Ratio % 1, second.Geometry.LayersOnAverage.Ratio % 1];
        if (shares.All(static share => share < 0.9))
        {
            // Both are at their least over a tenth of the pipe or more: where they cross, both at once.
            Assert.True(leastInside <= lay.LayersEverywhere);
        }
    }

    [Property]
    public void Two_alike_make_twice_the_layers_and_the_strip_of_two_passes(SpiralCase given)
    {
        SpiralLay one = Lay(given, given.WidthMm, given.TrueLapMm);
        var pair = new SpiralPairLay(one, one);
        var passes = new SpiralLay(one.Pipe, one.Stock, one.Geometry.Setting, null, Choices(0, 10, 2));
        Assert.Equal(passes.LayersEverywhere, pair.LayersEverywhere);
        Near.Equal(passes.Strips.Sum(static strip => strip.TotalLength.Millimeters), pair.Strips.Sum(static strip => strip.TotalLength.Millimeters), 1e-12);
    }

    [Fact]
    public void Crews_are_told_the_hand_and_where_to_begin()
    {
        var one = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)));
        var pair = new SpiralPairLay(one, one, SpiralHand.Left, true);
        Assert.Equal(SpiralHand.Right, pair.SecondHand);
        Assert.True(
            pair.Instruction.IndexOf("left hand: turn anticlockwise", StringComparison.Ordinal) < pair.Instruction.IndexOf("right hand: turn clockwise", StringComparison.Ordinal));
        Assert.Contains("begun at the other end", pair.Instruction, StringComparison.Ordinal);
        Assert.Contains("begun at the same end", new SpiralPairLay(one, one).Instruction, StringComparison.Ordinal);
        Assert.Contains("no stagger", pair.Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_name_the_spiral()
    {
        var tight = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(5)));
        var good = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)));
        Finding said = new SpiralPairLay(good, tight).Judge(RuleSet.Default, "P").Single();
        Assert.Contains("P (second spiral)", said.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_pipe_or_another_tape_is_refused()
    {
        var one = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)));
        Assert.Throws<ArgumentException>(() => new SpiralPairLay(one, new SpiralLay(Pipe(114.3), Stock(), SpiralSetting.FromTrueLap(Mm(20)))));
        Assert.Throws<ArgumentException>(() => new SpiralPairLay(one, new SpiralLay(Pipe(), Stock(100, 30, 0.2), SpiralSetting.FromTrueLap(Mm(20)))));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpiralPairLay(one, one, (SpiralHand)7));
    }

    private static SpiralLay Lay(SpiralCase given, double width, double lap) =>
        new(Pipe(given.DiameterMm, given.HeightMm), Stock(width), SpiralSetting.FromTrueLap(Mm(lap)), null, Choices());

    // Turns of an endless right-hand band over a spot of the unrolled pipe; a left-hand one is its mirror image.
    private static int Over(SpiralCase given, SpiralLay lay, double x, double z, double edge)
    {
        double advance = lay.Geometry.Advance.Millimeters;
        double cosine = given.CircumferenceMm / Math.Sqrt((given.CircumferenceMm * given.CircumferenceMm) + (advance * advance));
        double height = (lay.Stock.Width.Millimeters + (2 * edge)) / cosine;
        double above = (z - (advance * x / given.CircumferenceMm) + edge) % advance;
        above = above < 0 ? above + advance : above;
        return (int)Math.Floor((height - above) / advance) + (above <= height ? 1 : 0);
    }
}
