namespace SacrificialTape.TakeOff;

/// <summary>Longest piece first, each onto the first roll that still holds it.</summary>
internal static class FirstFit
{
    internal static List<PackedRolls> Pack(PieceSizes pieces)
    {
        var opened = new List<PackedRolls>();
        foreach ((long length, long all) in pieces.Sizes)
        {
            long count = all;
            for (int i = 0; i < opened.Count && count > 0; i++)
            {
                if (opened[i].RemnantUm < length)
                {
                    continue;
                }

                // A group of which not all rolls are filled is split where it stands: the first roll stays the first.
                List<PackedRolls> split = opened[i].Take(length, ref count);
                opened.RemoveAt(i);
                opened.InsertRange(i, split);
                i += split.Count - 1;
            }

            if (count > 0)
            {
                opened.AddRange(pieces.NewRolls(length, count));
            }
        }

        return opened;
    }
}
