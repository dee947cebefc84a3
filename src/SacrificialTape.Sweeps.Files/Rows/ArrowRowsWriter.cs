using Apache.Arrow;
using Apache.Arrow.Ipc;
using Apache.Arrow.Types;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>A record batch for each group of rows, uncompressed, so that readers can map the file into memory.</summary>
internal sealed class ArrowRowsWriter : RowsWriter
{
    private readonly Schema schema;
    private readonly ArrowFileWriter writer;

    internal ArrowRowsWriter(Stream stream, IReadOnlyList<FileColumn> columns, Dictionary<string, string> metadata)
    {
        this.schema = new Schema(
            columns.Select(static column => new Field(
                column.Name, DoubleType.Default, nullable: false, new Dictionary<string, string> { ["unit"] = column.Unit })),
            metadata);
        this.writer = new ArrowFileWriter(stream, this.schema, leaveOpen: true);
        this.writer.WriteStart();
    }

    public override void Dispose() => this.writer.Dispose();

    internal override void Write(double[][] columns, int rows)
    {
        using var batch = new RecordBatch(
            this.schema, columns.Select(column => new DoubleArray.Builder().Append(column.AsSpan(0, rows)).Build()), rows);
        this.writer.WriteRecordBatch(batch);
    }

    internal override void Complete() => this.writer.WriteEnd();
}
