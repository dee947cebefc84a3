using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Reports.Pictures;

/// <summary>Zinc used up over the years: the fastest and the slowest course that is plausible, what may be used up, the life required.</summary>
internal static class LifePicture
{
    private const double Left = 70;
    private const double Top = 54;
    private const double Wide = 560;
    private const double High = 280;
    private const int Points = 120;
    private const double Widest = 12;

    internal static Picture Of(LifeEstimate life, Lifetime required)
    {
        if (life.LayersEverywhere == 0 || life.Earliest.IsUnlimited)
        {
            throw new ArgumentException("There is no layer everywhere, or the zinc never ends: nothing to draw.", nameof(life));
        }

        LawLife fast = life.ByLaw.MinBy(static law => law.Earliest)!;
        LawLife slow = life.ByLaw.MaxBy(static law => law.Latest)!;
        double earliest = Years(life.Earliest);
        double latest = life.Latest.IsUnlimited ? double.PositiveInfinity : Years(life.Latest);
        double wanted = required.IsUnlimited ? double.PositiveInfinity : Years(required);

        // As far as the latest end, unless the earliest would then be squeezed against the axis; without an end, some way beyond.
        double most = Widest * earliest;
        double end = 1.1 * new[] { earliest, double.IsInfinity(latest) ? 4 * earliest : Math.Min(latest, most), double.IsInfinity(wanted) ? 0 : Math.Min(wanted, most) }.Max();
        double zinc = life.ZincCounted.Micrometers;
        double X(double years) => Left + (Wide * years / end);
        double Y(double um) => Top + High - (High * Math.Min(um, 1.1 * zinc) / (1.1 * zinc));
        var canvas = new SvgCanvas(Left + Wide + 60, Top + High + 62);
        RateRange range = life.Exposure.FirstYear;
        double leastLayer = life.Foil.LeastThickness.Micrometers * life.Usable.Fraction;
        double layer = life.Foil.Thickness.Micrometers * life.Usable.Fraction;
        (double Years, double Um)[] fastCourse = [.. Course(fast.Law, range.Highest, leastLayer, life.LayersEverywhere, earliest, end)];
        (double Years, double Um)[] slowCourse = [.. Course(slow.Law, range.Lowest, layer, life.LayersEverywhere, latest, end)];
        canvas.Polygon(
            fastCourse.Append((slowCourse[^1].Years, fastCourse[^1].Um)).Append(slowCourse[^1]).Concat(slowCourse.Reverse()).Select(point => (X(point.Years), Y(point.Um))),
            SvgCanvas.Pale, 0.7, "none");
        canvas.Curve(fastCourse.Select(point => (X(point.Years), Y(point.Um))), SvgCanvas.Orange, 2.5);
        canvas.Curve(slowCourse.Select(point => (X(point.Years), Y(point.Um))), SvgCanvas.Blue, 2.5, "7 4");
        canvas.Ellipse(X(fastCourse[^1].Years), Y(fastCourse[^1].Um), 5, 5, SvgCanvas.Orange, SvgCanvas.Ink);
        if (latest <= end)
        {
            canvas.Ellipse(X(latest), Y(slowCourse[^1].Um), 5, 5, SvgCanvas.Blue, SvgCanvas.Ink);
        }
        else
        {
            canvas.Text(Left + Wide - 4, Y(slowCourse[^1].Um) + 18, double.IsInfinity(latest) ? "goes on without end" : "goes on beyond the picture", "end");
        }

        canvas.Line(Left, Y(zinc), Left + Wide, Y(zinc), SvgCanvas.Ink, 1, "4 4");
        canvas.Line(Left, Top, Left, Top + High);
        canvas.Line(Left, Top + High, Left + Wide, Top + High);
        foreach (double years in Ticks(end))
        {
            canvas.Line(X(years), Top + High, X(years), Top + High + 6);
            canvas.Text(X(years), Top + High + 22, Text(years), "middle");
        }

        foreach (double um in Ticks(1.1 * zinc))
        {
            canvas.Line(Left - 6, Y(um), Left, Y(um));
            canvas.Text(Left - 10, Y(um) + 4, Text(um), "end");
        }

        canvas.Text(Left + (Wide / 2), Top + High + 46, "years", "middle");
        canvas.Text(8, Top - 10, "um used up");
        canvas.Text(Left + Wide - 4, Y(zinc) - 6, string.Create(CultureInfo.InvariantCulture, $"{zinc:0.#} um may be used up"), "end");
        if (!double.IsInfinity(wanted) && wanted > end)
        {
            canvas.Text(Left + Wide - 4, Top + High - 8, $"required {Text(wanted)} a, beyond the picture", "end");
        }
        else if (!double.IsInfinity(wanted))
        {
            canvas.Line(X(wanted), Top, X(wanted), Top + High, SvgCanvas.Grey, 2, "2 3");
            canvas.Text(X(wanted) + 5, Top + High - 8, $"required {Text(wanted)} a");
        }

        string fastest = string.Create(CultureInfo.InvariantCulture, $"fastest: {fast.Law.Name}, least foil, ends after {earliest:0.#} a");
        string slowest = double.IsInfinity(latest)
            ? $"slowest: {slow.Law.Name}, no end"
            : string.Create(CultureInfo.InvariantCulture, $"slowest: {slow.Law.Name}, ends after {latest:0.#} a");
        canvas.Text(8, 20, $"Zinc used up in {life.Exposure.Name}", bold: true);
        canvas.Text(Left + 190, 20, fastest);
        canvas.Text(Left + 190, 38, $"dashed, {slowest}");
        return canvas.Draw(
            $"Zinc used up in {life.Exposure.Name}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"Zinc used up over {end:0} years, of {zinc:0.#} um that may be: {fastest}; {slowest}. {(double.IsInfinity(wanted) ? "No end is required." : $"{wanted:0.#} a are required.")} A calculation; no published life of foil on adhesive was found."));
    }

    // Layer after layer, each beginning anew, as the estimate takes them; the course ends where the last is used up.
    private static IEnumerable<(double Years, double Um)> Course(ILossLaw law, Quantities.CorrosionRate rate, double perLayer, int layers, double over, double end)
    {
        Lifetime one = law.TimeToLoss(rate, Length.FromMicrometers(perLayer));
        double until = Math.Min(over, end);
        for (int i = 0; i <= Points; i++)
        {
            double at = until * i / Points;
            if (i == Points && over <= end)
            {
                yield return (over, perLayer * layers);
                yield break;
            }

            double whole = one.IsUnlimited ? 0 : Math.Floor(at / Years(one));
            double rest = one.IsUnlimited ? at : at - (whole * Years(one));
            yield return (at, (whole * perLayer) + (rest > 0 ? law.Loss(rate, Duration.FromDays(rest * 365)).Micrometers : 0));
        }
    }

    private static IEnumerable<double> Ticks(double end)
    {
        double raw = end / 6;
        double power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double step = new[] { 1.0, 2, 5, 10 }.Select(one => one * power).First(one => one >= raw);
        for (int i = 0; i * step <= end; i++)
        {
            yield return i * step;
        }
    }

    private static double Years(Lifetime life) => life.Duration.Days / 365;

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
