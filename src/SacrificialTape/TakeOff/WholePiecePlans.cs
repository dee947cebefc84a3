namespace SacrificialTape.TakeOff;

/// <summary>
/// Plans of the whole pieces by several rules, the plainest first and each made only when asked for: who reads them
/// stops as soon as one meets the bound.
/// </summary>
internal static class WholePiecePlans
{
    internal static IEnumerable<List<PackedRolls>> Of(PieceSizes pieces, WholePieceBound bound)
    {
        List<PackedRolls> plain = FirstFit.Pack(pieces);
        yield return plain;
        long rolls = plain.Sum(static group => group.Rolls);
        yield return BestFit.Pack(pieces);
        if (rolls > bound.Rolls && pieces.Sizes.Length <= PatternFill.MostSizes)
        {
            yield return PatternFill.Pack(pieces, bound.Rolls);
        }
    }
}
