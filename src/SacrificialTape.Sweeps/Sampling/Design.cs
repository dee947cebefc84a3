namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Which rows a sweep has. A row depends on the design and its number alone, so that any slice can be made alone.</summary>
public abstract class Design
{
    private protected Design()
    {
    }

    /// <summary>How many rows a sweep of these inputs has.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <exception cref="ArgumentException">The design cannot take these inputs; the message says why.</exception>
    public abstract long RowsOf(SweepInputs inputs);

    /// <summary>Makes some consecutive rows.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <param name="firstRow">The first row, from 0.</param>
    /// <param name="rows">How many.</param>
    /// <exception cref="ArgumentException">The design cannot take these inputs; the message says why.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sweep does not have these rows.</exception>
    public SweepBlock Make(SweepInputs inputs, long firstRow, int rows)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        long all = this.RowsOf(inputs);
        if (firstRow < 0 || firstRow > all)
        {
            throw new ArgumentOutOfRangeException(nameof(firstRow), firstRow, $"The sweep has rows 0 to {all - 1}.");
        }

        if (rows < 0 || rows > all - firstRow)
        {
            throw new ArgumentOutOfRangeException(nameof(rows), rows, $"From row {firstRow} on the sweep has {all - firstRow} rows.");
        }

        var block = new SweepBlock(inputs, rows);
        this.Fill(block, firstRow, rows);
        return block;
    }

    /// <summary>Whether another design makes the same rows of the same inputs.</summary>
    internal bool IsSame(Design other) =>
        ReferenceEquals(this, other) || (this.GetType() == other.GetType() && this.ToString() == other.ToString());

    /// <summary>Kind, seed and numbers: all that a design is.</summary>
    public abstract override string ToString();

    /// <summary>How many consecutive rows belong together: a slice holds all of them or none.</summary>
    internal virtual int RowsTogether(SweepInputs inputs) => 1;

    internal void Fill(SweepBlock block, long firstRow, int rows)
    {
        block.FirstRow = firstRow;
        block.Rows = rows;
        this.Values(block);
    }

    private protected abstract void Values(SweepBlock block);

    private protected static long AtLeastOne(long rows, string parameter) => rows is >= 1 and <= uint.MaxValue
        ? rows
        : throw new ArgumentOutOfRangeException(parameter, rows, $"At least 1 and at most {uint.MaxValue}.");
}
