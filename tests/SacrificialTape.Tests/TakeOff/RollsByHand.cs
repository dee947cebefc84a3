namespace SacrificialTape.Tests.TakeOff;

/// <summary>Least rolls and ledgers small enough to be counted on paper.</summary>
public sealed class RollsByHand
{
    // From a roll of 10 m. A piece of 7 m leaves no room for one of 3.3 m, so four of them take a roll each. The piece of
    // 6.5 m shares its roll with one of 3.3 m, and the other two share the last. All the strip would fill five rolls.
    [Fact]
    public void Long_pieces_that_share_with_none_count_beside_one_that_shares()
    {
        StockTakeOff stock = Cutting.TakeOff(new CutCase(10, 0, 50, 300, [Whole(7, 4), Whole(6.5, 1), Whole(3.3, 3)])).Stocks.Single();
        Assert.Equal(6, stock.Rolls);
        Assert.Equal(6, stock.LeastRolls);
    }

    // Spliced from rolls of 10 m: 12 m of cover, 5 m of lap and 4 m of trim are 21 m, with 10 % spare 23.1 m: three rolls at
    // least. Without the trim or the spare two would do.
    [Theory]
    [InlineData(12, 5, 4, 0.1, 3)]
    [InlineData(12, 5, 0, 0.1, 2)]
    [InlineData(12, 7, 0, 0, 2)]
    [InlineData(12, 7, 0, 0.1, 3)]
    [InlineData(12, 3, 6, 0, 3)]
    public void Cover_lap_trim_and_spare_all_fill_rolls(double cover, double lap, double trim, double spare, int rolls)
    {
        StockTakeOff stock = Cutting.TakeOff(new CutCase(10, spare, 50, 300, [new((long)((cover + lap + trim) * 1e6), 1, false, (long)(cover * 1e6), (long)(trim * 1e6))])).Stocks.Single();
        Assert.Equal(rolls, stock.LeastRolls);
    }

    // Three rolls of 10 m for 21 m of strip: two splices of 50 mm and 2.1 m of spare leave 6.8 m.
    [Fact]
    public void The_workings_show_every_part_of_the_ledger()
    {
        StockTakeOff stock = Cutting.TakeOff(new CutCase(10, 0.1, 50, 300, [new(21_000_000, 1, false, 12_000_000, 4_000_000)])).Stocks.Single();
        WorkingStep offcut = stock.ShowWorkings().Steps.Single(static step => step.Formula.Id == "take-off.offcut");
        Assert.Equal([30_000, 12_000, 5_000, 4_000, 100, 2_100], offcut.Inputs.Select(static input => input.Number));
        Near.Equal(6_800, offcut.Result.Number, 1e-12);
        WorkingStep least = stock.ShowWorkings().Steps.Single(static step => step.Formula.Id == "take-off.least-rolls");
        Assert.Equal([12_000, 5_000, 4_000, 2_100, 10_000], least.Inputs.Skip(1).Select(static input => input.Number));
    }

    private static PieceCase Whole(double metres, int count) => new((long)(metres * 1e6), count, true, (long)(metres * 1e6), 0);
}
