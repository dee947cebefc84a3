using Apache.Arrow;
using Apache.Arrow.Ipc;
using Apache.Arrow.Types;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Record batch by record batch. A gap in a column is a NaN.</summary>
internal sealed class ArrowRowsReader : RowsReader
{
    private readonly ArrowFileReader reader;
    private readonly int[] places;

    internal ArrowRowsReader(Stream stream)
    {
        this.reader = new ArrowFileReader(stream, leaveOpen: true);
        _ = this.reader.RecordBatchCountAsync().AsTask().GetAwaiter().GetResult();
        IReadOnlyList<Field> fields = this.reader.Schema.FieldsList;
        this.places = [.. Enumerable.Range(0, fields.Count).Where(i => fields[i].DataType is DoubleType)];
        this.Columns = [.. this.places.Select(i => new FileColumn(
            fields[i].Name, fields[i].HasMetadata ? fields[i].Metadata.GetValueOrDefault("unit", string.Empty) : string.Empty))];
        this.Others = fields.Where(static field => field.DataType is not DoubleType)
            .ToDictionary(static field => field.Name, static field => field.DataType.Name, StringComparer.Ordinal);
    }

    internal override IReadOnlyList<FileColumn> Columns { get; }

    internal override IReadOnlyDictionary<string, string> Others { get; }

    internal override IReadOnlyDictionary<string, string> Metadata => this.reader.Schema.Metadata ?? new Dictionary<string, string>();

    public override void Dispose() => this.reader.Dispose();

    internal override IEnumerable<(double[][] Columns, int Rows)> Groups()
    {
        int batches = this.reader.RecordBatchCountAsync().AsTask().GetAwaiter().GetResult();
        for (int i = 0; i < batches; i++)
        {
            using RecordBatch batch = this.reader.ReadRecordBatchAsync(i).AsTask().GetAwaiter().GetResult();
            yield return ([.. this.places.Select(place => Numbers((DoubleArray)batch.Column(place)))], batch.Length);
        }
    }

    private static double[] Numbers(DoubleArray column)
    {
        double[] numbers = column.Values.ToArray();
        for (int row = 0; column.NullCount > 0 && row < numbers.Length; row++)
        {
            if (column.IsNull(row))
            {
                numbers[row] = double.NaN;
            }
        }

        return numbers;
    }
}
