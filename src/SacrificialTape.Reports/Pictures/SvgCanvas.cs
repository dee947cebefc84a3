using System.Globalization;
using System.Net;
using System.Text;

namespace SacrificialTape.Reports.Pictures;

/// <summary>Takes shapes and words, and writes them as one drawing. Numbers are rounded to a hundredth of a unit.</summary>
internal sealed class SvgCanvas(double width, double height)
{
    internal const string Ink = "#111111";
    internal const string Blue = "#0072b2";
    internal const string Orange = "#b84a00";
    internal const string Pale = "#bcd6ea";
    internal const string Grey = "#5b6670";
    internal const string Light = "#e6e8ea";

    private readonly StringBuilder body = new();

    internal void Polygon(IEnumerable<(double X, double Y)> points, string fill, double opacity, string stroke = Ink, double thick = 1) => this.body.Append(
        CultureInfo.InvariantCulture, $"<polygon points=\"{Points(points)}\" fill=\"{fill}\" fill-opacity=\"{Number(opacity)}\" stroke=\"{stroke}\" stroke-width=\"{Number(thick)}\"/>\n");

    internal void Curve(IEnumerable<(double X, double Y)> points, string stroke, double thick = 2, string dashes = "") => this.body.Append(
        CultureInfo.InvariantCulture, $"<polyline points=\"{Points(points)}\" fill=\"none\" stroke=\"{stroke}\" stroke-width=\"{Number(thick)}\"{Dashed(dashes)}/>\n");

    internal void Line(double x1, double y1, double x2, double y2, string stroke = Ink, double thick = 1, string dashes = "") => this.body.Append(
        CultureInfo.InvariantCulture, $"<line x1=\"{Number(x1)}\" y1=\"{Number(y1)}\" x2=\"{Number(x2)}\" y2=\"{Number(y2)}\" stroke=\"{stroke}\" stroke-width=\"{Number(thick)}\"{Dashed(dashes)}/>\n");

    internal void Rectangle(double x, double y, double wide, double high, string fill, string stroke = Ink, double thick = 1, string dashes = "") => this.body.Append(
        CultureInfo.InvariantCulture, $"<rect x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(wide)}\" height=\"{Number(high)}\" fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\"{Number(thick)}\"{Dashed(dashes)}/>\n");

    internal void Ellipse(double x, double y, double halfWide, double halfHigh, string fill, string stroke = Ink, double thick = 1) => this.body.Append(
        CultureInfo.InvariantCulture, $"<ellipse cx=\"{Number(x)}\" cy=\"{Number(y)}\" rx=\"{Number(halfWide)}\" ry=\"{Number(halfHigh)}\" fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\"{Number(thick)}\"/>\n");

    internal void Text(double x, double y, string text, string anchor = "start", bool bold = false) => this.body.Append(
        CultureInfo.InvariantCulture, $"<text x=\"{Number(x)}\" y=\"{Number(y)}\" text-anchor=\"{anchor}\"{(bold ? " font-weight=\"bold\"" : string.Empty)}>{WebUtility.HtmlEncode(text)}</text>\n");

    /// <summary>A measure between two points of a level line, with its ends marked and its words above.</summary>
    internal void Measure(double from, double to, double y, string text)
    {
        this.Line(from, y, to, y, Ink, 1.5);
        this.Line(from, y - 5, from, y + 5, Ink, 1.5);
        this.Line(to, y - 5, to, y + 5, Ink, 1.5);
        this.Text(Math.Max(from, to) + 6, y + 4, text);
    }

    internal Picture Draw(string title, string description) => new(title, description, string.Create(
        CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Number(width)} {Number(height)}\" width=\"{Number(width)}\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(title)}\" font-family=\"DejaVu Sans, Arial, sans-serif\" font-size=\"13\" fill=\"{Ink}\">\n<title>{WebUtility.HtmlEncode(title)}</title>\n<desc>{WebUtility.HtmlEncode(description)}</desc>\n<rect width=\"{Number(width)}\" height=\"{Number(height)}\" fill=\"#ffffff\"/>\n{this.body}</svg>"));

    internal static string Number(double number)
    {
        string text = Math.Round(number, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static string Points(IEnumerable<(double X, double Y)> points) => string.Join(' ', points.Select(static point => $"{Number(point.X)},{Number(point.Y)}"));

    private static string Dashed(string dashes) => dashes.Length == 0 ? string.Empty : $" stroke-dasharray=\"{dashes}\"";
}
