using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.TakeOff;

public sealed class AtTheEdge
{
    [Fact]
    public void Two_pieces_of_half_a_roll_share_one()
    {
        StockTakeOff stock = Of(new TakeOffChoices(Mm(10), Mm(1000), Contingency.FromFraction(0)), Piece(5000, 2, false));
        Assert.Equal(1, stock.Rolls);
        Assert.Equal(1, stock.LeastRolls);
    }

    [Fact]
    public void A_remnant_just_long_enough_is_spliced_in()
    {
        // A whole piece leaves 1 m, the shortest worth splicing; the strip of 10.5 m then needs one more roll only.
        StockTakeOff stock = Of(new TakeOffChoices(Mm(10), Mm(1000), Contingency.FromFraction(0)), Piece(9000, 1, false), Piece(10_500, 1, true));
        Assert.Equal(2, stock.Rolls);
        Assert.Equal(1, stock.Splices);
    }

    [Fact]
    public void Splices_lie_on_the_steel_and_weigh()
    {
        StockTakeOff stock = Of(new TakeOffChoices(Mm(50), Mm(1000), Contingency.FromFraction(0)), Piece(25_000, 1, true));
        Assert.Equal(2, stock.Splices);
        Near.Equal((25 + 0.1) * 0.1 * 0.0001 * 7140, stock.ZincLaid.Kilograms, 1e-9);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void A_splice_lap_is_judged_where_there_is_a_splice(bool spliced, bool said)
    {
        StripTakeOff off = StripTakeOff.Of([Piece(spliced ? 25_000 : 5000, 1, true)], new TakeOffChoices(Mm(5), Mm(1000), Contingency.FromFraction(0)));
        Assert.Equal(said, off.Judge(RuleSet.Default).Any(static one => one.Rule.Id == RuleIds.MinimumEndLap));
    }

    [Fact]
    public void Whole_pieces_alone_need_no_roll_to_splice()
    {
        StockTakeOff stock = StripTakeOff.Of([Piece(1500, 3, false, 1.9)], new TakeOffChoices(Mm(10), Mm(1000), Contingency.FromFraction(0))).Stocks.Single();
        Assert.Equal(3, stock.Rolls);
    }

    [Fact]
    public void More_rolls_than_anyone_orders_are_refused_before_they_are_cut() => Assert.Contains(
        "rolls of strip is outside the accepted range",
        Assert.Throws<ArgumentOutOfRangeException>(static () => StripTakeOff.Of([Piece(9e8, 1_000_000, true)], Make.TakeOff())).Message,
        StringComparison.Ordinal);

    // A quotient that ends up to 1e-10 beside a whole number counts as that number; one 1e-8 beside it does not.
    [Theory]
    [InlineData(3 - 3e-10, 3)]
    [InlineData(3 - 3e-8, 2)]
    public void The_allowance_is_what_it_says(double value, double floor) => Assert.Equal(floor, WithAllowance.Floor(value));

    private static StockTakeOff Of(TakeOffChoices choices, params Strip[] strips) => StripTakeOff.Of(strips, choices).Stocks.Single();

    private static Strip Piece(double mm, int count, bool maySplice, double rollM = 10) =>
        new(Stock(100, rollM), Mm(mm), count, StripPurpose.Other, maySplice, Mm(mm), Length.Zero);
}
