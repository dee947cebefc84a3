namespace SacrificialTape.Contact;

/// <summary>
/// How much of a window a strip is sure to touch, in whatever order the crew lays: what lies under it and under no strip of
/// another set. Between strips that are joined it does not matter which of them lies below. mm2 on the steel.
/// </summary>
internal static class SteelContactKernel
{
    /// <summary>Area sure to be touched by one piece. Exact for strips that do not lean on surfaces that lie flat, else a lower bound.</summary>
    internal static double TouchedMm2(StripPieces strips, StripSets sets, int index, in BareSpot spot, List<int> near)
    {
        ref readonly StripPiece piece = ref strips.All[index];
        double sum = 0;
        UnrolledSurface surface = strips.Surface;
        double girth = surface.GirthMm;
        for (int turn = surface.IsClosed ? -2 : 0; turn <= (surface.IsClosed ? 1 : 0); turn++)
        {
            sum += At(strips, sets, piece, turn * girth, spot, near);
        }

        return sum * spot.Weight;
    }

    /// <summary>The pieces on the steel that a window may lie under, each once.</summary>
    internal static void Near(StripPieces strips, in BareSpot spot, double widestMm, List<int> near)
    {
        near.Clear();
        double wider = widestMm / 2 * ((1 / spot.Weight) - 1);
        foreach (int cell in strips.Grid.Cells(new Box(spot.LowX - wider, spot.HighX + wider, spot.LowY, spot.HighY)))
        {
            foreach (int index in strips.Grid.In(cell))
            {
                if (strips.All[index].OnSteel && !near.Contains(index))
                {
                    near.Add(index);
                }
            }
        }
    }

    private static double At(StripPieces strips, StripSets sets, in StripPiece piece, double shiftY, in BareSpot spot, List<int> near)
    {
        UnrolledSurface surface = strips.Surface;
        double least = spot.Weight;
        double largest = surface.LargestFactor(spot.LowY, spot.HighY);
        double wider = piece.Along / 2 * ((1 / largest) - 1);
        double ownX = piece.Slope < 0 ? piece.X + piece.Along - piece.OwnAlong : piece.X;
        StripPiece own = piece with { X = ownX - wider, Along = piece.OwnAlong + (2 * wider) };
        var within = new Box(
            Math.Max(0, spot.LowX), Math.Min(surface.LengthMm, spot.HighX), spot.LowY, spot.HighY);
        Span<(double X, double Y)> corners = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        int count = own.Corners(corners, shiftY, own.Along, within);
        if (count < 3)
        {
            return 0;
        }

        bool leans = piece.Slope != 0;
        var others = new List<(StripPiece Piece, double ShiftY, double Wider)>();
        foreach (int index in near)
        {
            StripPiece other = strips.All[index];
            if (sets.RootOf(other.Strip) == sets.RootOf(piece.Strip))
            {
                continue;
            }

            leans |= other.Slope != 0;
            for (int turn = surface.IsClosed ? -2 : 0; turn <= (surface.IsClosed ? 1 : 0); turn++)
            {
                others.Add((other, turn * surface.GirthMm, other.Along / 2 * ((1 / least) - 1)));
            }
        }

        return leans ? Leaning(corners, count, spot, others) : Upright(corners, count, spot, others);
    }

    // Every overlap is taken off whole, so that where three lie over each other too much goes: a lower bound.
    private static double Leaning(
        Span<(double X, double Y)> corners, int count, in BareSpot spot, List<(StripPiece Piece, double ShiftY, double Wider)> others)
    {
        Span<(double X, double Y)> part = stackalloc (double X, double Y)[ClipKernel.MostCorners];
        double taken = 0;
        foreach ((StripPiece other, double shiftY, double wider) in others)
        {
            corners[..count].CopyTo(part);
            int kept = other.Keep(part, count, shiftY, wider);
            taken += Bare(part[..kept], spot);
        }

        return Math.Max(0, Bare(corners[..count], spot) - taken);
    }

    // Rectangles only: their sides cut the piece into cells that lie wholly under another strip or not at all.
    private static double Upright(
        Span<(double X, double Y)> corners, int count, in BareSpot spot, List<(StripPiece Piece, double ShiftY, double Wider)> others)
    {
        Box own = BoxOf(corners[..count]);
        var over = new List<Box>(others.Count);
        var xs = new List<double> { own.LowX, own.HighX };
        var ys = new List<double> { own.LowY, own.HighY };
        foreach ((StripPiece other, double shiftY, double wider) in others)
        {
            var box = new Box(other.X - wider, other.X + other.Along + wider, other.LowY + shiftY, other.HighY + shiftY);
            if (box.HighX > own.LowX && box.LowX < own.HighX && box.HighY > own.LowY && box.LowY < own.HighY)
            {
                over.Add(box);
                xs.AddRange([Math.Clamp(box.LowX, own.LowX, own.HighX), Math.Clamp(box.HighX, own.LowX, own.HighX)]);
                ys.AddRange([Math.Clamp(box.LowY, own.LowY, own.HighY), Math.Clamp(box.HighY, own.LowY, own.HighY)]);
            }
        }

        xs.Sort();
        ys.Sort();
        double bare = 0;
        Span<(double X, double Y)> cell = stackalloc (double X, double Y)[4];
        for (int i = 1; i < xs.Count; i++)
        {
            for (int j = 1; j < ys.Count; j++)
            {
                double x = (xs[i - 1] + xs[i]) / 2;
                double y = (ys[j - 1] + ys[j]) / 2;
                if (xs[i] > xs[i - 1] && ys[j] > ys[j - 1]
                    && !over.Exists(box => box.LowX < x && x < box.HighX && box.LowY < y && y < box.HighY))
                {
                    (cell[0], cell[1], cell[2], cell[3]) = ((xs[i - 1], ys[j - 1]), (xs[i], ys[j - 1]), (xs[i], ys[j]), (xs[i - 1], ys[j]));
                    bare += Bare(cell, spot);
                }
            }
        }

        return bare;
    }

    private static Box BoxOf(ReadOnlySpan<(double X, double Y)> corners)
    {
        (double lowX, double lowY) = corners[0];
        (double highX, double highY) = corners[0];
        foreach ((double x, double y) in corners)
        {
            (lowX, highX, lowY, highY) = (Math.Min(lowX, x), Math.Max(highX, x), Math.Min(lowY, y), Math.Max(highY, y));
        }

        return new(lowX, highX, lowY, highY);
    }

    private static double Bare(Span<(double X, double Y)> corners, in BareSpot spot) => corners.Length < 3
        ? 0
        : spot.IsRound ? ClipKernel.AreaInEllipse(corners, spot.X, spot.Y, spot.HalfX, spot.HalfY) : ClipKernel.Area(corners);
}
