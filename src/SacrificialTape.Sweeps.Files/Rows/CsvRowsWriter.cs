using System.Buffers;
using System.Globalization;
using System.Text;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>One line of headings, then numbers in their shortest form that comes back bit for bit; commas, line feeds, UTF-8.</summary>
/// <remarks>Nothing but table: there is no place for metadata that every reader of such files would pass over.</remarks>
internal sealed class CsvRowsWriter : RowsWriter
{
    // The longest double and its comma have 25 bytes.
    private const int Longest = 32;
    private const int FlushAt = 1 << 16;

    private readonly Stream stream;
    private readonly ArrayBufferWriter<byte> buffer = new(FlushAt + 4096);

    internal CsvRowsWriter(Stream stream, IReadOnlyList<FileColumn> columns)
    {
        this.stream = stream;
        this.buffer.Write(Encoding.UTF8.GetBytes(string.Join(',', columns.Select(CsvHeading.Of)) + "\n"));
    }

    public override void Dispose()
    {
        // The stream is the caller's, and what is left in the buffer is no file.
    }

    internal override void Write(double[][] columns, int rows)
    {
        for (int row = 0; row < rows; row++)
        {
            for (int i = 0; i < columns.Length; i++)
            {
                Span<byte> free = this.buffer.GetSpan(Longest);
                int length = 0;
                if (i > 0)
                {
                    free[length++] = (byte)',';
                }

                _ = columns[i][row].TryFormat(free[length..], out int written, default, CultureInfo.InvariantCulture);
                this.buffer.Advance(length + written);
            }

            this.buffer.Write("\n"u8);
            if (this.buffer.WrittenCount >= FlushAt)
            {
                this.Empty();
            }
        }
    }

    internal override void Complete() => this.Empty();

    private void Empty()
    {
        this.stream.Write(this.buffer.WrittenSpan);
        this.buffer.ResetWrittenCount();
    }
}
