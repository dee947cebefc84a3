using Google.OrTools.LinearSolver;

namespace SacrificialTape.CutPlans;

/// <summary>
/// The plan in which rolls may be cut up a fraction of a time: patterns are added as long as one is worth more than a
/// roll at the prices of the plan so far (Gilmore and Gomory, recalled). Each round gives a bound: prices at which no
/// pattern is worth more than M make all the pieces worth at most M times the rolls of any plan.
/// </summary>
internal sealed class ColumnGeneration(Demand demand, Deadline deadline)
{
    // Prices are counted in this part of a roll. What is rounded off makes the bound weaker, never wrong.
    private const long PricePerRoll = 1_000_000_000_000;

    private readonly HashSet<string> known = [];

    internal List<long[]> Columns { get; } = [];

    internal long LeastRolls { get; private set; }

    /// <summary>The prices that prove most; null if none was settled in time.</summary>
    internal PriceList? Best { get; private set; }

    /// <summary>Generates until no pattern helps, the bound reaches the rolls of a plan in hand, or the time is up.</summary>
    internal void Run(IEnumerable<long[]> start, long leastRolls, long rollsInHand)
    {
        this.LeastRolls = leastRolls;
        using Solver solver = Solver.CreateSolver("GLOP")
            ?? throw new InvalidOperationException("The solver library has no linear solver GLOP.");
        Objective objective = solver.Objective();
        objective.SetMinimization();
        Constraint[] rows = [.. demand.Counts.Select(count => solver.MakeConstraint(count, double.PositiveInfinity))];
        foreach (long[] column in start)
        {
            this.Add(column, solver, objective, rows);
        }

        while (this.LeastRolls < rollsInHand && !deadline.Passed)
        {
            solver.SetTimeLimit((long)Math.Max(1, deadline.Left.TotalMilliseconds));
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                return;
            }

            long[] prices = [.. rows.Select(static row => (long)(Math.Clamp(row.DualValue(), 0, 1) * PricePerRoll))];
            Pricing pricing = Pricing.Of(demand, prices, deadline);
            if (pricing.Exact && pricing.BestWorth > 0)
            {
                PriceList list = PriceList.Of(demand, prices, pricing.BestWorth);
                this.LeastRolls = Math.Max(this.LeastRolls, list.LeastRolls);

                // The list that leaves a plan least to lose, in rolls.
                if (this.Best is not { } best || list.PiecesWorth * best.RollWorth > best.PiecesWorth * list.RollWorth)
                {
                    this.Best = list;
                }
            }

            if (pricing.BestWorth <= PricePerRoll + (PricePerRoll / 1_000_000_000) || !this.Add([.. pricing.Best], solver, objective, rows))
            {
                return;
            }
        }
    }

    private bool Add(long[] column, Solver solver, Objective objective, Constraint[] rows)
    {
        if (!this.known.Add(string.Join(' ', column)))
        {
            return false;
        }

        this.Columns.Add(column);
        Variable times = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
        objective.SetCoefficient(times, 1);
        for (int i = 0; i < rows.Length; i++)
        {
            if (column[i] > 0)
            {
                rows[i].SetCoefficient(times, column[i]);
            }
        }

        return true;
    }
}
