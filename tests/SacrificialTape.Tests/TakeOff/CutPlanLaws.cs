using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.TakeOff;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 400)]
public sealed class CutPlanLaws
{
    [Property]
    public void Every_piece_is_cut_exactly_once_and_no_roll_is_overfull(PackCase given)
    {
        CutPlan plan = given.Plan();
        Assert.Equal(
            given.Single.Order(),
            plan.Patterns.SelectMany(static pattern => pattern.Pieces.SelectMany(piece => Enumerable.Repeat(piece.LengthUm, (int)(piece.Count * pattern.Times)))).Order());
        Assert.All(plan.Patterns, pattern => Assert.InRange(pattern.RemnantUm, 0, given.RollUm - pattern.Pieces.Sum(static piece => piece.LengthUm * piece.Count)));
        Assert.Equal(given.RollUm * plan.Rolls, given.Single.Sum() + plan.ScrapUm + plan.OffcutsWorthKeeping.Sum(static offcut => offcut.LengthUm * offcut.Count));
        Assert.All(plan.Patterns, static pattern => Assert.Empty(pattern.Runs));
    }

    [Property]
    public void The_bound_is_no_more_and_the_plan_no_less_than_the_fewest_rolls_of_all_plans(PackCase given)
    {
        CutPlan plan = given.Plan();
        int fewest = EveryPlan.FewestRolls(given.RollUm, given.Single);
        Assert.True(plan.LeastRolls <= fewest, $"Bound {plan.LeastRolls}, but {fewest} rolls do.");
        Assert.True(plan.Rolls >= fewest, $"{plan.Rolls} rolls, but every plan needs {fewest}.");
        Assert.Equal(plan.Rolls - plan.LeastRolls, plan.Gap);
        Assert.True(!plan.ProvedMinimal || plan.Rolls == fewest);
    }

    [Property]
    public void The_plan_never_takes_more_rolls_than_first_fit_played_piece_by_piece(PackCase given)
    {
        var left = new List<long>();
        foreach (long piece in given.Single.OrderDescending())
        {
            int at = left.FindIndex(rest => rest >= piece);
            if (at < 0)
            {
                left.Add(given.RollUm);
                at = left.Count - 1;
            }

            left[at] -= piece;
        }

        Assert.True(given.Plan().Rolls <= left.Count);
    }

    [Property]
    public void Best_fit_in_groups_is_best_fit_piece_by_piece(PackCase given)
    {
        var left = new List<long>();
        foreach (long piece in given.Single.OrderDescending())
        {
            long[] fitting = [.. left.Where(rest => rest >= piece)];
            if (fitting.Length > 0)
            {
                left.Remove(fitting.Min());
                left.Add(fitting.Min() - piece);
            }
            else
            {
                left.Add(given.RollUm - piece);
            }
        }

        var sizes = new PieceSizes(given.RollUm, given.Pieces.Select(static piece => (piece.LengthUm, (long)piece.Count)));
        Assert.Equal(left.Order(), BestFit.Pack(sizes).SelectMany(static group => Enumerable.Repeat(group.RemnantUm, (int)group.Rolls)).Order());
    }

    [Property]
    public void Order_and_grouping_of_the_pieces_do_not_matter(PackCase given)
    {
        CutPlan plan = given.Plan();
        Assert.Equal(plan, (given with { Pieces = [.. given.Pieces.Reverse()] }).Plan());
        Assert.Equal(plan, (given with { Pieces = [.. given.Single.OrderBy(static piece => piece % 7).Select(static piece => (piece, 1))] }).Plan());
    }

    [Property]
    public void A_further_piece_never_lowers_the_bound(PackCase given, byte size)
    {
        long more = 1 + ((given.RollUm - 1) * size / 255);
        Assert.True((given with { Pieces = [.. given.Pieces, (more, 1)] }).Plan().LeastRolls >= given.Plan().LeastRolls);
    }

    [Property]
    public void Pieces_and_roll_all_so_many_times_as_long_give_the_same_plan(PackCase given, byte times)
    {
        int scale = times + 1;
        CutPlan one = given.Plan();
        CutPlan scaled = given.Plan(scale);
        Assert.Equal((one.Rolls, one.LeastRolls), (scaled.Rolls, scaled.LeastRolls));
        Assert.Equal(
            one.Patterns.Select(pattern => (pattern.Times, pattern.RemnantUm * scale, pattern.Pieces.Count)),
            scaled.Patterns.Select(static pattern => (pattern.Times, pattern.RemnantUm, pattern.Pieces.Count)));
    }

    [Property]
    public void A_plan_is_taken_over_as_it_is(PackCase given)
    {
        CutPlan plan = given.Plan();
        Assert.Equal(plan, CutPlan.FromPatterns(given.Asked, plan.RollLength, plan.ShortestPiece, plan.Patterns));
    }

