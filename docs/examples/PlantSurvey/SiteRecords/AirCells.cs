using SacrificialTape.SiteConditions;
using UnitsNet;

namespace PlantSurvey.SiteRecords;

/// <summary>The two cells in which sheets state the air.</summary>
internal static class AirCells
{
    /// <summary>The air; null where both cells are empty, or one is at fault.</summary>
    internal static MoistAir? Read(CsvRow row)
    {
        double? degrees = row.OptionalNumber("air_degC");
        double? humidity = row.OptionalNumber("rh_percent");
        if (degrees is null != humidity is null && !row.Faulty)
        {
            row.Fault(degrees is null ? "air_degC" : "rh_percent", "State temperature and humidity of the air, or leave both cells empty: it was not read then.");
        }

        return !row.Faulty && degrees is { } c && humidity is { } percent
            ? row.Try("air_degC", () => new MoistAir(Temperature.FromDegreesCelsius(c), RelativeHumidity.FromPercent(percent)), ("humidity", "rh_percent"))
            : null;
    }
}
