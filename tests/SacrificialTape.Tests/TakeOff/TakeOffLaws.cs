using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.TakeOff;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 400)]
public sealed class TakeOffLaws
{
    [Property]
    public void The_ledger_closes_to_the_last_micrometre(CutCase given)
    {
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        StripLedger ledger = stock.Ledger;
        long rollUm = (long)Math.Round(given.RollM * 1e6);
        Assert.Equal(stock.Rolls * rollUm, ledger.BoughtUm);
        Assert.Equal(ledger.BoughtUm, ledger.CoverUm + ledger.LapUm + ledger.TrimUm + ledger.SpliceUm + ledger.ContingencyUm + ledger.OffcutUm);
        Assert.True(ledger.OffcutUm >= 0);
        Assert.Equal(given.Pieces.Sum(static piece => piece.LengthUm * piece.Count), ledger.CoverUm + ledger.LapUm + ledger.TrimUm);
        Assert.Equal(given.Pieces.Sum(static piece => piece.CoverUm * piece.Count), ledger.CoverUm);
        Assert.Equal(given.Pieces.Sum(static piece => piece.TrimUm * piece.Count), ledger.TrimUm);
        Assert.Equal(stock.Splices * (long)(given.SpliceMm * 1000), ledger.SpliceUm);
        Near.Equal(ledger.CoverUm + ledger.LapUm + ledger.TrimUm, ledger.ContingencyUm / Math.Max(given.Contingency, 1e-9), 1e-3, absolute: given.Contingency == 0 ? double.MaxValue : 100);
    }

    [Property]
    public void No_plan_beats_the_least_rolls(CutCase given)
    {
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        Assert.True(stock.Rolls >= stock.LeastRolls, $"{stock.Rolls} rolls, but at least {stock.LeastRolls} are needed.");
        Assert.Equal(stock.Rolls == stock.LeastRolls, stock.ProvedMinimal);
    }

    [Property]
    public void No_more_rolls_are_bought_than_for_a_plan_found_another_way(CutCase given)
    {
        // Whole pieces by first fit, longest first, one roll at a time; what is left of each roll then serves splices.
        long roll = (long)Math.Round(given.RollM * 1e6);
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        var rest = new List<long>();
        foreach (PieceCase piece in given.Pieces.Where(piece => piece.Whole && piece.LengthUm <= roll).OrderByDescending(static piece => piece.LengthUm))
        {
            for (int i = 0; i < piece.Count; i++)
            {
                int at = rest.FindIndex(left => left >= piece.LengthUm);
                if (at < 0)
                {
                    rest.Add(roll);
                    at = rest.Count - 1;
                }

                rest[at] -= piece.LengthUm;
            }
        }

        Assert.Equal(given.Pieces.Where(piece => piece.Whole && piece.LengthUm > roll).Sum(static piece => piece.Count), stock.PiecesLongerThanRoll);
        if (given.Pieces.All(piece => piece.Whole && piece.LengthUm <= roll) && given.Contingency == 0)
        {
            Assert.True(stock.Rolls <= rest.Count, $"{stock.Rolls} rolls bought where {rest.Count} do.");
            Assert.Equal(0, stock.Splices);
        }
    }

    [Property]
    public void The_plainest_rule_is_the_rule_carried_out_by_hand(CutCase given)
    {
        CutCase bare = given with { Contingency = 0 };
        var byHand = new CuttingByHand(bare);
        byHand.Check();
        var tally = new PatternTally((long)Math.Round(given.RollM * 1e6));
        RollCutting plain = Cutting.ByFirstFit(bare, tally);
        Assert.Equal(byHand.Rolls, plain.Rolls);
        Assert.Equal(byHand.Splices, plain.Splices);
        Assert.Equal(
            byHand.CutLists.Order(StringComparer.Ordinal),
            tally.Patterns().SelectMany(static pattern => Enumerable.Repeat(Cutting.List(pattern), (int)pattern.Times)).Order(StringComparer.Ordinal));
    }

    [Property]
    public void No_take_off_needs_more_rolls_than_the_plainest_rule(CutCase given)
    {
        RollCutting plain = Cutting.ByFirstFit(given);
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        Assert.True(stock.Rolls < plain.Rolls || (stock.Rolls == plain.Rolls && stock.Splices <= plain.Splices));
    }

    [Property]
    public void The_cut_plan_holds_the_whole_take_off(CutCase given)
    {
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        CutPlan plan = stock.PlanCuts();
        long roll = (long)Math.Round(given.RollM * 1e6);
        Assert.Equal((stock.Rolls, stock.LeastRolls, stock.ProvedMinimal), (plan.Rolls, plan.LeastRolls, plan.ProvedMinimal));
        Assert.All(plan.Patterns, pattern =>
        {
            Assert.True(pattern.RemnantUm >= 0 && pattern.SpareUm >= 0 && pattern.Times > 0, pattern.ToString());
            Assert.Equal(roll, pattern.Pieces.Concat(pattern.Runs).Sum(static cut => cut.LengthUm * cut.Count) + pattern.SpareUm + pattern.RemnantUm);
        });
        Assert.Equal(
            given.Pieces.Where(piece => piece.Whole && piece.LengthUm <= roll).GroupBy(static piece => piece.LengthUm).Select(static same => (same.Key, (long)same.Sum(static piece => piece.Count))).Order(),
            plan.Patterns.SelectMany(static pattern => pattern.Pieces.Select(piece => (piece.LengthUm, Count: piece.Count * pattern.Times))).GroupBy(static piece => piece.LengthUm).Select(static same => (same.Key, same.Sum(static piece => piece.Count))).Order());
        Assert.Equal(
            given.Pieces.Where(piece => !piece.Whole || piece.LengthUm > roll).Sum(static piece => piece.LengthUm * piece.Count) + stock.Ledger.SpliceUm,
            plan.Patterns.Sum(static pattern => pattern.Times * pattern.Runs.Sum(static run => run.LengthUm * run.Count)));
        Assert.Equal(stock.Ledger.ContingencyUm, plan.Patterns.Sum(static pattern => pattern.SpareUm * pattern.Times));
        Assert.Equal(stock.Ledger.OffcutUm, plan.ScrapUm + plan.OffcutsWorthKeeping.Sum(static offcut => offcut.LengthUm * offcut.Count));
        Assert.All(plan.OffcutsWorthKeeping, offcut => Assert.True(offcut.LengthUm >= given.ShortestMm * 1e3));
    }

