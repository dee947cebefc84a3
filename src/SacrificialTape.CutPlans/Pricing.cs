namespace SacrificialTape.CutPlans;

/// <summary>
/// The pattern worth most at given prices of the pieces: a search of all patterns in whole numbers, cut off where the
/// room left cannot be worth enough. What it finds is exact, unless the time is up, and then it says so.
/// </summary>
internal sealed class Pricing
{
    private const int NodesBetweenLooks = 4096;

    private readonly Demand demand;
    private readonly Deadline deadline;
    private readonly long[] prices;
    private readonly int[] order;
    private readonly long[] chosen;
    private long[] best = [];
    private int nodes;

    private Pricing(Demand demand, long[] prices, Deadline deadline)
    {
        this.demand = demand;
        this.prices = prices;
        this.deadline = deadline;
        this.chosen = new long[prices.Length];

        // Dearest by length first: the room left is worth at most the price of the next one all through.
        this.order = [.. Enumerable.Range(0, prices.Length).Where(i => prices[i] > 0)];
        Array.Sort(this.order, (one, two) =>
        {
            int dearer = ((Int128)prices[two] * demand.Lengths[one]).CompareTo((Int128)prices[one] * demand.Lengths[two]);
            return dearer != 0 ? dearer : one.CompareTo(two);
        });
    }

    internal long BestWorth { get; private set; } = -1;

    internal IReadOnlyList<long> Best => this.best;

    /// <summary>Whether every pattern was looked at, so that none is worth more.</summary>
    internal bool Exact { get; private set; } = true;

    internal static Pricing Of(Demand demand, long[] prices, Deadline deadline)
    {
        var pricing = new Pricing(demand, prices, deadline);
        pricing.Deepen(0, demand.Roll, 0);
        return pricing;
    }

    private void Deepen(int at, long room, long worth)
    {
        if (worth > this.BestWorth)
        {
            this.BestWorth = worth;
            this.best = [.. this.chosen];
        }

        for (; at < this.order.Length; at++)
        {
            int size = this.order[at];
            long length = this.demand.Lengths[size];
            if (worth + ((Int128)room * this.prices[size] / length) <= this.BestWorth)
            {
                return;
            }

            for (long count = Math.Min(this.demand.Counts[size], room / length); count > 0 && this.Exact; count--)
            {
                if (++this.nodes % NodesBetweenLooks == 0 && this.deadline.Passed)
                {
                    this.Exact = false;
                }

                this.chosen[size] = count;
                this.Deepen(at + 1, room - (count * length), worth + (count * this.prices[size]));
            }

            this.chosen[size] = 0;
            if (!this.Exact)
            {
                return;
            }
        }
    }
}
