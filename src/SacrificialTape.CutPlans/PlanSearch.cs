using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.CutPlans;

/// <summary>
/// From the plan of the core library to a better one and a better bound. First the bound and some good patterns by column
/// generation. Then all patterns that a plan of as many rolls as the bound can hold: if they make one, it is proved; if
/// they make none, the bound is one higher, and so on. If there are too many or time is short, the best plan of the few.
/// </summary>
internal sealed class PlanSearch
{
    /// <summary>More patterns than this are not tried all; the plan then is proved only if it meets the bound.</summary>
    internal const int MostPatterns = 50_000;

    private readonly Demand demand;
    private readonly CutPlan plain;
    private readonly Deadline deadline;
    private long rolls;

    internal PlanSearch(Demand demand, CutPlan plain, Deadline deadline)
    {
        this.demand = demand;
        this.plain = plain;
        this.deadline = deadline;
        this.rolls = plain.Rolls;
        this.LeastRolls = plain.LeastRolls;
    }

    internal long LeastRolls { get; private set; }

    /// <summary>The better plan; null if none was found.</summary>
    internal IReadOnlyList<CutPattern>? Patterns { get; private set; }

    internal void Run()
    {
        var generation = new ColumnGeneration(this.demand, this.deadline);
        generation.Run(this.demand.Columns(this.plain), this.LeastRolls, this.rolls);
        this.LeastRolls = generation.LeastRolls;
        if (this.LeastRolls == this.rolls)
        {
            return;
        }

        PriceList[] lists = generation.Best is { } best ? [best, PriceList.ByLength(this.demand)] : [PriceList.ByLength(this.demand)];
        var half = new Deadline(this.deadline.Left / 2, this.deadline.Cancellation);
        while (this.LeastRolls < this.rolls && this.Settle(lists, half))
        {
        }

        if (this.LeastRolls < this.rolls)
        {
            _ = this.Choose(generation.Columns, this.rolls - 1, this.deadline);
        }
    }

    // Whether it could be settled if a plan of as many rolls as the bound exists.
    private bool Settle(PriceList[] lists, Deadline until)
    {
        if (PossiblePatterns.Of(this.demand, this.LeastRolls, lists, MostPatterns, until) is not { } all
            || !this.Choose(all, this.LeastRolls, until))
        {
            return false;
        }

        if (this.rolls > this.LeastRolls)
        {
            this.LeastRolls++;
        }

        return true;
    }

    // Whether the search came to its end. What it found is taken over.
    private bool Choose(List<long[]> columns, long mostRolls, Deadline until)
    {
        PatternChoice? choice = PatternChoice.Of(this.demand, columns, this.LeastRolls, mostRolls, until, out bool exhausted);
        if (choice is not null)
        {
            this.rolls = choice.Rolls;
            this.Patterns = this.WithoutSurplus(columns, choice.Times);
        }

        return exhausted;
    }

    // The patterns may cut more than is asked: what is too much is left off, roll by roll.
    private List<CutPattern> WithoutSurplus(List<long[]> columns, long[] times)
    {
        long[] left = [.. this.demand.Counts];
        var patterns = new List<CutPattern>();
        for (int c = 0; c < columns.Count; c++)
        {
            for (long rest = times[c]; rest > 0;)
            {
                // As many rolls as can be cut up alike: all that cut the column in full, or one that does not.
                long[] cut = [.. columns[c].Zip(left, Math.Min)];
                long alike = rest;
                for (int i = 0; i < cut.Length; i++)
                {
                    alike = cut[i] > 0 ? Math.Min(alike, left[i] / cut[i]) : alike;
                }

                if (cut.Sum() > 0)
                {
                    patterns.Add(this.Pattern(cut, alike));
                }

                for (int i = 0; i < cut.Length; i++)
                {
                    left[i] -= alike * cut[i];
                }

                rest -= alike;
            }
        }

        return patterns;
    }

    private CutPattern Pattern(long[] cut, long times) => new(
        Length.FromMicrometers(this.demand.Roll),
        new ValueList<CutPiece>(Enumerable.Range(0, cut.Length).Where(i => cut[i] > 0).Select(
            i => new CutPiece(Length.FromMicrometers(this.demand.Lengths[i]), cut[i]))),
        times);
}
