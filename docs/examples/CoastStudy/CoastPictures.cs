using System.Globalization;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace CoastStudy;

/// <summary>The pictures, each as PNG and as SVG, drawn without a screen and with letters that come along.</summary>
internal static class CoastPictures
{
    private const string Letters = "Coast study letters";
    private const int Width = 900;
    private const int Height = 540;

    private static readonly Color Ink = Color.FromHex("#22313f");
    private static readonly Color Zinc = Color.FromHex("#5b8aa8");
    private static readonly Color Pale = Color.FromHex("#c6d7e2");
    private static readonly Color Rust = Color.FromHex("#c6705a");
    private static readonly Color Warn = Color.FromHex("#b3401f");

    internal static void Draw(CoastResult result, string folder)
    {
        Fonts.AddFontFile(Letters, Path.Combine(AppContext.BaseDirectory, "font", "DejaVuSans-part.ttf"));
        Save(Lives(result), folder, "life-distribution");
        Save(Reached(result), folder, "life-exceedance");
        Save(Shares(result), folder, "life-sensitivity");
    }

    private static Plot Lives(CoastResult result)
    {
        Plot plot = Bare("How lives of the foil are spread", "Life, years", "Share of rows, % per year");
        const int BinsOfAYear = 4;
        var bars = new List<Bar>();
        double most = 0;
        for (int year = 0; year < CoastSite.LastYear; year++)
        {
            long rows = 0;
            for (int bin = 0; bin < BinsOfAYear; bin++)
            {
                rows += result.Lives.Counts[(year * BinsOfAYear) + bin];
            }

            double share = 100.0 * rows / result.Lives.Count;
            most = Math.Max(most, share);
            Color colour = year + 1 <= result.Asked.Years ? Rust : Zinc;
            bars.Add(new Bar { Position = year + 0.5, Value = share, Size = 1, FillColor = colour, LineColor = colour, LineWidth = 1 });
        }

        plot.Add.Bars(bars);
        plot.Axes.SetLimits(0, CoastSite.LastYear, 0, most * 1.18);
        Mark(plot, result.Asked.Years, Said($"required {result.Asked.Years} a"), most * 1.12, Warn);
        Mark(plot, result.Quantile(0.5), Said($"median {result.Quantile(0.5):0} a"), most * 1.12, Ink);
        if (result.Lives.AboveAll > 0)
        {
            Text beyond = plot.Add.Text(Said($"{100.0 * result.Lives.AboveAll / result.Lives.Count:0.0} % last longer"), CoastSite.LastYear - 1, most * 0.26);
            Style(beyond, Ink, Alignment.LowerRight);
        }

        return plot;
    }

    private static Plot Reached(CoastResult result)
    {
        Plot plot = Bare("Chance that the foil lasts at least so long", "Life, years", "Chance, %");
        double[] years = [.. Enumerable.Range(0, result.Reached.Thresholds.Count).Select(static i => 2.0 * i)];
        double[] chances = [.. years.Select((_, i) => 100 * result.Reached.Share(i))];
        var line = plot.Add.ScatterLine(years, chances, Zinc);
        line.LineWidth = 3;
        double chance = 100 * result.Required.Share(0);
        var down = plot.Add.Line(result.Asked.Years, 0, result.Asked.Years, chance);
        var left = plot.Add.Line(0, chance, result.Asked.Years, chance);
        foreach (var half in new[] { down, left })
        {
            half.Color = Warn;
            half.LineWidth = 1.5f;
        }

        plot.Add.Marker(result.Asked.Years, chance, MarkerShape.FilledCircle, 9, Warn);
        Text text = plot.Add.Text(Said($"at least {result.Asked.Years} a: {chance:0.0} %"), result.Asked.Years + 3, chance);
        Style(text, Warn, Alignment.LowerLeft);
        plot.Axes.SetLimits(0, CoastSite.LastYear, 0, 106);
        return plot;
    }

    private static Plot Shares(CoastResult result)
    {
        Plot plot = Bare("What the variance of life comes from (Sobol indices)", "Share of the variance", string.Empty);
        (string Input, double Alone, double InAll)[] ranked = [.. result.Ranked.Reverse()];
        for (int i = 0; i < ranked.Length; i++)
        {
            // An estimate of a small share may lie below nothing; a bar cannot.
            plot.Add.Bar(new Bar { Position = i + 0.18, Value = Math.Max(0, ranked[i].InAll), Size = 0.36, FillColor = Pale, LineWidth = 0, Orientation = Orientation.Horizontal });
            plot.Add.Bar(new Bar { Position = i - 0.18, Value = Math.Max(0, ranked[i].Alone), Size = 0.36, FillColor = Zinc, LineWidth = 0, Orientation = Orientation.Horizontal });
            Text text = plot.Add.Text(Said($"{ranked[i].Alone:0.000} / {ranked[i].InAll:0.000}"), Math.Max(ranked[i].InAll, ranked[i].Alone) + 0.01, i);
            Style(text, Ink, Alignment.MiddleLeft);
        }

        plot.Axes.Left.MinimumSize = 140;
        plot.Axes.Left.TickGenerator = new NumericManual([.. Enumerable.Range(0, ranked.Length).Select(static i => (double)i)], [.. ranked.Select(static one => one.Input)]);
        plot.Axes.Left.MajorTickStyle.Length = 0;
        double most = ranked.Max(static one => Math.Max(one.InAll, one.Alone));
        plot.Axes.SetLimits(0, most * 1.2, -0.6, ranked.Length - 0.4);
        plot.Grid.YAxisStyle.IsVisible = false;
        plot.Legend.ManualItems.Add(new LegendItem { LabelText = "in all, with others", FillColor = Pale });
        plot.Legend.ManualItems.Add(new LegendItem { LabelText = "alone", FillColor = Zinc });
        plot.ShowLegend(Alignment.LowerRight);
        return plot;
    }

    private static Plot Bare(string title, string across, string up)
    {
        var plot = new Plot();
        plot.Font.Set(Letters);
        plot.Title(title, 20);
        plot.XLabel($"{across}\n{CoastSite.Said}", 15);
        plot.YLabel(up, 15);
        plot.Axes.Color(Ink);
        plot.Axes.Left.MinimumSize = 72;
        plot.Axes.Left.TickLabelStyle.FontSize = 14;
        plot.Axes.Bottom.TickLabelStyle.FontSize = 14;
        plot.Axes.Right.FrameLineStyle.Width = 0;
        plot.Axes.Top.FrameLineStyle.Width = 0;
        plot.Legend.FontName = Letters;
        plot.Legend.FontSize = 14;
        plot.Legend.FontColor = Ink;
        plot.Legend.OutlineWidth = 0;
        plot.Legend.ShadowColor = Colors.Transparent;
        return plot;
    }

    private static void Mark(Plot plot, double at, string words, double height, Color colour)
    {
        // Solid: not every kind of dash gets into SVG.
        plot.Add.VerticalLine(at, 1.5f, colour);
        Style(plot.Add.Text(words, at + 1, height), colour, Alignment.UpperLeft);
    }

    private static void Style(Text text, Color colour, Alignment place)
    {
        text.LabelFontName = Letters;
        text.LabelFontSize = 15;
        text.LabelFontColor = colour;
        text.LabelAlignment = place;
    }

    private static string Said(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);

    private static void Save(Plot plot, string folder, string name)
    {
        plot.SavePng(Path.Combine(folder, name + ".png"), Width, Height);
        plot.SaveSvg(Path.Combine(folder, name + ".svg"), Width, Height);
    }
}
