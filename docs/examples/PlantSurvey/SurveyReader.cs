using PlantSurvey.SiteRecords;
using PlantSurvey.TankInspections;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Reads the files of a survey into a job, or says everything that is wrong with them.</summary>
internal static class SurveyReader
{
    internal static Survey? Read(string folder, List<SurveyFault> faults)
    {
        SurveyChoices? choices = SurveyChoices.Read(folder, faults);
        IReadOnlyDictionary<string, StripStock>? stock = StockReader.Read(folder, choices?.TakeOff, faults);
        IReadOnlyDictionary<string, SurveyExposure> exposures = ExposureSheet.Read(folder, faults);
        WindowSheet windows = WindowSheet.Read(folder, faults);
        List<(ShapeSheet Sheet, CsvTable Table)> sheets = Sheets(folder, faults);
        if (choices is null || stock is null)
        {
            return null;
        }

        CostPrices? prices = PriceReader.Read(folder, stock, faults);
        var lines = new List<SurveyLine>();
        var work = new List<LabourWork>();
        var tags = new HashSet<string>(StringComparer.Ordinal);
        var notes = new Dictionary<string, LineNotes>(StringComparer.Ordinal);
        var reader = new LineReader(choices, stock, exposures, windows);
        foreach ((ShapeSheet sheet, CsvTable table) in sheets)
        {
            foreach (CsvRow row in table.Rows)
            {
                (SurveyLine Line, IReadOnlyList<LabourWork> Work, LineNotes Notes)? read = reader.Read(row, sheet);
                if (!tags.Add(row.TextOr("line", string.Empty)))
                {
                    row.Fault("line", $"'{row.TextOr("line", string.Empty)}' stands twice in the survey.");
                }

                if (read is { } whole)
                {
                    lines.Add(whole.Line);
                    work.AddRange(whole.Work);
                    notes[whole.Line.Tag] = whole.Notes;
                }
            }
        }

        windows.Close();
        SiteRecord site = SiteRecord.Read(folder, tags, lines, faults);
        IReadOnlyList<TankInspection> inspections = InspectionSheet.Read(folder, stock, exposures, choices.TakeOff, faults);
        return faults.Count > 0
            ? null
            : new Survey(
                new Job(choices.JobName, lines, choices.TakeOff), new ValueList<LabourWork>(Together(work)), prices, choices, [.. stock.Values], notes, site, inspections);
    }

    // One line of cost for work of one kind, wherever it is done.
    private static IEnumerable<LabourWork> Together(IEnumerable<LabourWork> work) =>
        from one in work
        group one by one.Kind into same
        select new LabourWork(
            same.Key,
            Area.FromSquareMeters(same.Sum(static one => one.Area.SquareMeters)),
            Length.FromMeters(same.Sum(static one => one.StripLength.Meters)),
            same.Sum(static one => one.Pieces));

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
