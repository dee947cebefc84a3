namespace SacrificialTape.CutPlans.Tests;

/// <summary>Held against every plan there is.</summary>
public sealed class SmallInstances
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    private static readonly TimeSpan Long = TimeSpan.FromMinutes(2);

    [Fact]
    public void The_plan_takes_the_fewest_rolls_of_all_plans_and_is_proved()
    {
        int notProvedByCore = 0;
        for (int seed = 0; seed < 600; seed++)
        {
            var given = SmallCase.Of(seed);
            CutPlan core = CutPlan.Of(given.Pieces, given.Roll, given.Roll);
            SolvedCutPlan best = SolvedCutPlan.Solve(given.Pieces, given.Roll, Length.FromMicrometers(1), Long, Stopping);
            Assert.True(best.Rolls == given.Fewest && best.Status == CutPlanStatus.Proved, $"Seed {seed}: {best}, every plan: {given.Fewest}.");
            Assert.True(best.LeastRolls >= core.LeastRolls && best.Rolls <= core.Rolls, $"Seed {seed}: {best}, core {core}.");
            notProvedByCore += core.ProvedMinimal ? 0 : 1;
        }

        Assert.True(notProvedByCore > 5, $"Only {notProvedByCore} cases were left to the solver.");
    }

    [Fact]
    public void The_search_reaches_the_fewest_rolls_from_a_bad_plan_too()
    {
        for (int seed = 1000; seed < 1200; seed++)
        {
            var given = SmallCase.Of(seed);
            var search = new PlanSearch(Demand.Of(given.Pieces, given.Roll), given.RollForEach, new Deadline(Long, CancellationToken.None));
            search.Run();
            long rolls = search.Patterns?.Sum(static pattern => pattern.Times) ?? given.RollForEach.Rolls;
            Assert.True(rolls == given.Fewest && search.LeastRolls == given.Fewest, $"Seed {seed}: {rolls}, bound {search.LeastRolls}, every plan: {given.Fewest}.");
        }
    }

    [Fact]
    public void Every_piece_is_cut_once_and_no_roll_is_overfull()
    {
        for (int seed = 1000; seed < 1200; seed++)
        {
            var given = SmallCase.Of(seed);
            var search = new PlanSearch(Demand.Of(given.Pieces, given.Roll), given.RollForEach, new Deadline(Long, CancellationToken.None));
            search.Run();
            IReadOnlyList<CutPattern> patterns = search.Patterns ?? given.RollForEach.Patterns;
            Assert.Equal(Single(given.Pieces), Single(patterns.SelectMany(static pattern => pattern.Pieces.Select(piece => new CutPiece(piece.Length, piece.Count * pattern.Times)))));
            Assert.All(patterns, pattern => Assert.True(pattern.Pieces.Sum(static piece => piece.Length.Micrometers * piece.Count) <= given.RollUm, $"Seed {seed}: {pattern}"));
        }

        static long[] Single(IEnumerable<CutPiece> pieces) =>
            [.. pieces.SelectMany(static piece => Enumerable.Repeat((long)piece.Length.Micrometers, (int)piece.Count)).Order()];
    }

    [Fact]
    public void A_price_list_never_proves_more_than_the_fewest_rolls()
    {
        for (int seed = 2000; seed < 2300; seed++)
        {
            var given = SmallCase.Of(seed);
            var demand = Demand.Of(given.Pieces, given.Roll);
            var draw = new Random(seed);
            long[] prices = [.. demand.Lengths.Select(_ => (long)draw.Next(0, 1000))];
            Pricing pricing = Pricing.Of(demand, prices, new Deadline(Long, CancellationToken.None));
            Assert.True(pricing.Exact);
            if (pricing.BestWorth > 0)
            {
                PriceList list = PriceList.Of(demand, prices, pricing.BestWorth);
                Assert.True(list.LeastRolls <= given.Fewest, $"Seed {seed}: {list.LeastRolls} proved, {given.Fewest} needed.");
            }
        }
    }

    [Fact]
    public void Same_pieces_in_any_order_give_the_same_plan()
    {
        for (int seed = 0; seed < 100; seed++)
        {
            var given = SmallCase.Of(seed);
            Assert.Equal(
                SolvedCutPlan.Solve(given.Pieces, given.Roll, Length.FromMicrometers(1), Long, Stopping),
                SolvedCutPlan.Solve([.. given.Pieces.Reverse()], given.Roll, Length.FromMicrometers(1), Long, Stopping));
        }
    }
}
