namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Writes groups of rows to a stream, one after the other; the stream stays open.</summary>
/// <remarks>What is not completed is no file: after an error the stream is to be thrown away.</remarks>
internal abstract class RowsWriter : IDisposable
{
    internal static RowsWriter Open(
        FileFormat format, Stream stream, IReadOnlyList<FileColumn> columns, Dictionary<string, string> metadata) => format switch
        {
            FileFormat.Parquet => new ParquetRowsWriter(stream, columns, metadata),
            FileFormat.Arrow => new ArrowRowsWriter(stream, columns, metadata),
            FileFormat.Csv => new CsvRowsWriter(stream, columns),
            _ => throw new ArgumentOutOfRangeException(nameof(format), format, "Parquet, Arrow or Csv."),
        };

    internal static string Ending(FileFormat format) => format switch
    {
        FileFormat.Parquet => "parquet",
        FileFormat.Arrow => "arrow",
        FileFormat.Csv => "csv",
        _ => throw new ArgumentOutOfRangeException(nameof(format), format, "Parquet, Arrow or Csv."),
    };

    public abstract void Dispose();

    internal abstract void Write(double[][] columns, int rows);

    internal abstract void Complete();
}
