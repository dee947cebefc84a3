using System.Globalization;
using System.Text;

namespace SacrificialTape.Docs.Tests;

/// <summary>A plot in the style of the hand-made figures: two axes, curves told apart by colour and by dashes, words beside them.</summary>
internal sealed class SvgPlot
{
    internal const string Blue = "#0072b2";
    internal const string Orange = "#d55e00";
    internal const string Green = "#009e73";
    internal const string Grey = "#777777";

    private const double Left = 90;
    private const double Right = 690;
    private const double Top = 50;

    private readonly StringBuilder body = new();
    private readonly Func<double, double> acrossScale;
    private readonly Func<double, double> upScale;
    private readonly double bottom;
    private readonly double height;
    private readonly string title;
    private readonly string description;

    /// <summary>Begins a plot.</summary>
    /// <param name="title">Its title, read out first.</param>
    /// <param name="description">What there is to see, for those who do not see it.</param>
    /// <param name="across">Ends of the axis across.</param>
    /// <param name="up">Ends of the axis up.</param>
    /// <param name="bottom">Where the axis across lies.</param>
    /// <param name="logarithmic">Whether the axis across is logarithmic.</param>
    internal SvgPlot(string title, string description, (double From, double To) across, (double From, double To) up, double bottom = 370, bool logarithmic = false)
    {
        this.title = title;
        this.description = description;
        this.bottom = bottom;
        this.height = bottom + 60;
        this.acrossScale = logarithmic
            ? x => Left + ((Right - Left) * Math.Log(x / across.From) / Math.Log(across.To / across.From))
            : x => Left + ((Right - Left) * (x - across.From) / (across.To - across.From));
        this.upScale = y => bottom - ((bottom - Top) * (y - up.From) / (up.To - up.From));
        this.Line(Left, bottom, Right, bottom, "#000000", string.Empty, 1);
        this.Line(Left, Top, Left, bottom, "#000000", string.Empty, 1);
    }

    internal void AcrossTick(double x, string text)
    {
        this.Line(this.acrossScale(x), this.bottom, this.acrossScale(x), this.bottom + 6, "#000000", string.Empty, 1);
        this.Text(this.acrossScale(x), this.bottom + 22, text, "middle", "#000000", 13);
    }

    internal void UpTick(double y, string text)
    {
        this.Line(Left - 6, this.upScale(y), Left, this.upScale(y), "#000000", string.Empty, 1);
        this.Text(Left - 10, this.upScale(y) + 5, text, "end", "#000000", 13);
    }

    internal void AxisNames(string across, string up)
    {
        this.Text((Left + Right) / 2, this.bottom + 46, across, "middle", "#000000", 15);
        this.Text(20, Top - 18, up, "start", "#000000", 15);
    }

    internal void Curve(IEnumerable<(double X, double Y)> points, string colour, string dashes = "")
    {
        string at = string.Join(' ', points.Select(point => $"{Number(this.acrossScale(point.X))},{Number(this.upScale(point.Y))}"));
        this.body.Append(CultureInfo.InvariantCulture, $"  <polyline points=\"{at}\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"3\"{Dashed(dashes)}/>\n");
    }

    internal void Level(double y, string colour) => this.Line(Left, this.upScale(y), Right, this.upScale(y), colour, "4 4", 1);

    internal void Upright(double x, double y, string colour, string dashes = "4 4") =>
        this.Line(this.acrossScale(x), this.bottom, this.acrossScale(x), this.upScale(y), colour, dashes, 1.5);

    internal void Dot(double x, double y, string colour) => this.body.Append(
        CultureInfo.InvariantCulture, $"  <circle cx=\"{Number(this.acrossScale(x))}\" cy=\"{Number(this.upScale(y))}\" r=\"5\" fill=\"{colour}\"/>\n");

    internal void Bar(double from, double to, double y, double thick, string colour, string border) => this.body.Append(
        CultureInfo.InvariantCulture,
        $"  <rect x=\"{Number(this.acrossScale(from))}\" y=\"{Number(this.upScale(y) - (thick / 2))}\" width=\"{Number(this.acrossScale(to) - this.acrossScale(from))}\" height=\"{Number(thick)}\" fill=\"{colour}\" stroke=\"{border}\"/>\n");

    internal void Say(double x, double y, string text, string colour, string anchor = "start", double right = 0, double down = 0) =>
        this.Text(this.acrossScale(x) + right, this.upScale(y) + down, text, anchor, colour, 14);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"""
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 740 {Number(this.height)}" role="img" aria-labelledby="t d" font-family="DejaVu Sans, Arial, sans-serif" font-size="15">
          <title id="t">{this.title}</title>
          <desc id="d">{this.description}</desc>
          <rect width="740" height="{Number(this.height)}" fill="#ffffff"/>
        {this.body}</svg>

        """).ReplaceLineEndings("\n");

    private void Line(double x1, double y1, double x2, double y2, string colour, string dashes, double wide) => this.body.Append(
        CultureInfo.InvariantCulture,
        $"  <line x1=\"{Number(x1)}\" y1=\"{Number(y1)}\" x2=\"{Number(x2)}\" y2=\"{Number(y2)}\" stroke=\"{colour}\" stroke-width=\"{Number(wide)}\"{Dashed(dashes)}/>\n");

    private void Text(double x, double y, string text, string anchor, string colour, double size) => this.body.Append(
        CultureInfo.InvariantCulture, $"  <text x=\"{Number(x)}\" y=\"{Number(y)}\" text-anchor=\"{anchor}\" font-size=\"{Number(size)}\" fill=\"{colour}\">{text}</text>\n");

    private static string Dashed(string dashes) => dashes.Length == 0 ? string.Empty : $" stroke-dasharray=\"{dashes}\"";

    // A tenth of a pixel: coarser than any rounding that differs from machine to machine.
    private static string Number(double value) => (Math.Round(value, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);
}
