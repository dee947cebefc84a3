using System.Globalization;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>Thickness readings of tape that is up: readings.csv. A row is a reading by micrometer, or a sample that was weighed.</summary>
internal sealed class ReadingSheet
{
    internal const string File = "readings.csv";

    private static readonly string[] Columns = ["inspection", "day"];

    private static readonly string[] ByMicrometer = ["read_um", "left_on_um", "products_removed"];

    private static readonly string[] ByWeight = ["cleaned_g", "before_g", "area_cm2"];

    private static readonly Dictionary<string, bool> YesOrNo = new() { ["yes"] = true, ["no"] = false };

    private readonly List<(string Inspection, DateOnly Day, string Zone, FoilReading Reading, CsvRow Row)> readings = [];
    private readonly Dictionary<string, InspectionTerms> terms;

    private ReadingSheet(Dictionary<string, InspectionTerms> terms) => this.terms = terms;

    internal static ReadingSheet Read(string folder, Dictionary<string, (CsvRow Row, InspectionTerms? Terms)> inspections, List<SurveyFault> faults)
    {
        var sheet = new ReadingSheet(inspections.Where(static one => one.Value.Terms is not null)
            .ToDictionary(static one => one.Key, static one => one.Value.Terms!, StringComparer.Ordinal));
        if (CsvTable.Read(folder, File, Columns, [.. ByMicrometer, .. ByWeight, "layers", "zone", "note"], faults) is not { } table)
        {
            return sheet;
        }

        foreach (CsvRow row in table.Rows)
        {
            string name = row.Text("inspection");
            DateOnly day = row.Day("day");
            if (name.Length > 0 && !inspections.ContainsKey(name))
            {
                row.Fault("inspection", $"{InspectionSheet.File} has no inspection '{name}'.");
            }

            FoilReading? reading = Reading(row);
            if (!row.Faulty && reading is not null && sheet.terms.TryGetValue(name, out InspectionTerms? terms))
            {
                sheet.Add(row, name, day, reading, terms);
            }
        }

        return sheet;
    }

    /// <summary>The readings of an inspection day by day, oldest first; null, with a fault, where they do not suffice.</summary>
    internal IReadOnlyList<Campaign>? CampaignsOf(string inspection, CsvRow blame)
    {
        InspectionTerms terms = this.terms[inspection];
        var campaigns = new List<Campaign>();
        foreach (var day in this.readings.Where(one => one.Inspection == inspection).GroupBy(static one => one.Day).OrderBy(static day => day.Key))
        {
            CsvRow first = day.First().Row;
            FoilReadings? all = first.Try(
                "day", () => new FoilReadings(terms.Stock.Tape.Foil, new ValueList<FoilReading>(day.Select(static one => one.Reading)), terms.Significance));
            if (all is null)
            {
                return null;
            }

            // Where nothing is flagged, nothing is left out.
            ReadingStatistics used = terms.LeaveOutliers ? all.WithoutOutliers ?? all.All : all.All;
            campaigns.Add(new(day.Key, Duration.FromDays(day.Key.DayNumber - terms.Laid.DayNumber), all, used));
        }

        if (campaigns.Count == 0)
        {
            blame.Fault("name", $"{File} holds no reading of this inspection.");
            return null;
        }

        return campaigns;
    }

    /// <summary>The thinnest reading of each zone on a day.</summary>
    internal IReadOnlyDictionary<string, Length> ThinnestOf(string inspection, DateOnly day) => this.readings
        .Where(one => one.Inspection == inspection && one.Day == day && one.Zone.Length > 0)
        .GroupBy(static one => one.Zone)
        .ToDictionary(static zone => zone.Key, static zone => zone.MinBy(static one => one.Reading.Thickness.Micrometers).Reading.Thickness);

    private void Add(CsvRow row, string name, DateOnly day, FoilReading reading, InspectionTerms terms)
    {
        if (day <= terms.Laid)
        {
            row.Fault("day", string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd} is not after the day of laying, {terms.Laid:yyyy-MM-dd}."));
            return;
        }

        // The library says what is far too thick for the foil; asked with the reading alone, the row to blame is known.
        string column = reading.IsWeighed ? "cleaned_g" : "read_um";
        if (row.Try(column, () => new FoilReadings(terms.Stock.Tape.Foil, [reading, reading], terms.Significance)) is not null)
        {
            this.readings.Add((name, day, row.TextOr("zone", string.Empty), reading, row));
        }
    }

    private static FoilReading? Reading(CsvRow row)
    {
        bool weighed = row.TextOr("cleaned_g", string.Empty).Length > 0;
        foreach (string column in weighed ? ByMicrometer : ByWeight)
        {
            row.MustBeEmpty(column, weighed ? "The sample was weighed; leave the cell empty." : "The row has no mass after cleaning, cleaned_g; leave the cell empty.");
        }

        int layers = row.WholeOr("layers", 1);
        string note = row.Text("note");
        return weighed ? Weighed(row, layers, note) : Measured(row, layers, note);
    }

    private static FoilReading? Measured(CsvRow row, int layers, string note)
    {
        double read = row.Number("read_um");
        double leftOn = row.Number("left_on_um");
        bool removed = row.Choice("products_removed", YesOrNo);
        return row.Faulty ? null : row.Try(
            "read_um",
            () => FoilReading.Measured(Length.FromMicrometers(read), new ReadingPreparation(removed, Length.FromMicrometers(leftOn), note), layers),
            ("leftOn", "left_on_um"),
            ("layers", "layers"));
    }

    private static FoilReading? Weighed(CsvRow row, int layers, string note)
    {
        double cleaned = row.Number("cleaned_g");
        double before = row.Number("before_g");
        double area = row.Number("area_cm2");
        return row.Faulty ? null : row.Try(
            "cleaned_g",
            () => FoilReading.Weighed(Area.FromSquareCentimeters(area), Mass.FromGrams(cleaned), Mass.FromGrams(before), note, layers: layers),
            ("area", "area_cm2"),
            ("beforeCleaning", "before_g"),
            ("layers", "layers"));
    }
}
