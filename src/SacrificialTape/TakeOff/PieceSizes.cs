namespace SacrificialTape.TakeOff;

/// <summary>Pieces grouped by length, longest first, and the roll they are cut from; in whole micrometres.</summary>
internal sealed class PieceSizes
{
    internal PieceSizes(long rollUm, IEnumerable<(long LengthUm, long Count)> pieces)
    {
        this.RollUm = rollUm;
        var counts = new Dictionary<long, long>();
        foreach ((long length, long count) in pieces)
        {
            counts[length] = checked(counts.GetValueOrDefault(length) + count);
        }

        this.Sizes = [.. counts.Select(static size => (size.Key, size.Value)).OrderByDescending(static size => size.Key)];
    }

    internal long RollUm { get; }

    internal (long LengthUm, long Count)[] Sizes { get; }

    /// <summary>Rolls enough for as many pieces of a length as are left, each roll cut full before the next.</summary>
    internal List<PackedRolls> NewRolls(long lengthUm, long count)
    {
        long perRoll = this.RollUm / lengthUm;
        return new PackedRolls(this.RollUm, (count / perRoll) + (count % perRoll > 0 ? 1 : 0), null).Take(lengthUm, ref count);
    }
}
