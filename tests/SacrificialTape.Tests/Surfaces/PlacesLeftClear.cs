using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

/// <summary>What stays clear: its area, and the spans that bands leave.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 100)]
public sealed class PlacesLeftClear
{
    [Fact]
    public void Spots_grow_by_their_margin()
    {
        Near.Equal(3 * 0.12 * 0.07, StayClear.Spot(StayClearKind.NamePlate, Mm(100), Mm(50), 3, Mm(10)).SpotArea!.Value.SquareMeters, 1e-14);
        Near.Equal(2 * Math.PI * 0.05 * 0.05 / 4, StayClear.RoundSpot(StayClearKind.WeepHole, Mm(10), 2, Mm(20)).SpotArea!.Value.SquareMeters, 1e-14);
        Assert.Null(StayClear.Band(StayClearKind.FlangedJoint, Mm(100)).SpotArea);
        Assert.Null(StayClear.RoundSpot(StayClearKind.WeepHole, Mm(10)).BandLength);
    }

    [Fact]
    public void A_round_spot_has_the_area_of_the_squares_it_holds()
    {
        // Counted on a grid, without pi.
        StayClear spot = StayClear.RoundSpot(StayClearKind.InspectionPoint, Mm(60), 1, Mm(15));
        const int Side = 900;
        int inside = 0;
        for (int i = 0; i < Side * Side; i++)
        {
            double x = ((i % Side) + 0.5) / Side * 90 - 45;
            double y = ((i / Side) + 0.5) / Side * 90 - 45;
            inside += Math.Sqrt((x * x) + (y * y)) - 30 <= 15 ? 1 : 0;
        }

        Near.Equal(inside * 0.09 * 0.09 / Side / Side, spot.SpotArea!.Value.SquareMeters, 1e-3);
    }

    [Theory]
    [InlineData(StayClearKind.IsolatingJoint, 100)]
    [InlineData(StayClearKind.EarthBond, 50)]
    [InlineData(StayClearKind.WeepHole, 20)]
    [InlineData(StayClearKind.InspectionPoint, 50)]
    [InlineData(StayClearKind.NamePlate, 10)]
    [InlineData(StayClearKind.FlangedJoint, 50)]
    [InlineData(StayClearKind.MovingPart, 30)]
    public void The_margin_is_that_of_the_rules_unless_stated(StayClearKind kind, double margin)
    {
        StayClear band = StayClear.Band(kind, Mm(10));
        Assert.Equal(margin, band.Margin.Millimeters);
        Assert.Empty(band.Judge(RuleSet.Default, "A"));
        Finding narrow = Assert.Single(StayClear.Band(kind, Mm(10), 1, Mm(margin - 1)).Judge(RuleSet.Default, "A"));
        Assert.Equal(new Measure(margin, TradeUnit.Millimeter), narrow.Limit);
        Assert.Equal(BasisKind.Judgement, narrow.Rule.Basis.Kind);
    }

    [Fact]
    public void An_isolating_joint_that_is_no_band_stops_the_work()
    {
        Finding bridged = Assert.Single(StayClear.RoundSpot(StayClearKind.IsolatingJoint, Mm(100)).Judge(RuleSet.Default, "A"));
        Assert.Equal((RuleIds.IsolatingJointBridged, Severity.Stop), (bridged.Rule.Id, bridged.Severity));
    }

    [Property]
    public void Spans_and_bands_are_the_pipe(SpanCase given, byte bands, byte margin)
    {
        int count = 1 + (bands % 4);
        double clear = count * (given.WidthMm + (2 * margin));
        StraightPipe whole = Pipe(168.3, clear + given.SpanMm);
        var pipe = new InterruptedPipe(whole, [StayClear.Band(StayClearKind.FlangedJoint, Mm(given.WidthMm), count, Mm(margin))]);
        Assert.Equal(count + 1, pipe.Spans.Count);
        Assert.All(pipe.Spans, span => Near.Equal(given.SpanMm / (count + 1), span.Pipe.Length.Millimeters, 1e-9));
        Assert.All(pipe.Spans, span => Near.Equal(span.Pipe.Length.Millimeters, span.To.Millimeters - span.From.Millimeters, 1e-9, absolute: 1e-9 * whole.Length.Millimeters));
        Near.Equal(whole.Area.SquareMeters, pipe.Area.SquareMeters + pipe.ClearArea.SquareMeters, 1e-12);
        Near.Equal(pipe.Area.SquareMeters, pipe.Spans.Sum(static span => span.Pipe.Area.SquareMeters), 1e-9);

        // The same bands at the places where equal spans put them, in any order.
        IEnumerable<StayClear> placed = pipe.Spans.Take(count)
            .Select(span => StayClear.Band(StayClearKind.FlangedJoint, Mm(given.WidthMm), 1, Mm(margin)).At(span.To + Mm((given.WidthMm / 2) + margin)));
        var again = new InterruptedPipe(whole, new ValueList<StayClear>(placed.Reverse()));
        Assert.Equal(pipe.Spans.Count, again.Spans.Count);
        Assert.All(pipe.Spans.Zip(again.Spans), pair => Near.Equal(pair.First.From.Millimeters, pair.Second.From.Millimeters, 1e-9, absolute: 1e-9 * whole.Length.Millimeters));
    }

