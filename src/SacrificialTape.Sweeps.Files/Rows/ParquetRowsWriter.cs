using Parquet;
using Parquet.Schema;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>A row group for each group of rows. All columns are required doubles: what is not a number is a NaN, not a gap.</summary>
internal sealed class ParquetRowsWriter : RowsWriter
{
    // The library's calls end before they return on a stream that is not asynchronous: nothing waits here.
    private readonly ParquetWriter writer;
    private readonly DataField[] fields;
    private readonly Dictionary<string, string>[] units;

    internal ParquetRowsWriter(Stream stream, IReadOnlyList<FileColumn> columns, Dictionary<string, string> metadata)
    {
        this.fields = [.. columns.Select(static column => new DataField(column.Name, typeof(double), isNullable: false))];
        this.units = [.. columns.Select(static column => new Dictionary<string, string> { ["unit"] = column.Unit })];

        // Drawn numbers have few digits in common but their first bytes: those put side by side are what there is to compress. A
        // dictionary finds nothing, and higher levels took twenty times as long for the same size.
        var options = new ParquetOptions
        {
            CompressionMethod = CompressionMethod.Zstd,
            CompressionLevel = System.IO.Compression.CompressionLevel.Fastest,
        };
        foreach (DataField field in this.fields)
        {
            options.ColumnEncodingHints[field.Path.ToString()] = EncodingHint.ByteSplitStream;
        }

        this.writer = ParquetWriter.CreateAsync(new ParquetSchema(this.fields), stream, options).GetAwaiter().GetResult();
        this.writer.CustomMetadata = metadata;
    }

    public override void Dispose()
    {
        // The library writes the end of the file when its writer is disposed of: after an error there must be none.
    }

    internal override void Write(double[][] columns, int rows)
    {
        using ParquetRowGroupWriter group = this.writer.CreateRowGroup();
        for (int i = 0; i < this.fields.Length; i++)
        {
            group.WriteAsync<double>(this.fields[i], columns[i].AsMemory(0, rows), customMetadata: this.units[i]).GetAwaiter().GetResult();
        }

        group.CompleteValidate();
    }

    internal override void Complete() => this.writer.DisposeAsync().AsTask().GetAwaiter().GetResult();
}
