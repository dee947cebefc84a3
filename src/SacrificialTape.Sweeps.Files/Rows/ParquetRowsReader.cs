using Parquet;
using Parquet.Schema;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Row group by row group. A gap in a column is a NaN.</summary>
internal sealed class ParquetRowsReader : RowsReader
{
    private readonly ParquetReader reader;
    private readonly DataField[] fields;

    internal ParquetRowsReader(Stream stream)
    {
        try
        {
            this.reader = ParquetReader.CreateAsync(stream, leaveStreamOpen: true).GetAwaiter().GetResult();
        }
        catch (IOException e) when (e.GetType() == typeof(IOException))
        {
            // So the library says that the bytes are no whole Parquet file.
            throw new FormatException(e.Message, e);
        }

        DataField[] all = this.reader.Schema.GetDataFields();
        this.fields = [.. all.Where(static field => field.ClrType == typeof(double) && !field.IsArray && field.Path.Length == 1)];
        this.Others = all.Except(this.fields).ToDictionary(static field => field.Path.ToString(), static field => field.ClrType.Name, StringComparer.Ordinal);
        Dictionary<string, string>[] said = [.. this.fields.Select(this.Said)];
        this.Columns = [.. this.fields.Select((field, i) => new FileColumn(field.Name, said[i].GetValueOrDefault("unit", string.Empty)))];
    }

    internal override IReadOnlyList<FileColumn> Columns { get; }

    internal override IReadOnlyDictionary<string, string> Others { get; }

    internal override IReadOnlyDictionary<string, string> Metadata => this.reader.CustomMetadata;

    public override void Dispose() => this.reader.DisposeAsync().AsTask().GetAwaiter().GetResult();

    internal override IEnumerable<(double[][] Columns, int Rows)> Groups()
    {
        double[][] columns = [.. this.fields.Select(static _ => Array.Empty<double>())];
        double?[] gaps = [];
        for (int group = 0; group < this.reader.RowGroupCount; group++)
        {
            using ParquetRowGroupReader rows = this.reader.OpenRowGroupReader(group);
            int count = checked((int)rows.RowCount);
            for (int i = 0; i < this.fields.Length; i++)
            {
                if (columns[i].Length < count)
                {
                    columns[i] = new double[count];
                }

                if (!this.fields[i].IsNullable)
                {
                    rows.ReadAsync<double>(this.fields[i], columns[i].AsMemory(0, count)).AsTask().GetAwaiter().GetResult();
                    continue;
                }

                gaps = gaps.Length < count ? new double?[count] : gaps;
                rows.ReadAsync<double>(this.fields[i], gaps.AsMemory(0, count)).AsTask().GetAwaiter().GetResult();
                for (int row = 0; row < count; row++)
                {
                    columns[i][row] = gaps[row] ?? double.NaN;
                }
            }

            yield return (columns, count);
        }
    }

    private Dictionary<string, string> Said(DataField field)
    {
        if (this.reader.RowGroupCount == 0)
        {
            return [];
        }

        using ParquetRowGroupReader first = this.reader.OpenRowGroupReader(0);
        return first.GetCustomMetadata(field);
    }
}
