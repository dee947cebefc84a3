using SacrificialTape.Provenance;

namespace SacrificialTape.TakeOff;

/// <summary>
/// A number of rolls that no plan of whole pieces can beat, with what proves it: the best of many countings of two
/// kinds. Exact differences are taken in whole micrometres, so that nothing left over cannot round to a roll.
/// </summary>
internal sealed record WholePieceBound
{
    private const int MostShares = 20;

    // Counting by threshold: these three. Counting by shares: the last three, with a share number of 1 or more.
    private readonly long almostWhole;
    private readonly long overHalf;
    private readonly double excessMm;
    private readonly long shareNumber;
    private readonly long floors;
    private readonly double exactMm;
    private readonly double rollMm;

    private WholePieceBound(
        long rollUm, long almostWhole, long overHalf, Int128 excessUm, long shareNumber, long floors, Int128 exactUm)
    {
        this.rollMm = rollUm / 1e3;
        this.almostWhole = almostWhole;
        this.overHalf = overHalf;
        this.excessMm = (double)excessUm / 1e3;
        this.shareNumber = shareNumber;
        this.floors = floors;
        this.exactMm = (double)exactUm / 1e3;
        this.Rolls = this.Count(default(NoSteps));
    }

    internal long Rolls { get; }

    internal static WholePieceBound Of(PieceSizes pieces) => ByThreshold(pieces).Concat(ByShares(pieces))
        .Aggregate(static (best, next) => next.Rolls > best.Rolls ? next : best);

    internal long Count<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => (long)(this.shareNumber > 0
            ? TakeOffKernel.LeastRollsByShares(this.exactMm, this.floors, this.shareNumber, this.rollMm, steps)
            : TakeOffKernel.LeastRollsByThreshold(this.almostWhole, this.overHalf, this.excessMm, this.rollMm, steps));

    // Threshold 0 first: it says no more than that pieces over half a roll share none, and that strip is not made of
    // nothing. Then each length up to half a roll.
    private static IEnumerable<WholePieceBound> ByThreshold(PieceSizes pieces)
    {
        (long LengthUm, long Count)[] sizes = pieces.Sizes;
        long roll = pieces.RollUm;
        int halves = Array.FindIndex(sizes, size => 2 * size.LengthUm <= roll) is var at && at < 0 ? sizes.Length : at;
        Int128 longUm = 0;
        long longCount = 0;
        for (int i = 0; i < halves; i++)
        {
            longUm += (Int128)sizes[i].LengthUm * sizes[i].Count;
            longCount += sizes[i].Count;
        }

        // As the threshold falls, fewer long pieces are almost whole and more short ones count.
        Int128 shortUm = 0;
        Int128 almostUm = longUm;
        long almostCount = longCount;
        int almost = halves;
        for (int i = halves; i <= sizes.Length; i++)
        {
            long threshold = i < sizes.Length ? sizes[i].LengthUm : 0;
            if (i < sizes.Length)
            {
                shortUm += (Int128)threshold * sizes[i].Count;
            }

            while (almost > 0 && sizes[almost - 1].LengthUm <= roll - threshold)
            {
                almost--;
                almostUm -= (Int128)sizes[almost].LengthUm * sizes[almost].Count;
                almostCount -= sizes[almost].Count;
            }

            long overHalf = longCount - almostCount;
            Int128 excessUm = shortUm + (longUm - almostUm) - ((Int128)overHalf * roll);
            yield return new WholePieceBound(roll, almostCount, overHalf, excessUm, 0, 0, 0);
        }
    }

    private static IEnumerable<WholePieceBound> ByShares(PieceSizes pieces)
    {
        for (long k = 1; k <= MostShares; k++)
        {
            long floors = 0;
            Int128 exactUm = 0;
            foreach ((long length, long count) in pieces.Sizes)
            {
                (Int128 whole, Int128 rest) = Int128.DivRem((Int128)length * (k + 1), pieces.RollUm);
                if (rest == 0)
                {
                    exactUm += (Int128)length * count;
                }
                else
                {
                    floors += (long)whole * count;
                }
            }

            yield return new WholePieceBound(pieces.RollUm, 0, 0, 0, k, floors, exactUm);
        }
    }
}
