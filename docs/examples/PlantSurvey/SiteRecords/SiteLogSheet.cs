using System.Globalization;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace PlantSurvey.SiteRecords;

/// <summary>The hours of a logger or a forecast: site-log.csv, if the folder has it. An empty cell was not read.</summary>
internal static class SiteLogSheet
{
    internal const string File = "site-log.csv";

    private static readonly string[] Columns = ["start", "air_degC", "rh_percent", "surface_degC", "rain"];

    private static readonly Dictionary<string, bool?> Rains = new() { ["yes"] = true, ["no"] = false, [string.Empty] = null };

    internal static SiteLog? Read(string folder, List<SurveyFault> faults)
    {
        if (!System.IO.File.Exists(Path.Combine(folder, File)) || CsvTable.Read(folder, File, Columns, ["wind_m_s"], faults) is not { } table)
        {
            return null;
        }

        var hours = new List<SiteHour>();
        foreach (CsvRow row in table.Rows)
        {
            SiteHour? hour = Hour(row);

            if (hour is not null && hours.Count > 0 && hour.Start < hours[^1].End)
            {
                row.Fault("start", "The hour begins before the one above it has ended: out of order, written twice, or the clock was set back and the offset not.");
            }

            if (hour is not null && !row.Faulty)
            {
                hours.Add(hour);
            }
        }

        return hours.Count == 0 ? null : new SiteLog(hours);
    }

    private static SiteHour? Hour(CsvRow row)
    {
        DateTimeOffset start = Start(row);
        MoistAir? air = AirCells.Read(row);
        Temperature? surface = row.OptionalNumber("surface_degC") is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null;
        bool? rain = row.Choice("rain", Rains, string.Empty);
        Speed? wind = row.OptionalNumber("wind_m_s") is { } speed ? Speed.FromMetersPerSecond(speed) : null;
        return row.Faulty ? null : row.Try(
            "start", () => new SiteHour(start, air, surface, rain, wind), ("surfaceTemperature", "surface_degC"), ("wind", "wind_m_s"));
    }

    private static DateTimeOffset Start(CsvRow row)
    {
        string text = row.Text("start");
        if (text.Length > 0 && !DateTimeOffset.TryParseExact(text, "yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            row.Fault("start", $"'{text}' is not a time such as 2026-05-14T08:00+02:00. Its offset must stand with it: clocks change.");
        }

        return row.Faulty ? default : DateTimeOffset.ParseExact(text, "yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture);
    }
}
