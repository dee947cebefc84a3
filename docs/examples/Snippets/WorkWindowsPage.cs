using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/work-windows.md quotes.</summary>
public static class WorkWindowsPage
{
    public static void Day()
    {
        #region day
        // An invented May day: a clear night with dew, a shower at 14:00, and the logger silent at 18:00.
        double[] air = [8, 7, 6, 6, 5, 5, 6, 8, 11, 13, 15, 16, 17, 18, 15, 16, 17, 17, 0, 15, 13, 12, 11, 10];
        double[] humidity = [88, 90, 93, 94, 96, 96, 94, 88, 78, 70, 64, 60, 57, 55, 92, 80, 70, 66, 0, 70, 76, 80, 84, 87];
        double[] offset = [-2, -2, -2, -2, -2, -2, -1, 0, 1, 2, 3, 4, 4, 4, 0, 1, 2, 2, 0, 0, -1, -1, -2, -2];
        var midnight = new DateTimeOffset(2025, 5, 14, 0, 0, 0, TimeSpan.FromHours(2));
        var log = new SiteLog(Enumerable.Range(0, 24).Where(hour => hour != 18).Select(hour => SiteHour.WithSurfaceOffset(
            midnight.AddHours(hour),
            new MoistAir(Temperature.FromDegreesCelsius(air[hour]), RelativeHumidity.FromPercent(humidity[hour])),
            TemperatureDelta.FromKelvins(offset[hour]),
            rain: hour == 14)));
        var found = new WorkWindows(log, RuleSet.Default, "tank T-3");
        Console.WriteLine(found);
        foreach (WorkWindow window in found.Windows)
        {
            Console.WriteLine(window);
        }

        foreach (OutsideHour hour in found.Outside)
        {
            Console.WriteLine(hour);
        }
        #endregion
    }
}
