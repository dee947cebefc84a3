using SacrificialTape.Wrapping;

namespace SacrificialTape.TakeOff;

/// <summary>
/// Carries out a plan of the whole pieces of one stock, in whole micrometres: the pieces that may be spliced are cut one
/// after the other along the remnants and new rolls, and last the spare is set aside. With a tally each roll is written
/// down; without, rolls and splices are only counted, which is all that an order needs.
/// </summary>
internal sealed class RollCutting
{
    private static readonly (long LengthUm, long Count)[] NoRuns = [];

    private readonly long rollUm;
    private readonly long spliceLapUm;
    private readonly long shortestUm;
    private readonly PatternTally? tally;

    // Remnants of whole pieces long enough to be spliced in or kept as spare; the longest stand last.
    private readonly List<PackedRolls> usable = [];

    // Rolls with a remnant that only the spare can still use, in the order they were left.
    private readonly List<(Cut? Pieces, (long LengthUm, long Count)[] Runs, long RemnantUm)> leftover = [];

    // What they have left together, counted with and without a tally.
    private long leftoverUm;

    private readonly List<(long LengthUm, long Count)> runs = [];
    private Cut? currentPieces;
    private long currentUm;
    private bool open;

    private RollCutting(long rollUm, TakeOffChoices choices, PatternTally? tally)
    {
        this.rollUm = rollUm;
        this.spliceLapUm = choices.SpliceLapUm;
        this.shortestUm = choices.ShortestUm;
        this.tally = tally;
    }

    internal long Rolls { get; private set; }

    internal long Splices { get; private set; }

    internal static RollCutting Of(
        long rollUm, TakeOffChoices choices, IReadOnlyList<PackedRolls> whole, ReadOnlySpan<Strip> strips, long contingencyUm, PatternTally? tally)
    {
        var cutting = new RollCutting(rollUm, choices, tally);
        cutting.KeepRemnants(whole);
        foreach (Strip strip in strips)
        {
            for (int i = 0; i < strip.Count && (strip.MaySplice || strip.LengthUm > rollUm); i++)
            {
                cutting.CutSpliced(strip.LengthUm);
            }
        }

        cutting.Close();
        cutting.SetAside(contingencyUm);
        return cutting;
    }

    private void KeepRemnants(IReadOnlyList<PackedRolls> whole)
    {
        foreach (PackedRolls group in whole)
        {
            this.Rolls += group.Rolls;
            if (group.RemnantUm >= this.shortestUm)
            {
                this.usable.Add(group);
            }
            else
            {
                this.tally?.Add(group.Cuts, NoRuns, 0, group.Rolls);
            }
        }

        this.usable.Sort(static (one, two) => one.RemnantUm.CompareTo(two.RemnantUm));
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
                this.Run(takeUm);
                this.Splices++;
            }

            this.NextRoll();
        }

        this.Run(needUm);
    }

    private void Run(long lengthUm)
    {
        this.currentUm -= lengthUm;
        if (this.tally is null)
        {
            return;
        }

        if (this.runs.Count > 0 && this.runs[^1].LengthUm == lengthUm)
        {
            this.runs[^1] = (lengthUm, this.runs[^1].Count + 1);
        }
        else
        {
            this.runs.Add((lengthUm, 1));
        }
    }

    private void NextRoll()
    {
        this.Close();
        this.open = true;
        if (this.usable.Count > 0)
        {
            PackedRolls longest = this.usable[^1];
            this.currentUm = longest.RemnantUm;
            this.currentPieces = longest.Cuts;
            if (longest.Rolls > 1)
            {
                this.usable[^1] = longest with { Rolls = longest.Rolls - 1 };
            }
            else
            {
                this.usable.RemoveAt(this.usable.Count - 1);
            }

            return;
        }

        this.currentUm = this.rollUm;
        this.currentPieces = null;
        this.Rolls++;
    }

    private void Close()
    {
        if (!this.open)
        {
            return;
        }

        if (this.currentUm >= this.shortestUm)
        {
            // Too long to be scrap, too short for the next piece without leaving a scrap on the next roll: kept as spare.
            this.leftoverUm += this.currentUm;
            if (this.tally is not null)
            {
                this.leftover.Add((this.currentPieces, [.. this.runs], this.currentUm));
            }
        }
        else
        {
            this.tally?.Add(this.currentPieces, this.runs, 0, 1);
        }

        this.runs.Clear();
        this.currentUm = 0;
        this.open = false;
    }

    private void SetAside(long spareUm)
    {
        foreach (PackedRolls group in this.usable)
        {
            spareUm = this.Spare(group.Cuts, NoRuns, group.RemnantUm, group.Rolls, spareUm);
        }

        long fromLeftover = spareUm;
        foreach ((Cut? pieces, (long, long)[] cut, long remnant) in this.leftover)
        {
            fromLeftover = this.Spare(pieces, cut, remnant, 1, fromLeftover);
        }

        spareUm -= Math.Min(spareUm, this.leftoverUm);
        long rolls = (spareUm + this.rollUm - 1) / this.rollUm;
        this.Rolls += rolls;
        _ = this.Spare(null, NoRuns, this.rollUm, rolls, spareUm);
    }

    // Sets aside what these rolls have left, as far as spare is wanted, and gives what is still wanted.
    private long Spare(Cut? pieces, (long LengthUm, long Count)[] cut, long remnantUm, long rolls, long spareUm)
    {
        long full = Math.Min(rolls, spareUm / remnantUm);
        spareUm -= full * remnantUm;
        long rest = full < rolls ? spareUm : 0;
        this.Write(pieces, cut, remnantUm, full);
        this.Write(pieces, cut, rest, Math.Min(1, rolls - full));
        this.Write(pieces, cut, 0, rolls - full - 1);
        return spareUm - rest;
    }

    private void Write(Cut? pieces, (long LengthUm, long Count)[] cut, long spareUm, long rolls)
    {
        if (rolls > 0)
        {
            this.tally?.Add(pieces, cut, spareUm, rolls);
        }
    }
}
