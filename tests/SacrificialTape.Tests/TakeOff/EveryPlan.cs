namespace SacrificialTape.Tests.TakeOff;

/// <summary>The fewest rolls, by trying every way of putting pieces on rolls. Shares nothing with the library.</summary>
internal static class EveryPlan
{
    internal static int FewestRolls(long rollUm, IEnumerable<long> piecesUm)
    {
        long[] pieces = [.. piecesUm.OrderDescending()];
        int fewest = pieces.Length;
        Place(pieces, 0, [], rollUm, ref fewest);
        return fewest;
    }

    private static void Place(long[] pieces, int at, List<long> left, long rollUm, ref int fewest)
    {
        if (left.Count >= fewest)
        {
            return;
        }

        if (at == pieces.Length)
        {
            fewest = left.Count;
            return;
        }

        // On each roll begun, two with as much left being one choice, or on a new one.
        foreach (int i in Enumerable.Range(0, left.Count).Where(i => left[i] >= pieces[at]).DistinctBy(i => left[i]).ToArray())
        {
            left[i] -= pieces[at];
            Place(pieces, at + 1, left, rollUm, ref fewest);
            left[i] += pieces[at];
        }

        left.Add(rollUm - pieces[at]);
        Place(pieces, at + 1, left, rollUm, ref fewest);
        left.RemoveAt(left.Count - 1);
    }
}
