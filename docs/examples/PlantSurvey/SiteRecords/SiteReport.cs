using System.Globalization;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using Spectre.Console;

namespace PlantSurvey.SiteRecords;

/// <summary>When laying may go on by the log, and which surfaces are ready, with every reason.</summary>
internal static class SiteReport
{
    internal static int Write(Survey survey, TextWriter output, TextWriter errors)
    {
        RuleSet rules = survey.Job.Rules;
        if (survey.Site.IsEmpty)
        {
            errors.WriteLine($"The survey has neither {SiteLogSheet.File} nor {ReadinessSheet.File}.");
            return 2;
        }

        using var text = new StringWriter(CultureInfo.InvariantCulture);
        IAnsiConsole console = Sheets.Console(text);
        console.WriteLine($"{survey.Job.Name}: site conditions. Rules: {rules}.");
        console.WriteLine("A log opens no work: measure air and surface at the spot before laying. What was not read is not taken as good.");
        if (survey.Site.Windows(rules) is { } windows)
        {
            console.Write(Open(windows));
            console.Write(Closed(windows));
        }

        if (survey.Site.Readings.Count > 0)
        {
            SurfaceReadiness[] lines = [.. survey.Site.Readiness(rules)];
            console.Write(Ready(lines));
            FindingsReport.Write(lines.SelectMany(static line => line.Findings), lines.Length, console);
        }

        Sheets.Print(text, output);
        return 0;
    }

    internal static string Verdict(SurfaceReadiness readiness) => readiness.Verdict switch
    {
        ReadinessVerdict.Ready => "ready",
        ReadinessVerdict.NotReady => "NOT READY",
        _ => "cannot be said",
    };

    private static Table Open(WorkWindows windows)
    {
        Table table = Sheets.Titled($"Windows of work: {windows}");
        Sheets.Head(table, "From", "To");
        Sheets.HeadRight(table, "Hours");
        foreach (WorkWindow window in windows.Windows)
        {
            table.AddRow(Stamp(window.Start), Stamp(window.End), Sheets.Number(window.Length.Hours, 0));
        }

        return table;
    }

    // Hours that follow one another for the same reasons stand in one row.
    private static Table Closed(WorkWindows windows)
    {
        Table table = Sheets.Titled("Outside the windows");
        Sheets.Head(table, "From", "To", "State");
        Sheets.HeadWrapped(table, "Rules");
        OutsideHour[] hours = [.. windows.Outside];
        for (int first = 0, last = 0; first < hours.Length; first = ++last)
        {
            while (last + 1 < hours.Length && hours[last + 1].Start == hours[last].End && Why(hours[last + 1]) == Why(hours[first]))
            {
                last++;
            }

            table.AddRow(Stamp(hours[first].Start), Stamp(hours[last].End), Why(hours[first]).State, Why(hours[first]).Rules);
        }

        return table;
    }

    private static Table Ready(SurfaceReadiness[] lines)
    {
        Table table = Sheets.Titled("Surfaces that were measured");
        Sheets.Head(table, "Line");
        Sheets.HeadRight(table, "Surface degC", "Dew point degC", "Margin K");
        Sheets.Head(table, "Verdict");
        foreach (SurfaceReadiness line in lines)
        {
            double? surface = line.Reading.SurfaceTemperature?.DegreesCelsius;
            double? dew = line.Reading.Air?.DewPoint.DegreesCelsius;
            table.AddRow(line.Subject, Degrees(surface), Degrees(dew), Degrees(surface - dew), Verdict(line));
        }

        return table;
    }

    private static (string State, string Rules) Why(OutsideHour hour) => (
        hour.State == HourState.Unfit ? "unfit" : "not known",
        string.Join(", ", hour.Reasons.Select(static one => one.Rule.Id).Distinct()));

    private static string Degrees(double? degrees) => degrees is { } known ? Sheets.Number(known, 1) : "-";

    private static string Stamp(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture);
}
