using System.Buffers.Binary;
using System.Text;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>
/// Reads an Arrow IPC file by its published layout (Arrow columnar format, "IPC File Format", and the flatbuffer schemas File.fbs,
/// Message.fbs and Schema.fbs): a second reader beside the library's own, for required doubles alone.
/// </summary>
internal sealed class ArrowByHand
{
    private readonly byte[] file;

    internal ArrowByHand(string path)
    {
        this.file = File.ReadAllBytes(path);
        Assert.Equal("ARROW1\0\0"u8.ToArray(), this.file[..8]);
        Assert.Equal("ARROW1"u8.ToArray(), this.file[^6..]);
        int length = this.Int(this.file.Length - 10);
        int footer = this.Root(this.file.Length - 10 - length);

        // Footer: version, schema, dictionaries, record batches, metadata.
        int schema = this.Follow(this.Slot(footer, 1));
        this.Metadata = this.Pairs(this.Slot(schema, 2));
        foreach (int field in this.Tables(this.Slot(schema, 1)))
        {
            this.Names.Add(this.Text(this.Slot(field, 0)));
            Assert.Equal(3, this.file[this.Slot(field, 2)]); // Type FloatingPoint
            Assert.Equal(2, BinaryPrimitives.ReadInt16LittleEndian(this.file.AsSpan(this.Slot(this.Follow(this.Slot(field, 3)), 0)))); // DOUBLE
            this.Units.Add(this.Pairs(this.Slot(field, 6))["unit"]);
        }

        this.Columns = [.. this.Names.Select(static _ => new List<double>())];
        int blocks = this.Follow(this.Slot(footer, 3));
        this.Batches = this.Int(blocks);
        for (int i = 0; i < this.Batches; i++)
        {
            // Block: offset (8), length of the metadata (4, then 4 of padding), length of the body (8).
            int block = blocks + 4 + (i * 24);
            this.Batch((int)this.Long(block), this.Int(block + 8));
        }
    }

    internal List<string> Names { get; } = [];

    internal List<string> Units { get; } = [];

    internal Dictionary<string, string> Metadata { get; }

    internal List<double>[] Columns { get; }

    internal int Batches { get; }

    private void Batch(int offset, int metadata)
    {
        Assert.Equal(-1, this.Int(offset));
        int message = this.Root(offset + 8);
        Assert.Equal(3, this.file[this.Slot(message, 1)]); // MessageHeader RecordBatch
        int batch = this.Follow(this.Slot(message, 2));
        int rows = (int)this.Long(this.Slot(batch, 0));
        int buffers = this.Follow(this.Slot(batch, 2));
        int body = offset + metadata;

        // Two buffers a column, validity and values: each an offset (8) and a length (8).
        Assert.Equal(2 * this.Columns.Length, this.Int(buffers));
        for (int column = 0; column < this.Columns.Length; column++)
        {
            int values = buffers + 4 + (((2 * column) + 1) * 16);
            int at = body + (int)this.Long(values);
            Assert.True(this.Long(values + 8) >= rows * sizeof(double));
            for (int row = 0; row < rows; row++)
            {
                this.Columns[column].Add(BinaryPrimitives.ReadDoubleLittleEndian(this.file.AsSpan(at + (row * sizeof(double)))));
            }
        }
    }

    private int Int(int at) => BinaryPrimitives.ReadInt32LittleEndian(this.file.AsSpan(at));

    private long Long(int at) => BinaryPrimitives.ReadInt64LittleEndian(this.file.AsSpan(at));

    private int Root(int at) => at + this.Int(at);

    // Where a field of a table lies: a table begins with the distance back to the list of its fields' places.
    private int Slot(int table, int field)
    {
        int list = table - this.Int(table);
        int place = 4 + (2 * field);
        int relative = place < BinaryPrimitives.ReadUInt16LittleEndian(this.file.AsSpan(list))
            ? BinaryPrimitives.ReadUInt16LittleEndian(this.file.AsSpan(list + place))
            : 0;
        Assert.NotEqual(0, relative);
        return table + relative;
    }

    private int Follow(int slot) => slot + this.Int(slot);

    private IEnumerable<int> Tables(int slot)
    {
        int vector = this.Follow(slot);
        return Enumerable.Range(0, this.Int(vector)).Select(i => this.Follow(vector + 4 + (4 * i)));
    }

    private string Text(int slot)
    {
        int text = this.Follow(slot);
        return Encoding.UTF8.GetString(this.file, text + 4, this.Int(text));
    }

    private Dictionary<string, string> Pairs(int slot) =>
        this.Tables(slot).ToDictionary(pair => this.Text(this.Slot(pair, 0)), pair => this.Text(this.Slot(pair, 1)));
}
