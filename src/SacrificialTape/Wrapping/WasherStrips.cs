using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>The strips that washers are cut from, so that a job's rolls hold them.</summary>
/// <remarks>
/// All pieces but the last are of the stated length and as full as <see cref="WasherCutting"/> makes them; the last is as
/// short as the washers that are left allow, to a whole micrometre. Washers count as cover, the rest of a piece as trim.
/// </remarks>
public static class WasherStrips
{
    /// <summary>The strips for all washers of one size.</summary>
    /// <param name="washer">The washers; all of its count are cut.</param>
    /// <param name="stock">The strip, at least as wide as a washer.</param>
    /// <param name="pieceLength">Length of the pieces that go to the cutting table, at least that of a washer.</param>
    /// <param name="gap">Left between washers for the tool; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or strip or piece is smaller than a washer.</exception>
    [BasisOf(typeof(WasherFormulas), nameof(WasherFormulas.Yield))]
    public static ValueList<Strip> For(Washer washer, StripStock stock, Length pieceLength, Length? gap = null)
    {
        ArgumentNullException.ThrowIfNull(washer);
        ArgumentNullException.ThrowIfNull(stock);
        AcceptedRange.AtLeast(washer.OutsideMm, "mm").Noting("the washer's outside diameter").Check(stock.WidthMm, nameof(stock));
        double length = AcceptedRange.AtLeast(washer.OutsideMm, "mm").Noting("the washer's outside diameter")
            .Check(UnitConversions.Millimeters(pieceLength), nameof(pieceLength));
        long each = new WasherCutting(washer, stock.Width, pieceLength, gap).Count;
        long full = washer.Count / each;
        long left = washer.Count - (full * each);
        double washerMm = UnitConversions.SquareMeters(washer.Area) * 1e6 / washer.Count / stock.WidthMm;
        var strips = new List<Strip>(2);
        if (full > 0)
        {
            strips.Add(Cut(stock, length, (int)full, each * washerMm));
        }

        if (left > 0)
        {
            strips.Add(Cut(stock, ShortestMm(washer, stock, length, gap, left), 1, left * washerMm));
        }

        return new ValueList<Strip>(strips);
    }

    private static Strip Cut(StripStock stock, double lengthMm, int count, double coverMm) =>
        Strip.Computed(stock, lengthMm, count, StripPurpose.Washer, false, coverMm, Math.Max(0, lengthMm - coverMm));

    // A longer strip never yields fewer.
    private static double ShortestMm(Washer washer, StripStock stock, double lengthMm, Length? gap, long wanted)
    {
        long low = (long)Math.Ceiling(washer.OutsideMm * 1e3) - 1;
        long high = (long)Math.Ceiling(lengthMm * 1e3);
        while (high - low > 1)
        {
            long middle = low + ((high - low) / 2);
            bool enough = new WasherCutting(washer, stock.Width, Length.FromMillimeters(middle / 1e3), gap).Count >= wanted;
            (low, high) = enough ? (low, middle) : (middle, high);
        }

        return Math.Min(high / 1e3, lengthMm);
    }
}
