using SacrificialTape.Jobs;
using SacrificialTape.Tapes;

namespace PlantSurvey;

/// <summary>Reads the files of a survey into a job, or says everything that is wrong with them.</summary>
internal static class SurveyReader
{
    internal static Job? Read(string folder, List<SurveyFault> faults)
    {
        SurveyChoices? choices = SurveyChoices.Read(folder, faults);
        IReadOnlyDictionary<string, StripStock>? stock = StockReader.Read(folder, choices?.TakeOff, faults);
        List<(ShapeSheet Sheet, CsvTable Table)> sheets = Sheets(folder, faults);
        if (choices is null || stock is null)
        {
            return null;
        }

        var lines = new List<SurveyLine>();
        var tags = new HashSet<string>(StringComparer.Ordinal);
        var reader = new LineReader(choices, stock);
        foreach ((ShapeSheet sheet, CsvTable table) in sheets)
        {
            foreach (CsvRow row in table.Rows)
            {
                SurveyLine? line = reader.Read(row, sheet);
                if (!tags.Add(row.TextOr("line", string.Empty)))
                {
                    row.Fault("line", $"'{row.TextOr("line", string.Empty)}' stands twice in the survey.");
                }

                if (line is not null)
                {
                    lines.Add(line);
                }
            }
        }

        return faults.Count > 0 ? null : new Job(choices.JobName, lines, choices.TakeOff);
    }

    // Of the sheets a survey has those that it needs, at least one.
    private static List<(ShapeSheet Sheet, CsvTable Table)> Sheets(string folder, List<SurveyFault> faults)
    {
        var there = ShapeSheet.All.Where(sheet => File.Exists(Path.Combine(folder, sheet.File))).ToList();
        if (there.Count == 0)
        {
            faults.Add(new(ShapeSheet.All[0].File, 0, string.Empty, $"There is no such file in '{folder}', nor another sheet: {string.Join(", ", ShapeSheet.All.Select(static sheet => sheet.File))}."));
        }

        var read = new List<(ShapeSheet, CsvTable)>();
        foreach (ShapeSheet sheet in there)
        {
            CsvTable? table = CsvTable.Read(
                folder, sheet.File, [.. LineReader.Columns, .. sheet.Columns], [.. LineReader.Optional, .. sheet.Optional], faults);
            if (table is not null)
            {
                read.Add((sheet, table));
            }
        }

        return read;
    }
}
