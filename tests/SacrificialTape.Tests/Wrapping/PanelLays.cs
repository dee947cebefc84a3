using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips on panels: cover proved spot by spot, openings and all; ledgers close; limits hold.</summary>
[Properties(Arbitrary = [typeof(PanelCases)], MaxTest = 100)]
public sealed class PanelLays
{
    [Property]
    public void Every_spot_of_steel_lies_under_as_many_strips_as_promised_and_some_under_no_more(PanelCase given)
    {
        PanelLay lay = given.Lay();
        StripPlace[] places = [.. lay.Places()];
        Assert.Equal(1, lay.LayersEverywhere);
        Assert.Equal(1, FaceSpots.Of(given, lay).Least(places, given.StripMm, 0, new Random(given.Seed)));
    }

    [Property]
    public void Wander_up_to_the_allowance_leaves_the_promise_standing(PanelCase given)
    {
        double wander = given.StripMm * (given.Seed % 40) / 100;
        PanelLay lay = given.Lay(Choices(wander));
        StripPlace[] places = [.. lay.Places()];
        Assert.True(FaceSpots.Of(given, lay).Least(places, given.StripMm, wander, new Random(given.Seed)) >= lay.LayersEverywhere);
        Assert.Equal(lay.SideBySide == 1 || wander <= lay.Lap.Millimeters * (1 + 1e-9) ? 1 : 0, lay.LayersEverywhere);
    }

    [Property]
    public void Strips_lie_as_published_and_are_those_of_the_cut_list(PanelCase given)
    {
        PanelLay lay = given.Lay(Choices(0, 10, 3));
        StripPlace[] places = [.. lay.Places()];
        double across = FaceSpots.Of(given, lay).Across;
        double spacing = given.StripMm - lay.Lap.Millimeters;
        Assert.All(places, place =>
        {
            double step = (place.LowerEdge.Millimeters + (across / 2)) / spacing;
            Near.Equal(Math.Round(step), step, 1e-9, absolute: 1e-6);
        });
        if (lay.SideBySide > 1)
        {
            Assert.True(lay.Lap.Millimeters >= given.LapMm - (1e-9 * across));
            Near.Equal(across, ((lay.SideBySide - 1) * spacing) + given.StripMm, 1e-11);
            Assert.True(((lay.SideBySide - 1) * given.StripMm) - ((lay.SideBySide - 2) * given.LapMm) < across + (1e-9 * across));
        }

        long[] cut = [.. lay.Strips.SelectMany(static strip => Enumerable.Repeat(strip.LengthUm, strip.Count)).Order()];
        long[] laid = [.. places.SelectMany(static place => Enumerable.Repeat((long)Math.Round(place.Length.Micrometers, MidpointRounding.AwayFromZero), 3)).Order()];
        Assert.Equal(laid.Length, cut.Length);
        Assert.All(laid.Zip(cut), static pair => Assert.True(Math.Abs(pair.First - pair.Second) <= 1));
        Assert.Equal(lay.Strips.Count, lay.Strips.Select(static strip => strip.LengthUm).Distinct().Count());
    }

    [Property]
    public void Cover_is_the_area_and_what_stays_is_what_lies_on_steel(PanelCase given)
    {
        PanelLay lay = given.Lay();
        Ledger(lay, lay.Panel.Area.SquareMeters);
        double on = lay.Strips.Sum(static strip => (double)(strip.LengthUm - strip.TrimUm) * strip.Count) / 1e3 * given.StripMm;
        double counted = FaceSpots.Of(given, lay).Under([.. lay.Places()], given.StripMm);

        // Spots on a grid tell an area to some parts of a thousand: half a row along each edge and opening.
        Near.Equal(counted, on, 6e-3, absolute: 0.002 * lay.Pieces * given.StripMm);
        Assert.True(on >= lay.LayersEverywhere * lay.Panel.Area.SquareMeters * 1e6 - (0.002 * lay.Pieces * given.StripMm));
    }

