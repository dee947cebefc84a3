namespace SacrificialTape.Contact;

/// <summary>A part of a strip within one turn of the surface, in mm: a parallelogram whose two sides run along.</summary>
/// <param name="Strip">Index of the strip.</param>
/// <param name="X">Where it begins along, at its lower side around.</param>
/// <param name="Along">Its extent along.</param>
/// <param name="OwnAlong">The part of that which the next turn of the same strip leaves to it.</param>
/// <param name="LowY">Its lower side around, within the first turn.</param>
/// <param name="HighY">Its upper side around, at most one turn further.</param>
/// <param name="Slope">How far it moves along for each unit around.</param>
/// <param name="OnSteel">Whether it is of the first pass, and not the lap of a strip on itself.</param>
internal readonly record struct StripPiece(
    int Strip, double X, double Along, double OwnAlong, double LowY, double HighY, double Slope, bool OnSteel)
{
    internal double LowX => this.X + Math.Min(0, this.Lean);

    internal double HighX => this.X + this.Along + Math.Max(0, this.Lean);

    private double Lean => this.Slope * (this.HighY - this.LowY);

    /// <summary>Area shared with another piece somewhere on the surface, in mm2 of the unrolled surface.</summary>
    internal double SharedMm2(in StripPiece other, double lengthMm, double girthMm, bool closed)
    {
        double area = this.SharedAt(other, 0, lengthMm);
        return closed ? area + this.SharedAt(other, girthMm, lengthMm) + this.SharedAt(other, -girthMm, lengthMm) : area;
    }

    /// <summary>The corners within a box; the other piece is shifted around by so much.</summary>
    internal int Corners(Span<(double X, double Y)> corners, double shiftY, double along, in Box within)
    {
        double lean = this.Lean;
        corners[0] = (this.X, this.LowY + shiftY);
        corners[1] = (this.X + along, this.LowY + shiftY);
        corners[2] = (this.X + along + lean, this.HighY + shiftY);
        corners[3] = (this.X + lean, this.HighY + shiftY);
        int count = ClipKernel.Cut(corners, 4, -1, 0, -within.LowX);
        count = ClipKernel.Cut(corners, count, 1, 0, within.HighX);
        count = ClipKernel.Cut(corners, count, 0, -1, -within.LowY);
        return ClipKernel.Cut(corners, count, 0, 1, within.HighY);
    }

    /// <summary>Cuts a polygon down to what lies in this piece, shifted around by so much.</summary>
    internal int Keep(Span<(double X, double Y)> corners, int count, double shiftY, double widen)
    {
        double low = this.LowY + shiftY;
        double from = this.X - widen - (this.Slope * low);
        count = ClipKernel.Cut(corners, count, 0, -1, -low);
        count = ClipKernel.Cut(corners, count, 0, 1, this.HighY + shiftY);
        count = ClipKernel.Cut(corners, count, -1, this.Slope, -from);
        return ClipKernel.Cut(corners, count, 1, -this.Slope, from + this.Along + (2 * widen));
    }

    private double SharedAt(in StripPiece other, double shiftY, double lengthMm)
    {
        double lowY = Math.Max(this.LowY, other.LowY + shiftY);
        double highY = Math.Min(this.HighY, other.HighY + shiftY);
        double lowX = Math.Max(Math.Max(this.LowX, other.LowX), 0);
        double highX = Math.Min(Math.Min(this.HighX, other.HighX), lengthMm);
        if (highY <= lowY || highX <= lowX)
        {
            return 0;
        }

        if (this.Slope == 0 && other.Slope == 0)
        {
            return (highX - lowX) * (highY - lowY);
        }

        Span<(double X, double Y)> corners = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        int count = this.Corners(corners, 0, this.Along, new Box(lowX, highX, lowY, highY));
        count = other.Keep(corners, count, shiftY, 0);
        return ClipKernel.Area(corners[..count]);
    }
}