    [Fact]
    public void Bands_may_touch_each_other_and_the_ends()
    {
        static StayClear At(double mm) => StayClear.Band(StayClearKind.FlangedJoint, Mm(100), 1, Mm(50)).At(Mm(mm));
        var pipe = new InterruptedPipe(Pipe(168.3, 3000), [At(100), At(300.1), At(500.1), At(2900)]);
        Assert.Equal(["0.200 to 0.200 m", "0.600 to 2.800 m"], pipe.Spans.Select(static span => span.ToString()));
        Assert.Equal("0.400 to 3.000 m", Assert.Single(new InterruptedPipe(Pipe(168.3, 3000), [At(300), At(100)]).Spans).ToString());
    }

    [Fact]
    public void Bad_places_are_refused()
    {
        static StayClear Band(double length = 100, int count = 1) => StayClear.Band(StayClearKind.FlangedJoint, Mm(length), count, Mm(50));
        Errors.Refused(static () => StayClear.Spot(StayClearKind.WeepHole, Mm(0), Mm(1)), "width", "0 mm", "more than 0 and at most 100000 mm");
        Errors.Refused(static () => StayClear.Spot(StayClearKind.WeepHole, Mm(1), Mm(-1)), "height", "-1 mm");
        Errors.Refused(static () => StayClear.RoundSpot(StayClearKind.WeepHole, Mm(1e6)), "diameter", "1000000 mm");
        Errors.Refused(static () => StayClear.Band(StayClearKind.WeepHole, Mm(1e6)), "length", "1000000 mm");
        Errors.Refused(static () => StayClear.Band(StayClearKind.WeepHole, Mm(1), 0), "count", "0", "at least 1");
        Errors.Refused(static () => StayClear.Band(StayClearKind.WeepHole, Mm(1), 1, Mm(-1)), "margin", "-1 mm", "at least 0 and at most 10000 mm");
        Errors.Refused(static () => StayClear.Band((StayClearKind)99, Mm(1)), "kind", "Not a kind");
        Errors.Refused(static () => StayClear.Band((StayClearKind)99, Mm(1), 1, Mm(1)), "kind", "Not a kind");
        Errors.Refused(static () => Band().At(Mm(-1)), "middle", "-1 mm");
        Assert.Contains("list them one by one", Assert.Throws<InvalidOperationException>(static () => Band(100, 2).At(Mm(1))).Message, StringComparison.Ordinal);
        Assert.Contains("Only a band", Assert.Throws<InvalidOperationException>(static () => StayClear.RoundSpot(StayClearKind.WeepHole, Mm(3)).At(Mm(1))).Message, StringComparison.Ordinal);
        Errors.Refused(static () => new InterruptedPipe(Pipe(100, 400), [Band(100, 2)]), "bands", "400 mm", "less than 400 mm", "shorter than the pipe");
        Assert.Contains("no band", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(), [])).Message, StringComparison.Ordinal);
        Assert.Contains("Not a band: 1 weep hole(s), round 3 mm", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(), [StayClear.RoundSpot(StayClearKind.WeepHole, Mm(3))])).Message, StringComparison.Ordinal);
        Assert.Contains("Some bands have a place", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(), [Band(), Band().At(Mm(500))])).Message, StringComparison.Ordinal);
        Assert.Contains("begins at -1 mm, where the pipe has not begun", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(), [Band().At(Mm(99))])).Message, StringComparison.Ordinal);
        Assert.Contains("begins at 250 mm, where the one before it goes to 300 mm", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(), [Band().At(Mm(200)), Band().At(Mm(350))])).Message, StringComparison.Ordinal);
        Assert.Contains("past the end of the pipe at 1000 mm", Assert.Throws<ArgumentException>(static () => new InterruptedPipe(Pipe(100, 1000), [Band().At(Mm(901))])).Message, StringComparison.Ordinal);
    }
}