    [Property]
    public void Openings_without_a_place_change_no_piece_and_take_tape_on_the_average(PanelCase given)
    {
        PanelLay open = given.Lay(places: false);
        PanelLay whole = (given with { Openings = 0 }).Lay();
        Assert.Equal(whole.Strips.Select(static strip => (strip.LengthUm, strip.Count)), open.Strips.Select(static strip => (strip.LengthUm, strip.Count)));
        Ledger(open, open.Panel.Area.SquareMeters);
        Near.Equal(whole.LayersOnAverage.Ratio, open.LayersOnAverage.Ratio, 1e-4);
        bool said = open.Judge(RuleSet.Default, "P-1").Any(static finding => finding.Rule.Id == RuleIds.OpeningsWithoutPlace);
        Assert.Equal(open.Panel.Openings.Count > 0, said);
    }

    [Property]
    public void A_disc_never_takes_more_than_its_square_nor_a_ring_more_than_its_disc(PanelCase given)
    {
        PanelCase disc = given with { Form = 1, Openings = 0 };
        Assert.True((disc with { Form = 2 }).Lay().StripLength.Millimeters <= disc.Lay().StripLength.Millimeters + 1e-3);
        Assert.True(disc.Lay().StripLength.Millimeters <= (disc with { Form = 0, HeightMm = disc.WidthMm }).Lay().StripLength.Millimeters + 1e-3);
    }

