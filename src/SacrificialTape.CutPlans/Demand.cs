using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.CutPlans;

/// <summary>The pieces as the solver sees them: lengths without double, longest first, and how many of each.</summary>
internal sealed class Demand
{
    private Demand(long roll, long[] lengths, long[] counts)
    {
        this.Roll = roll;
        this.Lengths = lengths;
        this.Counts = counts;
    }

    internal long Roll { get; }

    internal long[] Lengths { get; }

    internal long[] Counts { get; }

    /// <summary>Pieces of the core library; their lengths are whole micrometres.</summary>
    internal static Demand Of(IEnumerable<CutPiece> pieces, Length roll)
    {
        var sizes = pieces.GroupBy(static piece => Um(piece.Length), static piece => piece.Count)
            .Select(static size => (Length: size.Key, Count: size.Sum()))
            .OrderByDescending(static size => size.Length)
            .ToList();
        return new(Um(roll), [.. sizes.Select(static size => size.Length)], [.. sizes.Select(static size => size.Count)]);
    }

    /// <summary>A plan of the core library, each pattern as counts of the lengths.</summary>
    internal IEnumerable<long[]> Columns(CutPlan plan)
    {
        foreach (CutPattern pattern in plan.Patterns)
        {
            long[] column = new long[this.Lengths.Length];
            foreach (CutPiece piece in pattern.Pieces)
            {
                column[Array.IndexOf(this.Lengths, Um(piece.Length))] = piece.Count;
            }

            yield return column;
        }
    }

    internal static long Um(Length length) => (long)Math.Round(length.Micrometers);
}
