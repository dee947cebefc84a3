using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;

namespace SacrificialTape.TakeOff;

/// <summary>
/// What is to be cut from rolls of one stock. The order counts rolls; the cut list, which for a large survey is much
/// larger than the take-off, is written only when asked for.
/// </summary>
internal sealed record CutOrder(long RollUm, TakeOffChoices Choices, ValueList<Strip> Strips, long ContingencyUm)
{
    /// <summary>Rolls and splices by the rule that takes fewest, and which of <see cref="WholePiecePlans"/> that is.</summary>
    internal (long Rolls, long Splices, int Rule) Count(WholePieceBound wholePieces, long leastRolls)
    {
        PieceSizes sizes = this.WholePieces();
        (long Rolls, long Splices, int Rule) best = (long.MaxValue, long.MaxValue, -1);
        int rule = 0;

        // The plainest rule wins unless another takes fewer rolls, or as many and fewer splices.
        foreach (List<PackedRolls> plan in WholePiecePlans.Of(sizes, wholePieces))
        {
            RollCutting cutting = this.Cut(plan, null);
            if ((cutting.Rolls, cutting.Splices).CompareTo((best.Rolls, best.Splices)) < 0)
            {
                best = (cutting.Rolls, cutting.Splices, rule);
            }

            if (best.Rolls == leastRolls || sizes.Sizes.Length == 0)
            {
                break;
            }

            rule++;
        }

        return best;
    }

    /// <summary>The cut list by one rule.</summary>
    internal ValueList<CutPattern> Patterns(WholePieceBound wholePieces, int rule)
    {
        var tally = new PatternTally(this.RollUm);
        _ = this.Cut(WholePiecePlans.Of(this.WholePieces(), wholePieces).ElementAt(rule), tally);
        return tally.Patterns();
    }

    internal PieceSizes WholePieces() => new(this.RollUm, this.Strips
        .Where(strip => !strip.MaySplice && strip.LengthUm <= this.RollUm)
        .Select(static strip => (strip.LengthUm, (long)strip.Count)));

    internal RollCutting Cut(List<PackedRolls> whole, PatternTally? tally) =>
        RollCutting.Of(this.RollUm, this.Choices, whole, this.Strips.AsSpan(), this.ContingencyUm, tally);
}
