using SacrificialTape.Quantities;

namespace SacrificialTape.TakeOff;

/// <summary>Counts rolls that are cut up alike. What is on a roll is written as one row of numbers, which is the key.</summary>
internal sealed class PatternTally(long rollUm)
{
    // Lengths are more than nothing, so neither mark can be one.
    private const long RunsFollow = 0;
    private const long SpareFollows = -1;

    private readonly Dictionary<long[], long> times = new(new RowEquality());
    private readonly List<long> row = [];

    internal void Add(Cut? pieces, IReadOnlyList<(long LengthUm, long Count)> runs, long spareUm, long rolls)
    {
        this.row.Clear();
        for (Cut? cut = pieces; cut is not null; cut = cut.Before)
        {
            this.row.Add(cut.Count);
            this.row.Add(cut.LengthUm);
        }

        // Cut last stands first in the list: turned round, the row reads longest first, each length before its count.
        this.row.Reverse();
        this.row.Add(RunsFollow);
        foreach ((long length, long count) in runs)
        {
            this.row.Add(length);
            this.row.Add(count);
        }

        this.row.Add(SpareFollows);
        this.row.Add(spareUm);
        long[] key = [.. this.row];
        this.times[key] = this.times.GetValueOrDefault(key) + rolls;
    }

    /// <summary>Patterns with the longest pieces first, those without whole pieces last.</summary>
    internal ValueList<CutPattern> Patterns() => new(this.times
        .OrderByDescending(static pattern => pattern.Key, Comparer<long[]>.Create(static (one, two) => one.AsSpan().SequenceCompareTo(two)))
        .Select(pattern => this.Pattern(pattern.Key, pattern.Value)));

    private CutPattern Pattern(long[] key, long rolls)
    {
        int runs = Array.IndexOf(key, RunsFollow);
        return new CutPattern(rollUm, Pieces(key.AsSpan(0, runs)), Pieces(key.AsSpan((runs + 1)..^2)), key[^1], rolls);
    }

    private static ValueList<CutPiece> Pieces(ReadOnlySpan<long> lengthsAndCounts)
    {
        if (lengthsAndCounts.IsEmpty)
        {
            return ValueList<CutPiece>.Empty;
        }

        var pieces = new CutPiece[lengthsAndCounts.Length / 2];
        for (int i = 0; i < pieces.Length; i++)
        {
            pieces[i] = new CutPiece(lengthsAndCounts[2 * i], lengthsAndCounts[(2 * i) + 1]);
        }

        return ValueList<CutPiece>.Owning(pieces);
    }

    private sealed class RowEquality : IEqualityComparer<long[]>
    {
        public bool Equals(long[]? x, long[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(long[] obj)
        {
            var hash = default(HashCode);
            hash.AddBytes(System.Runtime.InteropServices.MemoryMarshal.AsBytes(obj.AsSpan()));
            return hash.ToHashCode();
        }
    }
}