    [Property]
    public void More_contingency_never_takes_fewer_rolls(CutCase given, byte more)
    {
        long one = Cutting.TakeOff(given).Stocks.Single().Rolls;
        long two = Cutting.TakeOff(given with { Contingency = given.Contingency + (more / 400.0) }).Stocks.Single().Rolls;
        Assert.True(two >= one);
    }

    [Property]
    public void The_order_of_strips_does_not_change_what_is_needed(CutCase given)
    {
        StripLedger one = Cutting.TakeOff(given).Stocks.Single().Ledger;
        StripLedger two = Cutting.TakeOff(given with { Pieces = [.. given.Pieces.Reverse()] }).Stocks.Single().Ledger;
        Assert.Equal((one.CoverUm, one.LapUm, one.TrimUm, one.ContingencyUm), (two.CoverUm, two.LapUm, two.TrimUm, two.ContingencyUm));
    }

    [Property]
    public void Like_pieces_may_be_listed_together_or_one_by_one(CutCase given)
    {
        CutCase single = given with { Pieces = [.. given.Pieces.SelectMany(static piece => Enumerable.Repeat(piece with { Count = 1 }, piece.Count))] };
        StockTakeOff one = Cutting.TakeOff(given).Stocks.Single();
        StockTakeOff two = Cutting.TakeOff(single).Stocks.Single();
        Assert.Equal(one.Ledger, two.Ledger);
        Assert.Equal(one.Rolls, two.Rolls);
    }

    [Property]
    public void Zinc_laid_is_never_more_than_zinc_bought(CutCase given)
    {
        StripTakeOff takeOff = Cutting.TakeOff(given);
        Assert.True(takeOff.ZincLaid.Kilograms <= takeOff.ZincBought.Kilograms * (1 + 1e-12));
        Near.Equal(takeOff.Stocks[0].Ledger.Bought.Meters * 0.1 * 0.0001 * 7140, takeOff.ZincBought.Kilograms, 1e-12);
    }

    [Fact]
    public void Equal_stocks_are_one_order_and_different_ones_are_not()
    {
        StripTakeOff takeOff = StripTakeOff.Of([Ring(Stock()), Ring(Stock()), Ring(Stock(50)), Ring(Stock(100, 30, 0.2))], Make.TakeOff());
        Assert.Equal([(50.0, 1), (100.0, 1), (100.0, 1)], takeOff.Stocks.Select(static one => (one.Stock.Width.Millimeters, (int)one.Rolls)));
        Assert.Empty(StripTakeOff.Of([], Make.TakeOff()).Stocks);

        static Strip Ring(StripStock stock) => new(stock, Mm(1000), 1, StripPurpose.Ring, false, Mm(900), Mm(0));
    }

    [Fact]
    public void A_roll_whose_length_is_no_whole_micrometre_is_counted_as_it_is_cut()
    {
        // A roll 9999.9996 mm long is cut as 10 000 mm: the bound and the workings must count the same roll.
        StripStock stock = new(Tape(), Mm(100), Mm(9999.9996));
        StockTakeOff one = StripTakeOff.Of([new Strip(stock, Mm(10_000), 7, StripPurpose.Ring, false, Mm(9000), Mm(0))], Make.TakeOff(0)).Stocks.Single();
        Assert.Equal(7, one.Rolls);
        Assert.Equal(7, one.LeastRolls);
        Assert.All(one.ShowWorkings().Steps, static step => Assert.True(
            SacrificialTape.Tests.Provenance.Recomputation.Agrees(step, SacrificialTape.Tests.Provenance.Recomputation.Of(step)), step.ToString()));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => Make.TakeOff(0.05, 10, 10), "shortestPiece", "10 mm", "more than 10 mm (the splice lap)");
        Errors.Refused(static () => Make.TakeOff(0.05, -1), "spliceLap", "-1 mm", "at least 0 mm");
        Errors.Refused(static () => Make.TakeOff(0.05, 10, 10.0001), "shortestPiece", "10 mm", "more than 10 mm (the splice lap)");
        Assert.Throws<InvalidOperationException>(static () => new TakeOffChoices(Mm(10), Mm(1000), default(Contingency)));
        ArgumentOutOfRangeException roll = Assert.Throws<ArgumentOutOfRangeException>(static () => StripTakeOff.Of(
            [new Strip(Stock(100, 1.5), Mm(500), 1, StripPurpose.Other, true, Mm(500), Mm(0))], Make.TakeOff()));
        Assert.Contains("1.5 m is outside the accepted range: at least 2 m (two of the shortest pieces", roll.Message, StringComparison.Ordinal);
        Assert.Contains("at least 2 m", roll.Message, StringComparison.Ordinal);
    }
}
