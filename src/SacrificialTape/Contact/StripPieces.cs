using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Contact;

/// <summary>Strips cut into pieces of at most one turn, with the grid that finds them.</summary>
internal sealed class StripPieces
{
    private readonly StripPiece[] pieces;

    internal StripPieces(ValueList<PlacedStrip> strips, UnrolledSurface surface)
        : this([.. Cut(strips, surface.LengthMm, surface.GirthMm, surface.IsClosed)], strips.Count, surface)
    {
    }

    internal StripPieces(StripPiece[] pieces, int strips, UnrolledSurface surface)
    {
        this.pieces = pieces;
        this.Strips = strips;
        this.Surface = surface;
        this.Grid = new PieceGrid(pieces, surface.LengthMm, surface.GirthMm, surface.IsClosed);
    }

    internal UnrolledSurface Surface { get; }

    internal int Strips { get; }

    internal ReadOnlySpan<StripPiece> All => this.pieces;

    internal PieceGrid Grid { get; }

    /// <summary>Which strips hang together through laps of at least so much area, on a tape whose laps conduct or not.</summary>
    internal StripSets Join(bool lapsConduct, double leastMm2)
    {
        var sets = new StripSets(this.Strips);
        if (!lapsConduct)
        {
            return sets;
        }

        double length = this.Surface.LengthMm;
        double girth = this.Surface.GirthMm;
        bool closed = this.Surface.IsClosed;
        for (int cell = 0; cell < this.Grid.CellCount; cell++)
        {
            ReadOnlySpan<int> members = this.Grid.In(cell);
            for (int i = 1; i < members.Length; i++)
            {
                ref readonly StripPiece one = ref this.pieces[members[i]];
                for (int j = 0; j < i; j++)
                {
                    ref readonly StripPiece other = ref this.pieces[members[j]];
                    if (sets.RootOf(one.Strip) != sets.RootOf(other.Strip)
                        && one.SharedMm2(other, length, girth, closed) is > 0 and var shared
                        && WithAllowance.AtLeast(shared, leastMm2))
                    {
                        sets.Join(one.Strip, other.Strip);
                    }
                }
            }
        }

        return sets;
    }

    private static IEnumerable<StripPiece> Cut(ValueList<PlacedStrip> strips, double lengthMm, double girthMm, bool closed)
    {
        for (int strip = 0; strip < strips.Count; strip++)
        {
            PlacedStrip place = strips[strip];
            double slope = place.LeanMm / place.AroundMm;
            double from = place.FromAroundMm;
            double to = from + place.AroundMm;
            if (!closed)
            {
                double low = Math.Max(0, from);
                double high = Math.Min(girthMm, to);
                if (high > low)
                {
                    var piece = new StripPiece(
                        strip, place.FromAlongMm + (slope * (low - from)), place.AlongMm, place.AlongMm, low, high, slope, place.Pass == 1);
                    if (piece.HighX > 0 && piece.LowX < lengthMm)
                    {
                        yield return piece;
                    }
                }

                continue;
            }

            double own = slope == 0 || place.AroundMm <= girthMm ? place.AlongMm : Math.Min(place.AlongMm, Math.Abs(slope) * girthMm);
            for (int turn = 0; from + (turn * girthMm) < to; turn++)
            {
                double begin = from + (turn * girthMm);
                double low = BareSpot.Turned(begin, girthMm);
                double high = low + Math.Min(to - begin, girthMm);
                var piece = new StripPiece(
                    strip, place.FromAlongMm + (slope * turn * girthMm), place.AlongMm, own, low, high, slope, place.Pass == 1 && (turn == 0 || slope != 0));
                if (piece.HighX > 0 && piece.LowX < lengthMm)
                {
                    yield return piece;
                }
            }
        }
    }
}
