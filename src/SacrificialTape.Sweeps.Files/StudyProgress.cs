namespace SacrificialTape.Sweeps.Files;

/// <summary>How far a study has come.</summary>
/// <param name="RowsDone">How many rows are done.</param>
/// <param name="Rows">How many there are.</param>
/// <param name="SlicesDone">How many slices are done.</param>
/// <param name="Slices">How many there are.</param>
public readonly record struct StudyProgress(long RowsDone, long Rows, int SlicesDone, int Slices)
{
    /// <summary>Rows and slices in words.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.RowsDone} of {this.Rows} rows, {this.SlicesDone} of {this.Slices} slices");
}
