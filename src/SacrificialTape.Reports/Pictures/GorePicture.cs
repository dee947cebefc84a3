using System.Globalization;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports.Pictures;

/// <summary>One gore as it is cut from the strip, and all of them seen along the axis.</summary>
internal static class GorePicture
{
    private const double Left = 30;
    private const double Top = 66;
    private const double Wide = 420;
    private const double MostHigh = 200;
    private const double Round = 240;
    private const int ArcSteps = 8;

    // A crew marks a handful of stations; the rest of the table stands in the instruction.
    private const int MostLabels = 6;

    internal static Picture Of(GoreLay lay)
    {
        double length = lay.Stations[^1].FromLowEdge.Millimeters - lay.Stations[0].FromLowEdge.Millimeters;
        double strip = lay.Stock.Width.Millimeters;
        double scale = Math.Min(Wide / length, MostHigh / strip);
        double high = Math.Max(strip * scale, Round);
        double middle = Top + (high / 2);
        var canvas = new SvgCanvas(Left + Wide + 60 + Round + 30, Top + high + 66);
        double X(GoreStation station) => Left + ((station.FromLowEdge.Millimeters - lay.Stations[0].FromLowEdge.Millimeters) * scale);
        canvas.Rectangle(Left, middle - (strip * scale / 2), length * scale, strip * scale, SvgCanvas.Light, SvgCanvas.Grey, 1, "6 4");
        canvas.Polygon(
            lay.Stations.Select(station => (X(station), middle - (station.HalfWidth.Millimeters * scale)))
                .Concat(lay.Stations.Reverse().Select(station => (X(station), middle + (station.HalfWidth.Millimeters * scale)))),
            SvgCanvas.Pale, 1, SvgCanvas.Ink, 2);
        canvas.Line(Left, middle, Left + (length * scale), middle, SvgCanvas.Ink, 1, "8 3 2 3");
        Stations(canvas, lay, X, middle, scale);
        Plan(canvas, lay, Left + Wide + 60 + (Round / 2), middle);

        string gores = string.Create(CultureInfo.InvariantCulture, $"{lay.Gores} gores from strip {strip:0.#} mm wide, lap {lay.Lap.Millimeters:0.#} mm");
        string cut = string.Create(CultureInfo.InvariantCulture, $"a gore is {length:0} mm long along the steel, {2 * lay.Stations[0].HalfWidth.Millimeters:0.#} mm wide at the low edge and {2 * lay.Stations[^1].HalfWidth.Millimeters:0.#} mm at the other end");
        canvas.Text(Left, 20, $"{lay.Surface.Description}, in gores", bold: true);
        canvas.Text(Left, 38, gores);
        canvas.Text(Left, 56, "left: a gore laid flat, low edge at the left, widths from its middle line");
        canvas.Text(Left + Wide + 60 + (Round / 2), Top + high + 24, "all of them along the axis", "middle");
        return canvas.Draw(
            $"{lay.Surface.Description}: {lay.Description}",
            $"{gores}; {cut}. Beside it all gores seen along the axis, darker where they lap.{(lay.Strips.Count > 1 ? " A disc closes the crown." : string.Empty)}");
    }

    private static void Stations(SvgCanvas canvas, GoreLay lay, Func<GoreStation, double> x, double middle, double scale)
    {
        int every = Math.Max(1, (lay.Stations.Count - 1 + MostLabels - 1) / MostLabels);
        for (int i = 0; i < lay.Stations.Count; i++)
        {
            GoreStation station = lay.Stations[i];
            double half = station.HalfWidth.Millimeters * scale;
            canvas.Line(x(station), middle - half, x(station), middle + half, SvgCanvas.Grey);
            int last = lay.Stations.Count - 1;
            if (i == last || (i % every == 0 && last - i >= every))
            {
                canvas.Text(x(station), middle + (lay.Stock.Width.Millimeters * scale / 2) + 18, string.Create(CultureInfo.InvariantCulture, $"{station.HalfWidth.Millimeters:0.#}"), "middle");
            }
        }

        canvas.Text(x(lay.Stations[0]), middle + (lay.Stock.Width.Millimeters * scale / 2) + 36, "half widths, mm");
    }

    // The low edge is as long as the gores without their laps.
    private static void Plan(SvgCanvas canvas, GoreLay lay, double x, double y)
    {
        double lap = lay.Lap.Millimeters;
        double Across(GoreStation station) => (2 * station.HalfWidth.Millimeters) - lap;
        double most = lay.Stations.Max(Across);
        double outer = Round / 2 * Across(lay.Stations[0]) / most;
        double inner = Round / 2 * Math.Max(0, Across(lay.Stations[^1])) / most;
        canvas.Ellipse(x, y, Round / 2, Round / 2, SvgCanvas.Light);
        double each = 2 * Math.PI / lay.Gores;
        for (int gore = 0; gore < lay.Gores; gore++)
        {
            IEnumerable<(double, double)> Arc(double radius, double share, int direction) => Enumerable.Range(0, ArcSteps + 1).Select(step =>
            {
                double angle = each * (gore + (direction * share * ((double)step / ArcSteps - 0.5)));
                return (x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)));
            });
            canvas.Polygon(
                Arc(outer, 1 + (lap / Across(lay.Stations[0])), 1).Concat(Arc(inner, 1 + (lap / Math.Max(lap, Across(lay.Stations[^1]))), -1)), SvgCanvas.Blue, 0.3);
        }

        if (lay.Strips.Count > 1)
        {
            double disc = lay.Stock.Width.Millimeters / 2 * (Round / 2) / (lay.Gores * most / (2 * Math.PI));
            canvas.Ellipse(x, y, disc, disc, SvgCanvas.Pale, SvgCanvas.Ink, 2);
        }
    }
}
