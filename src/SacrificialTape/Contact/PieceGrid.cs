namespace SacrificialTape.Contact;

/// <summary>
/// Pieces sorted into the cells of a grid whose cells are about as large as the mean piece, so that each piece lies in a
/// few cells and each cell holds a few pieces, however the strips run.
/// </summary>
internal sealed class PieceGrid
{
    private readonly double cellX;
    private readonly double cellY;
    private readonly int columns;
    private readonly int rows;
    private readonly bool closed;
    private readonly int[] starts;
    private readonly int[] members;

    internal PieceGrid(ReadOnlySpan<StripPiece> pieces, double lengthMm, double girthMm, bool closed)
    {
        double sumX = 0;
        double sumY = 0;
        foreach (ref readonly StripPiece piece in pieces)
        {
            sumX += Math.Min(piece.HighX, lengthMm) - Math.Max(piece.LowX, 0);
            sumY += piece.HighY - piece.LowY;
        }

        this.closed = closed;
        double wantedColumns = Wanted(lengthMm, sumX, pieces.Length);
        double wantedRows = Wanted(girthMm, sumY, pieces.Length);

        // Few small pieces on a large surface would want far more cells than there are pieces.
        double shrink = Math.Min(1, Math.Sqrt(4.0 * Math.Max(1, pieces.Length) / (wantedColumns * wantedRows)));
        this.columns = (int)Math.Max(1, Math.Min(wantedColumns, 4.0 * Math.Max(1, pieces.Length)) * shrink);
        this.rows = (int)Math.Max(1, Math.Min(wantedRows, 4.0 * Math.Max(1, pieces.Length)) * shrink);
        this.cellX = lengthMm / this.columns;
        this.cellY = girthMm / this.rows;
        this.starts = new int[(this.columns * this.rows) + 1];
        for (int i = 0; i < pieces.Length; i++)
        {
            foreach (int cell in this.CellsOf(pieces[i]))
            {
                this.starts[cell + 1]++;
            }
        }

        for (int cell = 0; cell < this.starts.Length - 1; cell++)
        {
            this.starts[cell + 1] += this.starts[cell];
        }

        this.members = new int[this.starts[^1]];
        int[] next = this.starts[..^1];
        for (int i = 0; i < pieces.Length; i++)
        {
            foreach (int cell in this.CellsOf(pieces[i]))
            {
                this.members[next[cell]++] = i;
            }
        }
    }

    internal int CellCount => this.starts.Length - 1;

    internal ReadOnlySpan<int> In(int cell) => this.members.AsSpan(this.starts[cell], this.starts[cell + 1] - this.starts[cell]);

    /// <summary>The cells that a box touches; around it may reach beyond the first turn of a closed surface.</summary>
    internal CellRange Cells(in Box box) => new(
        Math.Clamp((int)Math.Floor(box.LowX / this.cellX), 0, this.columns - 1),
        Math.Clamp((int)Math.Floor(box.HighX / this.cellX), 0, this.columns - 1),
        this.Row(box.LowY),
        Math.Min(this.Row(box.HighY), this.Row(box.LowY) + this.rows - 1),
        this.rows);

    private int Row(double y)
    {
        int row = (int)Math.Floor(y / this.cellY);
        return this.closed ? row : Math.Clamp(row, 0, this.rows - 1);
    }

    private CellRange CellsOf(in StripPiece piece) => this.Cells(new Box(piece.LowX, piece.HighX, piece.LowY, piece.HighY));

    private static double Wanted(double extentMm, double sumMm, int count) =>
        sumMm > 0 ? Math.Max(1, Math.Floor(extentMm * count / sumMm)) : 1;
}
