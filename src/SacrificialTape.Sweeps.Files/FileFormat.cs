namespace SacrificialTape.Sweeps.Files;

/// <summary>What kind of file rows are written to.</summary>
public enum FileFormat
{
    /// <summary>Apache Parquet, a row group for each group of rows.</summary>
    Parquet,

    /// <summary>An Apache Arrow IPC file, a record batch for each group of rows.</summary>
    Arrow,

    /// <summary>Comma-separated values with one line of headings, the unit in brackets; invariant numbers that come back bit for bit.</summary>
    Csv,
}
