using System.Diagnostics;

namespace SacrificialTape.CutPlans.Tests;

public sealed class Limits
{
    private static CancellationToken Stopping => TestContext.Current.CancellationToken;

    private static readonly Length Roll = Length.FromMeters(30);

    // Every offcut is worth keeping.
    private static readonly Length Any = Length.FromMicrometers(1);

    [Fact]
    public void A_search_cut_short_keeps_its_time_and_gives_what_it_has()
    {
        // Two or three pieces to a roll, of 200 lengths: more patterns than can be tried in no time.
        CutPiece[] pieces = Many();
        CutPlan core = CutPlan.Of(pieces, Roll, Length.FromMeters(1));
        Assert.True(core.Gap > 0);
        long start = Stopwatch.GetTimestamp();
        SolvedCutPlan best = SolvedCutPlan.Solve(pieces, Roll, Any, TimeSpan.FromMilliseconds(50), Stopping);

        // Far above what the core's plan and building a model take, far below what the search would.
        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(20));
        Assert.True(best.Rolls <= core.Rolls && best.LeastRolls >= core.LeastRolls);
        Assert.Equal(best.Rolls - best.LeastRolls, best.Gap);
        Assert.Equal(CutPlanStatus.BestFound, best.Status);
        Assert.Equal($"{best.Rolls} roll(s), best found, at least {best.LeastRolls} needed", best.ToString());
    }

    // A day is allowed: without the end from outside this would run for hours.
    [Fact]
    public void A_search_can_be_ended_from_outside()
    {
        using var ended = new CancellationTokenSource(TimeSpan.FromSeconds(2));
        long start = Stopwatch.GetTimestamp();
        Assert.Throws<OperationCanceledException>(() => SolvedCutPlan.Solve(Many(), Roll, Any, TimeSpan.FromDays(1), ended.Token));
        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromMinutes(10));
        Assert.Throws<OperationCanceledException>(() => SolvedCutPlan.Solve([new CutPiece(Roll, 1)], Roll, Any, TimeSpan.FromDays(1), ended.Token));
    }

    [Fact]
    public void A_status_that_nobody_set_claims_least() => Assert.Equal(CutPlanStatus.BestFound, default);

    [Fact]
    public void The_core_library_is_enough_where_it_meets_the_bound()
    {
        SolvedCutPlan best = SolvedCutPlan.Solve([new CutPiece(Length.FromMeters(10), 3)], Roll, Any, TimeSpan.FromTicks(1), Stopping);
        Assert.Equal((1, CutPlanStatus.Proved), ((int)best.Rolls, best.Status));
        Assert.Equal(0, SolvedCutPlan.Solve([], Roll, Any, TimeSpan.FromSeconds(1), Stopping).Rolls);
    }

    [Fact]
    public void The_shortest_piece_sorts_the_offcuts()
    {
        CutPiece[] pieces = [new(Length.FromMeters(4), 5), new(Length.FromMeters(3), 3)];
        Length ten = Length.FromMeters(10);
        SolvedCutPlan all = SolvedCutPlan.Solve(pieces, ten, Any, TimeSpan.FromSeconds(60), Stopping);
        SolvedCutPlan some = SolvedCutPlan.Solve(pieces, ten, Length.FromMeters(2.5), TimeSpan.FromSeconds(60), Stopping);
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
        Assert.Contains("cannot be cut whole", Assert.Throws<ArgumentException>(() => SolvedCutPlan.Solve(pieces, Roll, Any, TimeSpan.FromSeconds(1), Stopping)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(static () => SolvedCutPlan.Solve(null!, Roll, Any, TimeSpan.FromSeconds(1), Stopping));
        Assert.Throws<ArgumentOutOfRangeException>(static () => SolvedCutPlan.Solve([], Length.Zero, Any, TimeSpan.FromSeconds(1), Stopping));
        Assert.Throws<ArgumentOutOfRangeException>(static () => SolvedCutPlan.Solve([], Roll, Length.Zero, TimeSpan.FromSeconds(1), Stopping));
        foreach (TimeSpan wrong in new[] { TimeSpan.Zero, TimeSpan.FromSeconds(-1), TimeSpan.FromDays(1) + TimeSpan.FromTicks(1) })
        {
            ArgumentOutOfRangeException said = Assert.Throws<ArgumentOutOfRangeException>(() => SolvedCutPlan.Solve([], Roll, Any, wrong, Stopping));
            Assert.Equal("timeLimit", said.ParamName);
            Assert.Contains("more than 0 s and at most one day", said.Message, StringComparison.Ordinal);
        }
    }

    private static CutPiece[] Many()
    {
        var draw = new Random(7);
        return [.. Enumerable.Range(0, 200).Select(_ => new CutPiece(Length.FromMicrometers(draw.Next(9_000_000, 14_900_000)), draw.Next(1, 9)))];
    }
}