    [Fact]
    public void Shares_prove_what_strip_and_halves_cannot()
    {
        // Three of 3.4 m do not fit 10 m: two to a roll, though 27.2 m would go into three.
        CutPlan plan = CutPlan.Of([new CutPiece(Mm(3400), 8)], Mm(10_000), Mm(1000));
        Assert.Equal((4, 4, true), ((int)plan.Rolls, (int)plan.LeastRolls, plan.ProvedMinimal));
        Assert.Equal("4 roll(s), 1 pattern(s), proved minimal", plan.ToString());
        Assert.Equal("4 roll(s): 2 x 3.4 m; left 3.2 m", plan.Patterns.Single().ToString());
        Assert.Equal([new CutPiece(Mm(3200), 4)], plan.OffcutsWorthKeeping);
        Assert.Equal(0, plan.Scrap.Meters);
    }

    [Fact]
    public void A_threshold_proves_what_strip_and_halves_cannot()
    {
        // Five of 6 m leave 4 m each, too short for the 4.1 m, of which two go on a further roll: 5 + 2, not 5.
        CutPlan plan = CutPlan.Of([new CutPiece(Mm(6000), 5), new CutPiece(Mm(4100), 4)], Mm(10_000), Mm(5000));
        Assert.Equal((7, 7), ((int)plan.Rolls, (int)plan.LeastRolls));
        Assert.Equal((5 * 4) + (2 * 1.8), plan.Scrap.Meters, 1e-9);
        Assert.Empty(plan.OffcutsWorthKeeping);
    }

    [Fact]
    public void Whole_pieces_spliced_strip_and_spare_share_one_list()
    {
        // 2 x 4 m whole leave 2 m for the spliced 7 m, which takes 5.01 m of the next roll; of its rest 1 m is spare.
        StripStock stock = Stock(100, 10);
        StockTakeOff one = StripTakeOff.Of(
            [
                new Strip(stock, Mm(7000), 1, StripPurpose.Spiral, true, Mm(7000), Mm(0)),
                new Strip(stock, Mm(4000), 2, StripPurpose.Ring, false, Mm(4000), Mm(0)),
            ],
            Make.TakeOff(1.0 / 15, 10, 1000)).Stocks.Single();
        Assert.Equal(
            ["1 roll(s): 2 x 4 m, run 1 x 2 m; left 0 m", "1 roll(s): run 1 x 5.01 m, spare 1 m; left 3.99 m"],
            one.PlanCuts().Patterns.Select(static pattern => pattern.ToString()));
        Assert.Equal("2 roll(s), 2 pattern(s), proved minimal", one.PlanCuts().ToString());
    }

    [Fact]
    public void No_pieces_no_rolls()
    {
        CutPlan plan = CutPlan.Of([], Mm(10_000), Mm(1000));
        Assert.Equal((0, 0, true), ((int)plan.Rolls, (int)plan.LeastRolls, plan.ProvedMinimal));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new CutPiece(Mm(0), 1), "length", "0 mm", "more than 0");
        Assert.Throws<ArgumentOutOfRangeException>(static () => new CutPiece(Mm(1), 0));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new CutPattern(Mm(10), [], 0));
        Says("2 um longer than the roll", static () => new CutPattern(Mm(1), [new CutPiece(Length.FromMicrometers(501), 2)], 1));
        Says("10001 um long cannot be cut whole from a roll of 10000 um", static () => CutPlan.Of([new CutPiece(Length.FromMicrometers(10_001), 1)], Mm(10), Mm(1)));
        CutPiece[] asked = [new CutPiece(Mm(4), 3)];
        Says("a roll of 11000 um", () => CutPlan.FromPatterns(asked, Mm(10), Mm(1), [new CutPattern(Mm(11), [new CutPiece(Mm(4), 1)], 3)]));
        Says("see 2 x 4000 um", () => CutPlan.FromPatterns(asked, Mm(10), Mm(1), [new CutPattern(Mm(10), [new CutPiece(Mm(4), 2)], 1)]));
        CutPattern spliced = Cutting.TakeOff(new CutCase(10, 0, 10, 1000, [new PieceCase(4_000_000, 1, false, 0, 0)])).Stocks[0].PlanCuts().Patterns[0];
        Says("runs or spare", () => CutPlan.FromPatterns([], Mm(10_000), Mm(1), [spliced]));
        Says("see 3 x 4000 um", () => CutPlan.FromPatterns(asked, Mm(10), Mm(1), []));
        Assert.Throws<ArgumentNullException>(static () => CutPlan.Of(null!, Mm(10), Mm(1)));
        Assert.Throws<ArgumentNullException>(() => CutPlan.FromPatterns(asked, Mm(10), Mm(1), null!));

        static void Says(string words, Func<object> make) => Assert.Contains(words, Assert.Throws<ArgumentException>(make).Message, StringComparison.Ordinal);
    }
}
