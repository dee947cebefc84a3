using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>Pieces that are cut to a line, gathered into strips to cut: all of one length together.</summary>
internal sealed class TrimmedPieces
{
    private readonly List<TrimmedPiece> pieces = [];

    internal double KeptMm2 { get; private set; }

    internal double CoverMm2 { get; private set; }

    internal void Add(in TrimmedPiece piece)
    {
        this.pieces.Add(piece);
        this.KeptMm2 += piece.KeptMm2 * piece.Count;
        this.CoverMm2 += piece.CoverMm2 * piece.Count;
    }

    /// <summary>Length of all pieces for which the first test holds, and how many there are for which the second does.</summary>
    internal (double LengthMm, double Count) Sum(Func<TrimmedPiece, bool> measured, Func<TrimmedPiece, bool> counted)
    {
        double length = 0;
        double count = 0;
        foreach (TrimmedPiece piece in this.pieces)
        {
            length += measured(piece) ? piece.LengthMm * piece.Count : 0;
            count += counted(piece) ? piece.Count : 0;
        }

        return (length, count);
    }

    /// <summary>Strips of like length: cover, and what is cut off, are shared among them evenly.</summary>
    internal ValueList<Strip> ToStrips(StripStock stock, int passes, StripPurpose purpose, bool maySplice) => new(
        from piece in this.pieces
        group piece by (Math.Round(piece.LengthMm * 1e3), piece.EndLapMm) into alike
        let count = alike.Sum(static one => one.Count)
        let cover = alike.Sum(static one => one.CoverMm2 * one.Count) / count / stock.WidthMm
        let kept = alike.Sum(static one => one.KeptMm2 * one.Count) / count / stock.WidthMm
        let length = alike.First().LengthMm
        let trim = Math.Max(0, length - alike.Key.EndLapMm - kept)
        select Strip.Computed(stock, length, count * passes, purpose, maySplice, Math.Min(cover, kept), trim));
}
