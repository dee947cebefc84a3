namespace SacrificialTape.TakeOff;

/// <summary>
/// One roll after the other, each with the pattern worth most that a bounded search finds, used as often as pieces
/// allow. In the first rounds a piece is worth its length, so that rolls are filled; in later rounds pieces that ended
/// on badly filled rolls are worth more and are cut earlier. Same pieces, same plan: nothing is drawn by lot.
/// </summary>
internal sealed class PatternFill
{
    /// <summary>More lengths than this are left to the plainer rules: a search among them takes too long.</summary>
    internal const int MostSizes = 500;

    private const int Rounds = 60;
    private const long NodesPerPattern = 3000;
    private const long NodesInAll = 4_000_000;

    private readonly PieceSizes pieces;
    private readonly long[] left;
    private readonly double[] worth;
    private readonly double[] densestFrom;
    private readonly long[] chosen;
    private readonly long[] best;
    private double bestWorth;
    private long bestFilledUm;
    private long nodes;
    private long nodesInAll;

    private PatternFill(PieceSizes pieces)
    {
        this.pieces = pieces;
        int sizes = pieces.Sizes.Length;
        this.left = new long[sizes];
        this.worth = new double[sizes];
        this.densestFrom = new double[sizes + 1];
        this.chosen = new long[sizes];
        this.best = new long[sizes];
    }

    /// <summary>The best plan of all rounds; the rounds end when one meets the bound.</summary>
    internal static List<PackedRolls> Pack(PieceSizes pieces, long leastRolls)
    {
        var fill = new PatternFill(pieces);
        List<PackedRolls>? fewest = null;
        long rolls = long.MaxValue;
        for (int round = 0; round < Rounds && rolls > leastRolls && (round < 2 || fill.nodesInAll < NodesInAll); round++)
        {
            if (round is 0 or 2)
            {
                fill.WorthByLength();
            }

            // The first round starts every roll with the longest piece left, the others leave that to the search.
            List<PackedRolls> plan = fill.Round(longestFirst: round == 0, learn: round >= 2);
            long taken = plan.Sum(static group => group.Rolls);
            if (taken < rolls)
            {
                (fewest, rolls) = (plan, taken);
            }
        }

        return fewest!;
    }

    private double Share(int size) => (double)this.pieces.Sizes[size].LengthUm / this.pieces.RollUm;

    private void WorthByLength()
    {
        for (int i = 0; i < this.worth.Length; i++)
        {
            this.worth[i] = this.Share(i);
        }
    }

    private List<PackedRolls> Round(bool longestFirst, bool learn)
    {
        for (int i = 0; i < this.left.Length; i++)
        {
            this.left[i] = this.pieces.Sizes[i].Count;
        }

        var plan = new List<PackedRolls>();
        for (int longest = 0; ;)
        {
            while (longest < this.left.Length && this.left[longest] == 0)
            {
                longest++;
            }

            if (longest == this.left.Length)
            {
                return plan;
            }

            this.Search(longest, longestFirst);
            long times = long.MaxValue;
            Cut? cuts = null;
            for (int i = longest; i < this.best.Length; i++)
            {
                if (this.best[i] > 0)
                {
                    times = Math.Min(times, this.left[i] / this.best[i]);
                    cuts = new Cut(this.pieces.Sizes[i].LengthUm, this.best[i], cuts);
                }
            }

            plan.Add(new PackedRolls(this.pieces.RollUm - this.bestFilledUm, times, cuts));
            double filled = (double)this.bestFilledUm / this.pieces.RollUm;
            for (int i = longest; i < this.best.Length; i++)
            {
                if (this.best[i] > 0)
                {
                    this.left[i] -= times * this.best[i];
                    if (learn)
                    {
                        // Half the old worth, half the length that the piece took up with its share of the waste; long
                        // pieces a little more than by length, since they are harder to place.
                        this.worth[i] = (this.worth[i] + (this.Share(i) * (1 + (0.05 * this.Share(i))) / filled)) / 2;
                    }
                }
            }
        }
    }

    private void Search(int longest, bool longestFirst)
    {
        this.densestFrom[^1] = 0;
        for (int i = this.worth.Length - 1; i >= longest; i--)
        {
            this.densestFrom[i] = this.left[i] > 0
                ? Math.Max(this.densestFrom[i + 1], this.worth[i] / this.Share(i))
                : this.densestFrom[i + 1];
        }

        this.nodes = 0;
        this.bestWorth = -1;
        long roll = this.pieces.RollUm;
        if (longestFirst)
        {
            this.chosen[longest] = 1;
            this.left[longest]--;
            this.Deepen(longest, roll - this.pieces.Sizes[longest].LengthUm, this.worth[longest]);
            this.chosen[longest] = 0;
            this.left[longest]++;
        }
        else
        {
            this.Deepen(longest, roll, 0);
        }

        this.nodesInAll += this.nodes;
    }

    // Choices among the sizes from `at` on; a size already chosen once keeps that one.
    private void Deepen(int at, long roomUm, double worthSoFar)
    {
        if (worthSoFar > this.bestWorth)
        {
            this.bestWorth = worthSoFar;
            this.bestFilledUm = this.pieces.RollUm - roomUm;
            Array.Copy(this.chosen, this.best, this.best.Length);
        }

        for (; at < this.left.Length && this.nodes < NodesPerPattern; at++)
        {
            // Shares of the roll, not micrometres: pieces and roll all twice as long must give the same plan.
            double room = (double)roomUm / this.pieces.RollUm;
            if (worthSoFar + (room * this.densestFrom[at]) <= this.bestWorth * (1 + 1e-12))
            {
                return;
            }

            long length = this.pieces.Sizes[at].LengthUm;
            long most = Math.Min(this.left[at], roomUm / length);
            long kept = this.chosen[at];
            for (long count = most; count > 0 && this.nodes < NodesPerPattern; count--)
            {
                this.nodes++;
                this.chosen[at] = kept + count;
                this.Deepen(at + 1, roomUm - (count * length), worthSoFar + (count * this.worth[at]));
            }

            this.chosen[at] = kept;
        }
    }
}
