namespace SacrificialTape.TakeOff;

/// <summary>Longest piece first, each onto the roll on which it leaves least.</summary>
internal static class BestFit
{
    internal static List<PackedRolls> Pack(PieceSizes pieces)
    {
        // Least remnant first. The roll that took a piece has the least remnant after it too, so it is cut full.
        var opened = new List<PackedRolls>();
        foreach ((long length, long all) in pieces.Sizes)
        {
            long count = all;
            for (int at = From(opened, length); count > 0 && at < opened.Count; at = From(opened, length))
            {
                PackedRolls tightest = opened[at];
                opened.RemoveAt(at);
                Keep(opened, tightest.Take(length, ref count));
            }

            if (count > 0)
            {
                Keep(opened, pieces.NewRolls(length, count));
            }
        }

        return opened;
    }

    private static void Keep(List<PackedRolls> opened, List<PackedRolls> groups)
    {
        foreach (PackedRolls group in groups)
        {
            opened.Insert(From(opened, group.RemnantUm), group);
        }
    }

    // The first group whose remnant is at least the length.
    private static int From(List<PackedRolls> opened, long lengthUm)
    {
        int low = 0;
        int high = opened.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = opened[middle].RemnantUm < lengthUm ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
