using Google.OrTools.Sat;

namespace SacrificialTape.CutPlans;

/// <summary>How often to use each of some patterns so that all pieces are cut from the fewest rolls: a whole-number program.</summary>
internal sealed record PatternChoice(long[] Times, long Rolls)
{
    private static readonly TimeSpan AskedEach = TimeSpan.FromMilliseconds(200);

    /// <summary>The fewest rolls with these patterns, or null if no plan was found.</summary>
    /// <param name="demand">The pieces.</param>
    /// <param name="columns">The patterns.</param>
    /// <param name="leastRolls">Rolls that no plan can beat: the search may stop there.</param>
    /// <param name="mostRolls">More rolls than this are of no interest.</param>
    /// <param name="until">When to stop.</param>
    /// <param name="exhausted">Whether it is settled that these patterns make no better plan, or none at all.</param>
    internal static PatternChoice? Of(
        Demand demand, IReadOnlyList<long[]> columns, long leastRolls, long mostRolls, Deadline until, out bool exhausted)
    {
        exhausted = false;
        TimeSpan time = until.Left;
        if (time <= TimeSpan.Zero)
        {
            return null;
        }

        if (demand.Lengths.Where((_, i) => columns.All(column => column[i] == 0)).Any())
        {
            exhausted = true;
            return null;
        }

        var model = new CpModel();
        IntVar[] times = [.. columns.Select(column => model.NewIntVar(0, Most(demand, column), string.Empty))];
        for (int i = 0; i < demand.Lengths.Length; i++)
        {
            int[] cutting = [.. Enumerable.Range(0, columns.Count).Where(c => columns[c][i] > 0)];
            model.Add(LinearExpr.WeightedSum(cutting.Select(c => times[c]), cutting.Select(c => columns[c][i])) >= demand.Counts[i]);
        }

        LinearExpr rolls = LinearExpr.Sum(times);
        model.AddLinearConstraint(rolls, leastRolls, mostRolls);
        model.Minimize(rolls);

        // One worker and one seed: the same search every time.
        var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"max_time_in_seconds:{time.TotalSeconds:0.000000} num_workers:1 random_seed:1"),
        };

        // Asked again and again: a single call would be lost if it came before the solver has begun.
        using var stop = new Timer(
            _ =>
            {
                if (until.Cancellation.IsCancellationRequested)
                {
                    solver.StopSearch();
                }
            },
            null,
            AskedEach,
            AskedEach);
        CpSolverStatus status = solver.Solve(model);
        exhausted = status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible;
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new([.. times.Select(solver.Value)], times.Sum(solver.Value))
            : null;
    }

    private static long Most(Demand demand, long[] column)
    {
        long most = 0;
        for (int i = 0; i < column.Length; i++)
        {
            if (column[i] > 0)
            {
                most = Math.Max(most, (demand.Counts[i] + column[i] - 1) / column[i]);
            }
        }

        return most;
    }
}
