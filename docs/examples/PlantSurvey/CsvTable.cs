using nietras.SeparatedValues;

namespace PlantSurvey;

/// <summary>A CSV file with a header row: its rows as text, each with its place, and every fault of its shape.</summary>
internal sealed class CsvTable
{
    private CsvTable(string file, IReadOnlyList<CsvRow> rows)
    {
        this.File = file;
        this.Rows = rows;
    }

    internal string File { get; }

    internal IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>Reads a file, or says what is wrong with its header or its rows.</summary>
    /// <param name="folder">Where it is.</param>
    /// <param name="file">Its name.</param>
    /// <param name="columns">The columns that must be there.</param>
    /// <param name="optional">The columns that may be left out.</param>
    /// <param name="faults">Takes the faults.</param>
    internal static CsvTable? Read(
        string folder, string file, IReadOnlyList<string> columns, IReadOnlyList<string> optional, List<SurveyFault> faults)
    {
        string path = Path.Combine(folder, file);
        if (!System.IO.File.Exists(path))
        {
            faults.Add(new(file, 0, string.Empty, $"There is no such file in '{folder}'."));
            return null;
        }

        string text = System.IO.File.ReadAllText(path);
        if (string.IsNullOrWhiteSpace(text))
        {
            faults.Add(new(file, 1, string.Empty, $"The file is empty. Its first line must name the columns: {string.Join(", ", columns)}."));
            return null;
        }

        // The check for the number of columns is ours: it can say what most likely went wrong.
        using SepReader reader = Sep.Reader(options => options with { Unescape = true, DisableColCountCheck = true }).FromText(text);
        IReadOnlyList<string> header = [.. reader.Header.ColNames.Select(static name => name.Trim().TrimStart('\uFEFF'))];
        if (!HeaderFits(file, header, columns, optional, faults))
        {
            return null;
        }

        var rows = new List<CsvRow>();
        while (reader.MoveNext())
        {
            SepReader.Row row = reader.Current;
            if (row.ColCount == 1 && row[0].Span.Trim().IsEmpty)
            {
                continue; // a blank line
            }

            if (row.ColCount != header.Count)
            {
                string hint = row.ColCount > header.Count ? " Is there a decimal comma? Write a point." : string.Empty;
                faults.Add(new(file, row.LineNumberFrom, string.Empty, $"{row.ColCount} columns instead of {header.Count}.{hint}"));
                continue;
            }

            // A quote mark that was meant as inches opens a cell that swallows the lines below it.
            if (row.LineNumberToExcl > row.LineNumberFrom + 1)
            {
                faults.Add(new(file, row.LineNumberFrom, string.Empty, $"A quote mark opens in this line and closes in line {row.LineNumberToExcl - 1}. Write in for inches, or double the mark."));
                continue;
            }

            var cells = new Dictionary<string, string>(header.Count, StringComparer.Ordinal);
            for (int i = 0; i < header.Count; i++)
            {
                cells[header[i]] = row[i].ToString().Trim();
            }

            rows.Add(new CsvRow(file, row.LineNumberFrom, header, cells, faults));
        }

        if (rows.Count == 0 && faults.Count == 0)
        {
            faults.Add(new(file, 2, string.Empty, "There is no row under the header."));
        }

        return new CsvTable(file, rows);
    }

    private static bool HeaderFits(
        string file, IReadOnlyList<string> header, IReadOnlyList<string> columns, IReadOnlyList<string> optional, List<SurveyFault> faults)
    {
        int before = faults.Count;
        foreach (string column in columns.Except(header))
        {
            faults.Add(new(file, 1, $"column '{column}'", "The column is missing."));
        }

        foreach (string column in header.Except(columns).Except(optional))
        {
            faults.Add(new(file, 1, $"column '{column}'", $"Not a column known here; known are {string.Join(", ", columns.Concat(optional))}."));
        }

        foreach (IGrouping<string, string> twice in header.GroupBy(static name => name).Where(static same => same.Count() > 1))
        {
            faults.Add(new(file, 1, $"column '{twice.Key}'", "The column stands twice."));
        }

        return faults.Count == before;
    }
}
