using System.Diagnostics;

namespace SacrificialTape.CutPlans.Tests;

public sealed class Limits
{
    private static readonly Length Roll = Length.FromMeters(30);

    [Fact]
    public void A_search_cut_short_keeps_its_time_and_gives_what_it_has()
    {
        // Two or three pieces to a roll, of 200 lengths: more patterns than can be tried in no time.
        var draw = new Random(7);
        CutPiece[] pieces = [.. Enumerable.Range(0, 200).Select(_ => new CutPiece(Length.FromMicrometers(draw.Next(9_000_000, 14_900_000)), draw.Next(1, 9)))];
        CutPlan core = CutPlan.Of(pieces, Roll, Length.FromMeters(1));
        Assert.True(core.Gap > 0);
        long start = Stopwatch.GetTimestamp();
        OptimalCutPlan best = OptimalCutPlan.Solve(pieces, Roll, TimeSpan.FromMilliseconds(50));

        // Far above what the core's plan and building a model take, far below what the search would.
        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(20));
        Assert.True(best.Rolls <= core.Rolls && best.LeastRolls >= core.LeastRolls);
        Assert.Equal(best.Rolls - best.LeastRolls, best.Gap);
        Assert.Equal(CutPlanStatus.BestFound, best.Status);
        Assert.Equal($"{best.Rolls} roll(s), best found, at least {best.LeastRolls} needed", best.ToString());
    }

    [Fact]
    public void The_core_library_is_enough_where_it_meets_the_bound()
    {
        OptimalCutPlan best = OptimalCutPlan.Solve([new CutPiece(Length.FromMeters(10), 3)], Roll, TimeSpan.FromTicks(1));
        Assert.Equal((1, CutPlanStatus.Proved), ((int)best.Rolls, best.Status));
        Assert.Equal(0, OptimalCutPlan.Solve([], Roll, TimeSpan.FromSeconds(1)).Rolls);
    }

    [Fact]
    public void The_shortest_piece_sorts_the_offcuts()
    {
        CutPiece[] pieces = [new(Length.FromMeters(4), 5), new(Length.FromMeters(3), 3)];
        Length ten = Length.FromMeters(10);
        OptimalCutPlan all = OptimalCutPlan.Solve(pieces, ten, TimeSpan.FromSeconds(60));
        OptimalCutPlan some = OptimalCutPlan.Solve(pieces, ten, TimeSpan.FromSeconds(60), Length.FromMeters(2.5));
        Assert.Equal("4 roll(s), proved minimal", all.ToString());
        Assert.Equal(11, all.Plan.OffcutsWorthKeeping.Sum(static offcut => offcut.Length.Meters * offcut.Count), 1e-9);
        Assert.Equal(0, all.Plan.Scrap.Meters);
        Assert.All(some.Plan.OffcutsWorthKeeping, static offcut => Assert.True(offcut.Length.Meters >= 2.5));
        Assert.Equal(11, some.Plan.Scrap.Meters + some.Plan.OffcutsWorthKeeping.Sum(static offcut => offcut.Length.Meters * offcut.Count), 1e-9);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        CutPiece[] pieces = [new(Length.FromMeters(31), 1)];
        Assert.Contains("cannot be cut whole", Assert.Throws<ArgumentException>(() => OptimalCutPlan.Solve(pieces, Roll, TimeSpan.FromSeconds(1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(static () => OptimalCutPlan.Solve(null!, Roll, TimeSpan.FromSeconds(1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => OptimalCutPlan.Solve([], Length.Zero, TimeSpan.FromSeconds(1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => OptimalCutPlan.Solve([], Roll, TimeSpan.FromSeconds(1), Length.Zero));
        foreach (TimeSpan wrong in new[] { TimeSpan.Zero, TimeSpan.FromSeconds(-1), TimeSpan.FromDays(1) + TimeSpan.FromTicks(1) })
        {
            ArgumentOutOfRangeException said = Assert.Throws<ArgumentOutOfRangeException>(() => OptimalCutPlan.Solve([], Roll, wrong));
            Assert.Equal("timeLimit", said.ParamName);
            Assert.Contains("more than 0 s and at most one day", said.Message, StringComparison.Ordinal);
        }
    }
}
