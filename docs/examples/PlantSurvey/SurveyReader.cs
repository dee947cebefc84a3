using SacrificialTape.Jobs;
using SacrificialTape.Tapes;

namespace PlantSurvey;

/// <summary>Reads the three files of a survey into a job, or says everything that is wrong with them.</summary>
internal static class SurveyReader
{
    internal static Job? Read(string folder, List<SurveyFault> faults)
    {
        SurveyChoices? choices = SurveyChoices.Read(folder, faults);
        IReadOnlyDictionary<string, StripStock>? stock = StockReader.Read(folder, choices?.TakeOff, faults);
        CsvTable? table = CsvTable.Read(folder, LineReader.File, LineReader.Columns, faults);
        if (choices is null || stock is null || table is null)
        {
            return null;
        }

        var lines = new List<SurveyLine>(table.Rows.Count);
        var firstSeen = new Dictionary<string, bool>(StringComparer.Ordinal);
        var reader = new LineReader(choices, stock);
        foreach (CsvRow row in table.Rows)
        {
            SurveyLine? line = reader.Read(row);
            if (!firstSeen.TryAdd(row.TextOr("line", string.Empty), true))
            {
                row.Fault("line", $"'{row.TextOr("line", string.Empty)}' stands twice in the survey.");
            }

            if (line is not null)
            {
                lines.Add(line);
            }
        }

        return faults.Count > 0 ? null : new Job(choices.JobName, lines, choices.TakeOff);
    }
}
