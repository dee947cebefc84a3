using System.Text;

namespace SacrificialTape.Sweeps.Files.Rows;

/// <summary>Headings: the name, and the unit in brackets; quoted where they hold a comma, a quote or a line break.</summary>
internal static class CsvHeading
{
    internal static string Of(FileColumn column)
    {
        // A bare number whose name ends in a bracket gets empty brackets, or it would come back with a unit.
        string text = column.Unit.Length > 0 || column.Name.EndsWith(']') ? $"{column.Name} [{column.Unit}]" : column.Name;
        return text.AsSpan().IndexOfAny(",\"\r\n") >= 0 || text != text.Trim() ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }

    internal static FileColumn Read(string text)
    {
        int open = text.EndsWith(']') ? text.LastIndexOf(" [", StringComparison.Ordinal) : -1;
        return open > 0 ? new FileColumn(text[..open], text[(open + 2)..^1]) : new FileColumn(text, string.Empty);
    }

    /// <summary>Cuts a line of headings at its commas; null where a quote stays open, as a heading with a line break leaves it.</summary>
    internal static List<string>? Split(string line)
    {
        var headings = new List<string>();
        var heading = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                heading.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                headings.Add(heading.ToString());
                heading.Clear();
            }
            else
            {
                heading.Append(c);
            }
        }

        headings.Add(heading.ToString());
        return quoted ? null : headings;
    }
}
