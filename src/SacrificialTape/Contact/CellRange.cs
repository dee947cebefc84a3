namespace SacrificialTape.Contact;

/// <summary>Cells of a grid from column to column and row to row; rows turn over at the last.</summary>
internal readonly struct CellRange(int fromColumn, int toColumn, int fromRow, int toRow, int rows)
{
    public Walk GetEnumerator() => new(fromColumn, toColumn, fromRow, toRow, rows);

    /// <summary>Steps through the cells, without memory of its own.</summary>
    internal struct Walk(int fromColumn, int toColumn, int fromRow, int toRow, int rows)
    {
        private int column = fromColumn;
        private int row = fromRow - 1;

        public readonly int Current => (this.column * rows) + (((this.row % rows) + rows) % rows);

        public bool MoveNext()
        {
            if (++this.row > toRow)
            {
                this.row = fromRow;
                this.column++;
            }

            return this.column <= toColumn;
        }
    }
}
