namespace SacrificialTape.TakeOff;

/// <summary>Rolls cut up alike. A survey of 100,000 lines has few sizes, so it has few groups.</summary>
internal readonly record struct PackedRolls(long RemnantUm, long Rolls, Cut? Cuts)
{
    /// <summary>
    /// Puts as many of the pieces as there are, or fit, onto these rolls, one roll full before the next: the groups that
    /// come of it in the order of the rolls, and the pieces still to cut.
    /// </summary>
    internal List<PackedRolls> Take(long lengthUm, ref long count)
    {
        long each = this.RemnantUm / lengthUm;
        long filled = Math.Min(this.Rolls, count / each);
        count -= filled * each;
        var split = new List<PackedRolls>(3);
        if (filled > 0)
        {
            split.Add(this.With(lengthUm, each, filled));
        }

        if (filled < this.Rolls && count > 0)
        {
            split.Add(this.With(lengthUm, count, 1));
            count = 0;
            filled++;
        }

        if (filled < this.Rolls)
        {
            split.Add(this with { Rolls = this.Rolls - filled });
        }

        return split;
    }

    private PackedRolls With(long lengthUm, long count, long rolls) =>
        new(this.RemnantUm - (count * lengthUm), rolls, new Cut(lengthUm, count, this.Cuts));
}
