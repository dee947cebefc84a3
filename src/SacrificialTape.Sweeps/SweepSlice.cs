namespace SacrificialTape.Sweeps;

/// <summary>Some consecutive rows of a study.</summary>
public readonly record struct SweepSlice
{
    /// <summary>States them.</summary>
    /// <param name="firstRow">The first row, from 0.</param>
    /// <param name="rows">How many, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is less than 0, or the rows go on beyond what can be counted.</exception>
    public SweepSlice(long firstRow, long rows)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(firstRow);
        ArgumentOutOfRangeException.ThrowIfNegative(rows);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rows, long.MaxValue - firstRow);
        this.FirstRow = firstRow;
        this.Rows = rows;
    }

    /// <summary>The first row, from 0.</summary>
    public long FirstRow { get; }

    /// <summary>How many rows.</summary>
    public long Rows { get; }

    /// <summary>The rows as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Rows} rows from {this.FirstRow} on");
}
