namespace SacrificialTape.CutPlans;

/// <summary>
/// The patterns that a plan of a given number of rolls can hold: those onto which no further piece fits and which, by
/// each of the price lists, lose no more than the whole plan can. Any such plan can be made of them by leaving pieces
/// off, for a pattern with more pieces on it loses less.
/// </summary>
internal sealed class PossiblePatterns
{
    private const int NodesBetweenLooks = 4096;

    private readonly Demand demand;
    private readonly (PriceList List, Int128 Least, Int128[] AllFrom)[] tests;
    private readonly int most;
    private readonly Deadline deadline;
    private readonly List<long[]> patterns = [];
    private readonly long[] chosen;
    private readonly Int128[] worth;
    private long nodes;
    private bool gaveUp;

    private PossiblePatterns(Demand demand, long rolls, IReadOnlyList<PriceList> lists, int most, Deadline deadline)
    {
        this.demand = demand;
        this.most = most;
        this.deadline = deadline;
        this.chosen = new long[demand.Lengths.Length];
        this.worth = new Int128[lists.Count];
        this.tests = [.. lists.Select(list => (list, list.RollWorth - list.Slack(rolls), this.AllFrom(list)))];
    }

    /// <summary>The patterns, or null if there are more than so many or the time is up.</summary>
    internal static List<long[]>? Of(Demand demand, long rolls, IReadOnlyList<PriceList> lists, int most, Deadline deadline)
    {
        var possible = new PossiblePatterns(demand, rolls, lists, most, deadline);
        possible.Deepen(0, demand.Roll, long.MaxValue);
        return possible.gaveUp ? null : possible.patterns;
    }

    // What all pieces from a length on are worth together.
    private Int128[] AllFrom(PriceList list)
    {
        var all = new Int128[this.demand.Lengths.Length + 1];
        for (int i = all.Length - 2; i >= 0; i--)
        {
            all[i] = all[i + 1] + ((Int128)list.Prices[i] * this.demand.Counts[i]);
        }

        return all;
    }

    // Shortest left off: of the lengths before, the shortest of which a further piece was there to cut.
    private void Deepen(int at, long room, long shortestLeftOff)
    {
        if (++this.nodes % NodesBetweenLooks == 0 && this.deadline.Passed)
        {
            this.gaveUp = true;
        }

        if (this.gaveUp || !this.CanBeWorthEnough(at, room))
        {
            return;
        }

        if (at == this.demand.Lengths.Length)
        {
            if (room < shortestLeftOff)
            {
                this.patterns.Add([.. this.chosen]);
                this.gaveUp = this.patterns.Count > this.most;
            }

            return;
        }

        long length = this.demand.Lengths[at];
        for (long count = Math.Min(this.demand.Counts[at], room / length); count >= 0; count--)
        {
            this.Put(at, count);
            this.Deepen(at + 1, room - (count * length), count < this.demand.Counts[at] ? length : shortestLeftOff);
        }

        this.Put(at, 0);
    }

    private void Put(int at, long count)
    {
        for (int i = 0; i < this.tests.Length; i++)
        {
            this.worth[i] += (Int128)this.tests[i].List.Prices[at] * (count - this.chosen[at]);
        }

        this.chosen[at] = count;
    }

    private bool CanBeWorthEnough(int at, long room)
    {
        for (int i = 0; i < this.tests.Length; i++)
        {
            (PriceList list, Int128 least, Int128[] allFrom) = this.tests[i];
            Int128 missing = least - this.worth[i];
            if (missing <= 0)
            {
                continue;
            }

            // The pieces to come fill at most the room, each at its price by length.
            if (allFrom[at] < missing)
            {
                return false;
            }

            bool dear = false;
            for (int size = at; size < list.Prices.Length && !dear; size++)
            {
                dear = this.demand.Lengths[size] <= room && (Int128)room * list.Prices[size] >= missing * this.demand.Lengths[size];
            }

            if (!dear)
            {
                return false;
            }
        }

        return true;
    }
}
