using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 150)]
public sealed class StrapAndWasherStrips
{
    [Property]
    public void Every_spot_of_a_strap_lies_under_a_strip(SpanCase given, bool both, bool wanders)
    {
        double wander = wanders ? 1.5 : 0;
        StrapLay lay = Lay(given, both, Choices(wander));

        // Across the strap: down one narrow edge, over the outer face, down the other, and over the inner face apart.
        int outer = Least(lay.OuterStrips, lay.Strap.StrapWidth.Millimeters + (2 * lay.Strap.StrapThickness.Millimeters), lay.TurnedIn.Millimeters, given.WidthMm, wander);
        int inner = both ? Least(lay.InnerStrips, lay.Strap.StrapWidth.Millimeters, 0, given.WidthMm, wander) : outer;
        Assert.True(Math.Min(outer, inner) >= lay.LayersEverywhere, $"{outer} and {inner} where {lay.LayersEverywhere} were promised.");
        Assert.True(wanders || lay.LayersEverywhere == 1);
        Assert.True(lay.OuterStrips == 1 || lay.OuterLap.Millimeters >= given.LapMm - 1e-6);
    }

    [Property]
    public void Ledgers_close_on_the_faces(SpanCase given, bool both)
    {
        StrapLay lay = Lay(given, both, Choices(0, 10, 2));
        double pieces = lay.Strips.Sum(static strip => strip.Count);
        Near.Equal(
            2 * lay.Strap.Area.SquareMeters * 1e6, lay.Strips.Sum(strip => strip.Cover.Millimeters * strip.Count) * given.WidthMm, 1e-9, absolute: 0.000501 * pieces * given.WidthMm);
        Assert.All(lay.Strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm));
        Assert.Equal(both ? 2 : 1, lay.Strips.Count);
        Assert.True(lay.LayersOnAverage.Ratio >= lay.LayersEverywhere - 1e-6);
    }

    [Property]
    public void More_lap_never_takes_less_strip(SpanCase given) =>
        Assert.True(Lay(given with { LapMm = given.LapMm / 2 }, true, Choices()).OuterStrips <= Lay(given, true, Choices()).OuterStrips);

    [Fact]
    public void A_strap_by_hand()
    {
        // 50 x 6 mm half round a pipe of 168.3 mm: face 50 and edges 6 each, 62 of 100 mm; 19 mm left on each side.
        var strap = new PipeStrap(Mm(168.3), Mm(50), Mm(6), Angle.FromDegrees(180), Mm(120), StrapFaces.Both);
        var lay = new StrapLay(strap, Stock(), Mm(10));
        Assert.Equal((1, 1), (lay.OuterStrips, lay.InnerStrips));
        Near.Equal(19, lay.TurnedIn.Millimeters, 1e-12);
        Assert.Equal([25.0, 75.0], lay.Folds.Select(static fold => fold.Position.Millimeters));
        Near.Equal((90.15 * Math.PI) + 120, lay.Strips[0].Length.Millimeters, 0, absolute: 0.000501);
        Near.Equal((84.15 * Math.PI) + 120, lay.Strips[1].Length.Millimeters, 0, absolute: 0.000501);
        Near.Equal(0.5, lay.Strips[1].Trim.Millimeters / lay.Strips[1].Length.Millimeters, 1e-5);

        // Circles of 84.15 and 90.15 mm radius.
        Near.Equal(1 - (84.15 / 90.15), lay.Pucker.Fraction, 1e-12);
        Assert.Equal(RuleIds.MaximumPucker, Assert.Single(lay.Judge(RuleSet.Default, "K-1")).Rule.Id);
        Near.Equal(0, lay.SmallestFoldRadius.Millimeters, 0);
    }

    [Fact]
    public void A_strap_all_round_laps_on_itself()
    {
        var strap = new PipeStrap(Mm(1000), Mm(150), Mm(4), Angle.FromDegrees(360), Mm(0), StrapFaces.Outer);
        var lay = new StrapLay(strap, Stock(), Mm(5), Choices(0, 5));
        Near.Equal((1008 * Math.PI) + 5, lay.Strips[0].Length.Millimeters, 0, absolute: 0.000501);
        Assert.Equal(StripCourse.RoundWithEndLap, lay.Course);
        Assert.Equal([RuleIds.MinimumEndLap], lay.Judge(RuleSet.Default, "K-1").Select(static finding => finding.Rule.Id));
        Errors.Refused(() => new StrapLay(strap, Stock(), Mm(100)), "leastLap", "less than the strip is wide");
    }

    [Property]
    public void Washers_enter_the_rolls_whole(SpanCase given, byte many)
    {
        double size = Math.Max(2, given.WidthMm / 4);
        var washer = new Washer(Mm(size), Mm(size / 2), 1 + (many * 7));
        double piece = Math.Min(9e6, size + given.SpanMm);
        ValueList<Strip> strips = WasherStrips.For(washer, Stock(Math.Max(given.WidthMm, size)), Mm(piece), Mm(1));
        double width = strips[0].Stock.Width.Millimeters;
        Near.Equal(washer.Area.SquareMeters * 1e6, strips.Sum(strip => strip.Cover.Millimeters * strip.Count) * width, 1e-9, absolute: 0.000501 * strips.Sum(static strip => strip.Count) * width);
        Assert.All(strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.TrimUm));
        Assert.All(strips, static strip => Assert.Equal(StripPurpose.Washer, strip.Purpose));
        long cut = strips.Sum(strip => strip.Count * new WasherCutting(washer, strip.Stock.Width, strip.Length, Mm(1)).Count);
        Assert.True(cut >= washer.Count, $"{cut} washers of {washer.Count}.");

        // A micrometre less of the last piece would yield too few.
        Strip last = strips[^1];
        if (last.Count == 1 && last.Length.Millimeters > size + 0.002)
        {
            Assert.True(cut - new WasherCutting(washer, last.Stock.Width, last.Length, Mm(1)).Count
                + new WasherCutting(washer, last.Stock.Width, last.Length - Mm(0.0011), Mm(1)).Count < washer.Count || last.Length.Millimeters >= piece - 1e-3);
        }
    }

    [Fact]
    public void Washers_by_hand()
    {
        // 50 mm washers from 100 mm strip: 2 rows of 20 a metre. 90 of them: two pieces of a metre and 10 in 5 x 50 mm.
        ValueList<Strip> strips = WasherStrips.For(new Washer(Mm(50), Mm(20), 90), Stock(), Length.FromMeters(1));
        Assert.Equal([(2, 1000.0), (1, 250.0)], strips.Select(static strip => (strip.Count, strip.Length.Millimeters)));
        Near.Equal(40 * Math.PI / 4 * (2500 - 400) / 100, strips[0].Cover.Millimeters, 0, absolute: 0.000501);
        Assert.Equal(1, Assert.Single(StripTakeOff.Of([.. strips], Make.TakeOff()).Stocks).Rolls);
        Errors.Refused(static () => WasherStrips.For(new Washer(Mm(50), Mm(20)), Stock(40), Mm(1000)), "stock", "40 mm is outside", "at least 50 mm");
        Errors.Refused(static () => WasherStrips.For(new Washer(Mm(50), Mm(20)), Stock(), Mm(40)), "pieceLength", "40 mm is outside", "at least 50 mm");
    }

    private static StrapLay Lay(SpanCase given, bool both, LayChoices choices)
    {
        var strap = new PipeStrap(Mm(20 + given.WidthMm), Mm(Math.Max(1, Math.Min(given.SpanMm, 20_000))), Mm(6), Angle.FromDegrees(200), Mm(given.LapMm), both ? StrapFaces.Both : StrapFaces.Outer);
        return new StrapLay(strap, Stock(given.WidthMm), Mm(given.LapMm), choices);
    }

    // Strips side by side from the beginning of the span to its end, or one over its middle; every other one laid off.
    private static int Least(int strips, double span, double over, double width, double wander)
    {
        if (strips == 1)
        {
            return width >= span + (2 * over) - 1e-6 ? 1 : 0;
        }

        double spacing = (span - width) / (strips - 1);
        int least = int.MaxValue;
        for (int i = 0; i < strips; i++)
        {
            foreach (double spot in new[] { i * spacing, (i * spacing) + 1e-3, (i * spacing) - 1e-3, (i * spacing) + width, (i * spacing) + width + 1e-3 })
            {
                if (spot < 0 || spot > span)
                {
                    continue;
                }

                // The outermost strips are held at the edges of the span, so the odd ones in between move.
                int count = Enumerable.Range(0, strips).Count(k =>
                {
                    double start = (k * spacing) + (k % 2 == 1 && k < strips - 1 ? wander : 0);
                    return spot >= start - 1e-6 && spot <= start + width + 1e-6;
                });
                least = Math.Min(least, count);
            }
        }

        return least;
    }
}
