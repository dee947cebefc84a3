using System.Globalization;
using SacrificialTape.SiteConditions;

namespace SacrificialTape.Reports.Pictures;

/// <summary>A log of hours: when laying may go on, surface and dew point, rain, gaps.</summary>
internal static class WorkPicture
{
    private const double Left = 60;
    private const double Top = 54;
    private const double High = 240;
    private const int MostMarks = 14;

    // Between marks, in hours: of a day, of days, of weeks.
    private static readonly int[] Steps = [3, 6, 12, 24, 48, 168, 336, 744];

    internal static Picture Of(WorkWindows windows)
    {
        SiteHour[] hours = [.. windows.Log.Hours];
        DateTimeOffset begin = hours[0].Start;
        double span = (hours[^1].End - begin).TotalHours;
        double wide = Math.Clamp(span * 14, 480, 1100);
        double X(DateTimeOffset at) => Left + (wide * (at - begin).TotalHours / span);
        double[] degrees = [.. hours.SelectMany(static hour => new[] { hour.SurfaceTemperature?.DegreesCelsius, hour.Air?.DewPoint.DegreesCelsius }).OfType<double>()];
        double low = degrees.Length == 0 ? 0 : 5 * Math.Floor(degrees.Min() / 5);
        double high = degrees.Length == 0 ? 5 : Math.Max(low + 5, 5 * Math.Ceiling(degrees.Max() / 5));
        double Y(double celsius) => Top + (High * (high - celsius) / (high - low));
        var canvas = new SvgCanvas(Left + wide + 130, Top + High + 62);
        foreach (WorkWindow window in windows.Windows)
        {
            canvas.Rectangle(X(window.Start), Top, X(window.End) - X(window.Start), High, SvgCanvas.Pale, "none");
            canvas.Text((X(window.Start) + X(window.End)) / 2, Top - 6, "open", "middle", bold: true);
        }

        foreach (SiteHour hour in hours.Where(static hour => hour.Rain == true))
        {
            canvas.Rectangle(X(hour.Start), Top, X(hour.End) - X(hour.Start), High, "#c9ccd0", "none");
            canvas.Text((X(hour.Start) + X(hour.End)) / 2, Top + 16, "rain", "middle");
        }

        for (double celsius = low; celsius <= high; celsius += 5)
        {
            canvas.Line(Left, Y(celsius), Left + wide, Y(celsius), "#c8ccd0");
            canvas.Text(Left - 8, Y(celsius) + 4, celsius.ToString("0", CultureInfo.InvariantCulture), "end");
        }

        int gaps = 0;
        for (int i = 1; i < hours.Length; i++)
        {
            if (hours[i].Start > hours[i - 1].End)
            {
                gaps++;
                canvas.Rectangle(X(hours[i - 1].End), Top, X(hours[i].Start) - X(hours[i - 1].End), High, "#ffffff", SvgCanvas.Grey, 1, "4 3");
                canvas.Text((X(hours[i - 1].End) + X(hours[i].Start)) / 2, Top + 32, "gap", "middle");
            }
        }

        Course(canvas, hours, static hour => hour.SurfaceTemperature?.DegreesCelsius, X, Y, SvgCanvas.Orange, string.Empty);
        Course(canvas, hours, static hour => hour.Air?.DewPoint.DegreesCelsius, X, Y, SvgCanvas.Blue, "7 4");
        canvas.Line(Left, Top + High, Left + wide, Top + High);
        int every = Steps.First(step => span / step <= MostMarks || step == Steps[^1]);
        for (DateTimeOffset at = begin; at <= hours[^1].End; at = at.AddHours(every))
        {
            canvas.Line(X(at), Top + High, X(at), Top + High + 6);
            canvas.Text(X(at), Top + High + 22, at.ToString(every >= 24 ? "MM-dd" : "HH", CultureInfo.InvariantCulture), "middle");
        }

        canvas.Text(Left + (wide / 2), Top + High + 46, string.Create(CultureInfo.InvariantCulture, $"hours from {begin:yyyy-MM-dd HH:mm zzz}"), "middle");
        canvas.Text(8, 36, "degC");
        canvas.Text(Left + wide + 8, Top + 20, "surface");
        canvas.Line(Left + wide + 8, Top + 26, Left + wide + 60, Top + 26, SvgCanvas.Orange, 2.5);
        canvas.Text(Left + wide + 8, Top + 50, "dew point");
        canvas.Line(Left + wide + 8, Top + 56, Left + wide + 60, Top + 56, SvgCanvas.Blue, 2.5, "7 4");
        canvas.Text(Left, 20, $"Windows of work: {windows}", bold: true);
        string open = windows.Windows.Count == 0 ? "None is open" : $"Open: {string.Join("; ", windows.Windows.Select(static window => string.Create(CultureInfo.InvariantCulture, $"{window.Start:yyyy-MM-dd HH:mm} to {window.End:HH:mm}")))}";
        return canvas.Draw(
            "Windows of work",
            $"Surface temperature and dew point over {span.ToString("0", CultureInfo.InvariantCulture)} hours. {open}. {hours.Count(static hour => hour.Rain == true)} hour(s) of rain, {gaps} gap(s) in the log. A log opens no work: measure at the spot.");
    }

    // What was not read leaves a gap in the line; it is not bridged.
    private static void Course(
        SvgCanvas canvas, SiteHour[] hours, Func<SiteHour, double?> value, Func<DateTimeOffset, double> x, Func<double, double> y, string colour, string dashes)
    {
        var run = new List<(double, double)>();
        for (int i = 0; i < hours.Length; i++)
        {
            if (run.Count > 0 && (value(hours[i]) is null || hours[i].Start > hours[i - 1].End))
            {
                canvas.Curve(run, colour, 2.5, dashes);
                run.Clear();
            }

            if (value(hours[i]) is { } known)
            {
                run.Add((x(hours[i].Start.AddMinutes(30)), y(known)));
            }
        }

        if (run.Count > 0)
        {
            canvas.Curve(run, colour, 2.5, dashes);
        }
    }
}
