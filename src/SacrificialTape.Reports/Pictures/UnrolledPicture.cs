using System.Globalization;
using SacrificialTape.Contact;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports.Pictures;

/// <summary>The surface slit open and laid flat, with its strips, laps and windows.</summary>
internal static class UnrolledPicture
{
    private const double Left = 30;
    private const double Top = 46;
    private const double Wide = 640;
    private const double High = 320;

    // What is left of a surface beyond this looks the same.
    private const double ShownGirths = 3;
    private const double ShownStrips = 8;
    private const int RoundCorners = 32;

    internal static Picture Of(ILay lay, IPlacedStrips placed, UnrolledSurface surface, WindowLayout? windows)
    {
        double girth = surface.Girth.Millimeters;
        double whole = surface.Length.Millimeters;
        double shown = Math.Min(whole, Math.Max(ShownGirths * girth, ShownStrips * lay.Stock.Width.Millimeters));
        double scale = Math.Min(Wide / shown, High / girth);
        var canvas = new SvgCanvas(Left + (shown * scale) + 250, Top + (girth * scale) + 74);
        double X(double along) => Left + (along * scale);

        // A panel is seen from the front, its bottom below; a pipe is slit along the line that the crew names, at the top.
        double Y(double around) => Top + ((surface.IsClosed ? around : girth - around) * scale);
        canvas.Rectangle(X(0), Top, shown * scale, girth * scale, SvgCanvas.Light);
        int strips = 0;
        foreach (PlacedStrip strip in placed.PlaceStrips().Where(static strip => strip.Pass == 1))
        {
            bool seen = false;
            foreach (IReadOnlyList<(double Along, double Around)> piece in StripOutline.Of(strip, girth, surface.IsClosed, 0, shown))
            {
                seen = true;
                canvas.Polygon(piece.Select(corner => (X(corner.Along), Y(corner.Around))), SvgCanvas.Blue, 0.3);
            }

            strips += seen ? 1 : 0;
        }

        int bare = windows is null ? 0 : Windows(canvas, windows, shown, X, Y);
        string measures = Measures(canvas, lay, Top + (girth * scale) + 22, X, scale);
        canvas.Text(Left, 20, $"{lay.Surface.Description}, {(surface.IsClosed ? "slit open and laid flat" : "seen from the front")}", bold: true);
        canvas.Text(Left, 38, string.Create(CultureInfo.InvariantCulture, $"{(shown < whole ? $"the first {shown / 1000:0.##} m of {whole / 1000:0.##} m" : $"{whole / 1000:0.##} m")} along, {girth:0} mm {(surface.IsClosed ? "round" : "high")}; darker where strips lap"));
        return canvas.Draw(
            $"{lay.Surface.Description}: {lay.Description}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{lay.Surface.Description}, {(surface.IsClosed ? "unrolled" : "from the front")}: {lay.Description}. {measures}{(bare > 0 ? $"{bare} window(s) of bare steel are shown. " : string.Empty)}{(shown < whole ? $"Drawn are the first {shown / 1000:0.##} m of {whole / 1000:0.##} m." : "The whole is drawn.")}"));
    }

    // A window over the line that was slit shows in two parts.
    private static int Windows(SvgCanvas canvas, WindowLayout windows, double shown, Func<double, double> x, Func<double, double> y)
    {
        int drawn = 0;
        double girth = windows.Surface.Girth.Millimeters;
        double[] shifts = windows.Surface.IsClosed ? [-girth, 0, girth] : [0];
        foreach (ContactWindow window in windows.Windows)
        {
            bool seen = false;
            foreach (double shift in shifts)
            {
                (double, double)[] corners = [.. Corners(window).Select(corner => (corner.Along, corner.Around + shift))];
                IReadOnlyList<(double Along, double Around)> part = Outline.WithinAround(Outline.Within(corners, 0, shown), 0, girth);
                if (part.Count > 2)
                {
                    seen = true;
                    canvas.Polygon(part.Select(corner => (x(corner.Along), y(corner.Around))), "#ffffff", 1, SvgCanvas.Orange, 2);
                }
            }

            drawn += seen ? 1 : 0;
        }

        return drawn;
    }

    private static IEnumerable<(double Along, double Around)> Corners(ContactWindow window)
    {
        double along = window.Along.Millimeters;
        double around = window.Around.Millimeters;
        double halfAlong = window.ExtentAlong.Millimeters / 2;
        double halfAround = window.ExtentAround.Millimeters / 2;
        return window.IsRound
            ? Enumerable.Range(0, RoundCorners).Select(i => (
                along + (halfAlong * Math.Cos(2 * Math.PI * i / RoundCorners)), around + (halfAround * Math.Sin(2 * Math.PI * i / RoundCorners))))
            : [(along - halfAlong, around - halfAround), (along + halfAlong, around - halfAround), (along + halfAlong, around + halfAround), (along - halfAlong, around + halfAround)];
    }

    private static string Measures(SvgCanvas canvas, ILay lay, double y, Func<double, double> x, double scale)
    {
        switch (lay)
        {
            case SpiralLay spiral:
                double along = spiral.Stock.Width.Millimeters / Math.Cos(spiral.Geometry.Angle.Radians);
                double mark = spiral.Geometry.Advance.Millimeters;
                string setting = string.Create(CultureInfo.InvariantCulture, $"two marks {mark:0.#} mm apart, once round");
                string lap = string.Create(CultureInfo.InvariantCulture, $"lap {spiral.Geometry.TrueLap.Millimeters:0.#} mm across the strip; {spiral.Geometry.Angle.Degrees:0.#} deg to the circumference");
                canvas.Measure(x(0), x(mark), y, setting);
                if (along > mark)
                {
                    canvas.Measure(x(mark), x(along), y + 26, lap);
                }

                return $"{Capital(setting)}; {lap}. ";
            case RingLay { Rings: > 1 } rings:
                double step = rings.Stock.Width.Millimeters - rings.Lap.Millimeters;
                string every = string.Create(CultureInfo.InvariantCulture, $"a ring every {step:0.#} mm; lap {rings.Lap.Millimeters:0.#} mm");
                canvas.Measure(x(0), x(step), y, every);
                return $"{Capital(every)}. ";
            default:
                canvas.Measure(x(0), x(0) + (lay.Stock.Width.Millimeters * scale), y, string.Create(CultureInfo.InvariantCulture, $"strip {lay.Stock.Width.Millimeters:0.#} mm wide"));
                return string.Empty;
        }
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
