namespace SacrificialTape.Sweeps.Files;

/// <summary>How far a study has come.</summary>
public readonly record struct StudyProgress
{
    internal StudyProgress(long rowsDone, long rows, int slicesDone, int slices)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rowsDone);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rowsDone, rows);
        ArgumentOutOfRangeException.ThrowIfNegative(slicesDone);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(slicesDone, slices);
        this.RowsDone = rowsDone;
        this.Rows = rows;
        this.SlicesDone = slicesDone;
        this.Slices = slices;
    }

    /// <summary>How many rows are done.</summary>
    public long RowsDone { get; }

    /// <summary>How many rows there are.</summary>
    public long Rows { get; }

    /// <summary>How many slices are done.</summary>
    public int SlicesDone { get; }

    /// <summary>How many slices there are.</summary>
    public int Slices { get; }

    /// <summary>Rows and slices in words.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.RowsDone} of {this.Rows} rows, {this.SlicesDone} of {this.Slices} slices");
}