    [Property]
    public void A_ring_with_hardly_a_hole_is_a_disc(PanelCase given)
    {
        var ring = new PanelLay(new AnnularPanel(Mm(given.WidthMm), Mm(1)), Stock(given.StripMm), given.Direction, Mm(given.LapMm), Choices());
        PanelLay disc = (given with { Form = 1, Openings = 0 }).Lay();
        Assert.Equal(disc.Strips.Select(static strip => (strip.LengthUm, strip.Count)), ring.Strips.Select(static strip => (strip.LengthUm, strip.Count)));
        double share = Math.Pow(1 / given.WidthMm, 2);
        Near.Equal(disc.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count) * (1 - share), ring.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count), 1e-9, absolute: 0.001 * disc.Pieces);
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(PanelCase given)
    {
        PanelCase whole = given with { Form = given.Form % 2, Openings = 0 };
        PanelLay more = (whole with { LapMm = (whole.LapMm + whole.StripMm) / 2 }).Lay();
        Assert.True(more.StripLength.Millimeters >= whole.Lay().StripLength.Millimeters - (1e-3 * more.Pieces));
    }

    [Property]
    public void The_better_way_takes_fewer_metres_then_pieces_then_splices(PanelCase given)
    {
        PanelLayComparison both = PanelLay.BothWays(given.Panel(), Stock(given.StripMm, 1), Mm(given.LapMm), Choices());
        Assert.Equal(PanelDirection.AlongWidth, both.AlongWidth.Direction);
        Assert.Equal(PanelDirection.AlongHeight, both.AlongHeight.Direction);
        PanelLay worse = ReferenceEquals(both.Better, both.AlongWidth) ? both.AlongHeight : both.AlongWidth;
        (long, int, int) better = Tally(both.Better);
        Assert.True(better.CompareTo(Tally(worse)) <= 0);
        Assert.Equal(both.Better.Direction == PanelDirection.AlongHeight, both.Why.Contains("stand up and shed water sideways", StringComparison.Ordinal));
        if (better == Tally(worse))
        {
            Assert.Equal(PanelDirection.AlongWidth, both.Better.Direction);
        }

        static (long Um, int Pieces, int Splices) Tally(PanelLay lay) => (
            lay.Strips.Sum(static strip => strip.LengthUm * strip.Count),
            lay.Strips.Sum(static strip => strip.Count),
            lay.Strips.Sum(static strip => strip.Count * (int)((strip.LengthUm - 1) / 1_000_000)));
    }

    [Fact]
    public void A_strip_within_an_opening_is_interrupted_and_others_are_cut_out()
    {
        // 1000 x 300 mm in three strips of 100 mm without a lap; the opening is as wide as the middle one.
        var panel = new RectangularPanel(Mm(1000), Mm(300), [PanelOpening.Rectangular(Mm(200), Mm(100)).At(Mm(100), Mm(0))]);
        var lay = new PanelLay(panel, Stock(100), PanelDirection.AlongWidth, Mm(0), Choices());
        Assert.Equal([1000.0, 500, 300], lay.Strips.Select(static strip => Math.Round(strip.Length.Millimeters, 6)));
        Assert.Equal(0, lay.Strips.Sum(static strip => strip.TrimUm));

        // A millimetre narrower and the strip runs through: 200 x 99 mm of it is trim.
        panel = new RectangularPanel(Mm(1000), Mm(300), [PanelOpening.Rectangular(Mm(200), Mm(99)).At(Mm(100), Mm(0))]);
        lay = new PanelLay(panel, Stock(100), PanelDirection.AlongWidth, Mm(0), Choices());
        Strip through = Assert.Single(lay.Strips);
        Assert.Equal(3, through.Count);
        Near.Equal(198, 3 * through.Trim.Millimeters, 0, absolute: 0.002);
    }

    [Fact]
    public void The_count_sees_a_missing_strip_and_a_short_one()
    {
        var given = new PanelCase(1, 1000, 1000, 100, 10, 0, 2);
        PanelLay lay = given.Lay();
        StripPlace[] places = [.. lay.Places()];
        FaceSpots spots = FaceSpots.Of(given, lay);
        Assert.Equal(0, spots.Least([.. places.Where((_, i) => i != 3)], 100, 0, new Random(1)));
        Assert.Equal(0, spots.Least(places, 99, 0, new Random(1)));
        var tall = new PanelCase(1, 1001, 1001, 100, 10, 0, 2);
        Assert.Equal(0, FaceSpots.Of(tall, tall.Lay()).Least(places, 100, 0, new Random(1)));
    }

    [Fact]
    public void The_crew_is_told_where_water_runs()
    {
        var panel = new RectangularPanel(Mm(2000), Mm(1000));
        Assert.Contains("begin at the bottom and work up, so that each lap sheds water", new PanelLay(panel, Stock(), PanelDirection.AlongWidth, Mm(10)).Instruction, StringComparison.Ordinal);
        Assert.Contains("stand up and shed water sideways", new PanelLay(panel, Stock(), PanelDirection.AlongHeight, Mm(10)).Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_refused()
    {
        var panel = new RectangularPanel(Mm(2000), Mm(1000));
        Errors.Refused(() => new PanelLay(panel, Stock(50), PanelDirection.AlongWidth, Mm(50)), "leastLap", "50 mm", "less than the strip is wide");
        Errors.Refused(() => new PanelLay(panel, Stock(50), PanelDirection.AlongWidth, Mm(-1)), "leastLap", "-1 mm");
        Errors.Refused(() => new PanelLay(panel, Stock(50), (PanelDirection)7, Mm(5)), "direction", "7");
        Errors.Refused(() => new PanelLay(new CircularPanel(Mm(2000)), Stock(50), PanelDirection.AlongWidth, Mm(49.99)), "leastLap", "49.99 mm", "100000");
    }

    internal static void Ledger(ILay lay, double areaM2)
    {
        Assert.All(lay.Strips, static strip =>
        {
            Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm);
            Assert.True(strip.LapUm >= 0 && strip.TrimUm >= 0 && strip.CoverUm >= 0);
        });
        double width = lay.Stock.Width.Millimeters;
        int pieces = lay.Strips.Sum(static strip => strip.Count);
        Near.Equal(areaM2 * 1e6, lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count) * width, 1e-9, absolute: 0.001001 * pieces * width);
    }
}
