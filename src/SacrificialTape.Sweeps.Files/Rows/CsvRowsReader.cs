using System.Globalization;
using System.Text;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Line by line, handed on in groups. Every cell must be an invariant number; an empty one is a gap, a NaN.</summary>
internal sealed class CsvRowsReader : RowsReader
{
    private const int GroupRows = 65_536;

    private readonly StreamReader reader;
    private int line;

    internal CsvRowsReader(Stream stream)
    {
        this.reader = new StreamReader(stream, Encoding.UTF8, detectEncodingFromByteOrderMarks: true, 1 << 16, leaveOpen: true);
        List<string>? headings = null;
        for (string text = string.Empty; headings is null;)
        {
            string next = this.Next() ?? throw new FormatException("The file has no whole line of headings.");
            text = text.Length == 0 ? next : text + "\n" + next;
            headings = CsvHeading.Split(text);
        }

        this.Columns = [.. headings.Select(CsvHeading.Read)];
    }

    internal override IReadOnlyList<FileColumn> Columns { get; }

    public override void Dispose() => this.reader.Dispose();

    internal override IEnumerable<(double[][] Columns, int Rows)> Groups()
    {
        double[][] columns = [.. this.Columns.Select(static _ => new double[GroupRows])];
        int rows = 0;
        while (this.Next() is { } text)
        {
            this.Take(text, columns, rows++);
            if (rows == GroupRows)
            {
                yield return (columns, rows);
                rows = 0;
            }
        }

        if (rows > 0)
        {
            yield return (columns, rows);
        }
    }

    private string? Next()
    {
        this.line++;
        return this.reader.ReadLine();
    }

    private void Take(string text, double[][] columns, int row)
    {
        int column = 0;
        foreach (Range cell in text.AsSpan().Split(','))
        {
            ReadOnlySpan<char> number = text.AsSpan(cell);
            if (column == columns.Length)
            {
                throw new FormatException(string.Create(
                    CultureInfo.InvariantCulture, $"Line {this.line} has more cells than the {columns.Length} headings."));
            }

            if (number.IsWhiteSpace())
            {
                columns[column++][row] = double.NaN;
            }
            else if (double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
            {
                columns[column++][row] = value;
            }
            else
            {
                throw new FormatException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Line {this.line}, column {column + 1} '{this.Columns[column].Name}': '{number}' is not a number with a decimal point."));
            }
        }

        if (column < columns.Length)
        {
            throw new FormatException(string.Create(
                CultureInfo.InvariantCulture, $"Line {this.line} has {column} cells, and there are {columns.Length} headings."));
        }
    }
}
