using SacrificialTape.Wrapping;

namespace SacrificialTape.TakeOff;

/// <summary>
/// Cuts the strips of one stock from rolls, in whole micrometres. Whole pieces first, longest first, each onto the
/// first roll that still holds it; then the pieces that may be spliced, one after the other along the remnants and new
/// rolls; last the spare. A plain rule that a crew can follow; it does not claim to be the best plan.
/// </summary>
internal sealed class RollCutting
{
    private readonly long rollUm;
    private readonly long spliceLapUm;
    private readonly long shortestUm;

    // Rolls opened for whole pieces, as groups of rolls with the same remnant: a survey of 100,000 lines has few sizes.
    private readonly List<(long RemnantUm, long Rolls)> opened = [];

    // Remnants of whole pieces long enough to be spliced in or kept as spare.
    private readonly List<long> usable = [];

    // Remnants that only the spare can still use.
    private readonly List<long> leftover = [];

    private long currentUm;

    internal RollCutting(long rollUm, long spliceLapUm, long shortestUm)
    {
        this.rollUm = rollUm;
        this.spliceLapUm = spliceLapUm;
        this.shortestUm = shortestUm;
    }

    internal long Rolls { get; private set; }

    internal long Splices { get; private set; }

    internal long PiecesLongerThanRoll { get; private set; }

    internal long WholePiecesOverHalfRoll { get; private set; }

    internal void Cut(IReadOnlyList<Strip> strips, long contingencyUm)
    {
        var whole = new Dictionary<long, long>();
        foreach (Strip strip in strips)
        {
            if (strip.MaySplice)
            {
                continue;
            }

            if (strip.LengthUm > this.rollUm)
            {
                this.PiecesLongerThanRoll += strip.Count;
            }
            else
            {
                whole[strip.LengthUm] = whole.GetValueOrDefault(strip.LengthUm) + strip.Count;
            }
        }

        foreach ((long length, long count) in whole.OrderByDescending(static piece => piece.Key))
        {
            this.CutWhole(length, count);
        }

        this.KeepRemnants();
        foreach (Strip strip in strips)
        {
            for (int i = 0; i < strip.Count && (strip.MaySplice || strip.LengthUm > this.rollUm); i++)
            {
                this.CutSpliced(strip.LengthUm);
            }
        }

        this.SetAside(contingencyUm);
    }

    private void CutWhole(long lengthUm, long count)
    {
        if (2 * lengthUm > this.rollUm)
        {
            this.WholePiecesOverHalfRoll += count;
        }

        for (int i = 0; i < this.opened.Count && count > 0; i++)
        {
            (long remnant, long rolls) = this.opened[i];
            long each = remnant / lengthUm;
            if (each == 0)
            {
                continue;
            }

            // A group of which not all rolls are filled is split where it stands: the first roll stays the first.
            long filled = Math.Min(rolls, count / each);
            count -= filled * each;
            var split = new List<(long RemnantUm, long Rolls)>(3);
            if (filled > 0)
            {
                split.Add((remnant - (each * lengthUm), filled));
            }

            if (filled < rolls && count > 0)
            {
                split.Add((remnant - (count * lengthUm), 1));
                count = 0;
                filled++;
            }

            if (filled < rolls)
            {
                split.Add((remnant, rolls - filled));
            }

            this.opened.RemoveAt(i);
            this.opened.InsertRange(i, split);
            i += split.Count - 1;
        }

        long perRoll = this.rollUm / lengthUm;
        this.Open(this.rollUm - (perRoll * lengthUm), count / perRoll);
        if (count % perRoll > 0)
        {
            this.Open(this.rollUm - (count % perRoll * lengthUm), 1);
        }
    }

    private void Open(long remnantUm, long rolls)
    {
        if (rolls > 0)
        {
            this.opened.Add((remnantUm, rolls));
            this.Rolls += rolls;
        }
    }

    private void KeepRemnants()
    {
        foreach ((long remnant, long rolls) in this.opened)
        {
            for (long i = 0; i < rolls && remnant >= this.shortestUm; i++)
            {
                this.usable.Add(remnant);
            }
        }

        // The longest stands last, where it is taken first.
        this.usable.Sort();
    }

    private void CutSpliced(long needUm)
    {
        while (needUm > this.currentUm)
        {
            // The rest after the splice must not be a scrap either: stop short on this roll if it would be.
            long takeUm = Math.Min(this.currentUm, needUm + this.spliceLapUm - this.shortestUm);
            if (takeUm >= this.shortestUm)
            {
                needUm += this.spliceLapUm - takeUm;
                this.currentUm -= takeUm;
                this.Splices++;
            }

            this.NextRoll();
        }

        this.currentUm -= needUm;
    }

    private void NextRoll()
    {
        if (this.currentUm >= this.shortestUm)
        {
            // Too long to be scrap, too short for this piece without leaving a scrap on the next roll: kept as spare.
            this.leftover.Add(this.currentUm);
        }

        if (this.usable.Count > 0)
        {
            this.currentUm = this.usable[^1];
            this.usable.RemoveAt(this.usable.Count - 1);
            return;
        }

        this.currentUm = this.rollUm;
        this.Rolls++;
    }

    private void SetAside(long spareUm)
    {
        if (this.currentUm >= this.shortestUm)
        {
            this.leftover.Add(this.currentUm);
        }

        foreach (long remnant in this.usable.Concat(this.leftover))
        {
            spareUm -= Math.Min(spareUm, remnant);
        }

        this.Rolls += (spareUm + this.rollUm - 1) / this.rollUm;
    }
}
