namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Reads columns of doubles from a stream, group by group and forward only.</summary>
internal abstract class RowsReader : IDisposable
{
    /// <summary>The columns that hold doubles.</summary>
    internal abstract IReadOnlyList<FileColumn> Columns { get; }

    /// <summary>Columns that hold something else, and what.</summary>
    internal virtual IReadOnlyDictionary<string, string> Others => new Dictionary<string, string>();

    internal virtual IReadOnlyDictionary<string, string> Metadata => new Dictionary<string, string>();

    internal static RowsReader Open(Stream stream, out FileFormat format)
    {
        Span<byte> mark = stackalloc byte[6];
        int read = stream.ReadAtLeast(mark, mark.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        format = mark[..read].StartsWith("PAR1"u8) ? FileFormat.Parquet : mark[..read].StartsWith("ARROW1"u8) ? FileFormat.Arrow : FileFormat.Csv;
        return format switch
        {
            FileFormat.Parquet => new ParquetRowsReader(stream),
            FileFormat.Arrow => new ArrowRowsReader(stream),
            _ => new CsvRowsReader(stream),
        };
    }

    public abstract void Dispose();

    /// <summary>The rows of each group, column by column; the arrays may be used again for the next.</summary>
    internal abstract IEnumerable<(double[][] Columns, int Rows)> Groups();
}
