using System.Globalization;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>Lives with their uncertainty: percentiles and chances, the plan over the years, hot-dip zinc beside it.</summary>
internal static class LifeReport
{
    /// <summary>Confidences of the table, surest first.</summary>
    internal static readonly double[] Confidences = [0.99, 0.95, 0.9, 0.5, 0.1];

    // Past this a day would be a figure of speech.
    private const double LongestPlanYears = 200;

    internal static int Write(Survey survey, JobEstimate estimate, TextWriter output)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        IAnsiConsole console = Sheets.Console(text);
        LineLife[] lives = [.. LineLife.Of(survey, estimate)];
        LifeChoices choices = survey.Choices.Life;
        console.WriteLine($"{estimate.Job.Name}: how sure the lives are. Bounds of a rate read as quantiles {Percent(choices.Below)} and {Percent(1 - choices.Below.Fraction)} (a judgement); usable share {choices.Usable.Lowest} to {choices.Usable.Highest}; foil within its tolerance. In air {(choices.ByPowerLaw ? "by the power law" : "linear")}.");
        console.WriteLine("No published life of foil on adhesive was found: compare with these figures, promise none of them, and look at the tape.");
        console.Write(Percentiles(lives));
        foreach (IGrouping<string, LineLife> same in lives.Where(static one => one.Distribution is null).GroupBy(static one => one.WhyNot))
        {
            console.WriteLine($"No percentiles, {same.Key}: {string.Join(", ", same.Select(static one => one.Line.Line.Tag))}.");
        }

        if (lives.Any(static life => life.Notes.Exposure is { Kind: "coupon" }))
        {
            console.WriteLine("Of a coupon only the error of weighing and measuring is spread, not what differs from spot to spot and from year to year: read its chances as too good.");
        }

        console.Write(Plan(lives, choices));
        if (lives.Any(life => life.HotDip(choices.Confidence) is not null))
        {
            console.Write(HotDip(lives, choices.Confidence));
        }

        Sheets.Print(text, output);
        return 0;
    }

    /// <summary>Days on which two thirds and one third of the zinc are left at least; null without a day of laying, or too far off.</summary>
    internal static DateOnly? Day(LifePlan plan, LifeChoices choices, ZincShare left) =>
        choices.Laid is { } laid && plan.Until(left) is { IsUnlimited: false } time && time.Duration.Years365 <= LongestPlanYears
            ? plan.Inspections(laid, [left])[0]
            : null;

    internal static ZincShare Left(int thirds) => ZincShare.FromFraction(thirds / 3.0);

    private static Table Percentiles(LineLife[] lives)
    {
        Table table = Sheets.Titled("Life in years that is reached with a confidence (earliest: the one to design for; a life that does not hold is arithmetic, see the findings)");
        Sheets.Head(table, "Line", "Exposure");
        Sheets.HeadRight(table, "Median um/a", "s");
        Sheets.HeadRight(table, [.. Confidences.Select(static one => Percent(one))]);
        Sheets.HeadRight(table, "Required", "Chance", "Earliest");
        Sheets.HeadWrapped(table, "by");
        Sheets.Head(table, "Holds");
        foreach (LineLife life in lives)
        {
            LineEstimate line = life.Line;
            string[] middle = life.Distribution is { } known
                ?
                [
                    Sheets.Number(known.Uncertainty.Rate.LogNormal.Median.MicrometersPerYear, 2),
                    Sheets.Number(known.Uncertainty.Rate.LogNormal.Spread.Value, 2),
                    .. Confidences.Select(one => TableReport.Years(known.ReachedWith(Probability.FromFraction(one)))),
                    TableReport.Years(line.Line.RequiredLife),
                    Percent(known.ChanceOf(line.Line.RequiredLife)),
                ]
                : ["-", "-", .. Confidences.Select(static _ => "-"), TableReport.Years(line.Line.RequiredLife), "-"];
            table.AddRow(
            [
                line.Line.Tag, life.Exposure, .. middle, TableReport.Years(line.Life.Earliest), life.EarliestLaw.Name,
                life.Stops ? "STOP" : line.LifeHolds ? "yes" : "no",
            ]);
        }

        return table;
    }

    private static Table Plan(LineLife[] lives, LifeChoices choices)
    {
        string since = choices.Laid is { } laid ? $"laid {laid.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : "no day of laying in choices.csv, so years only";
        Table table = Sheets.Titled($"Plan at {Percent(choices.Confidence)} ({since}): look when two thirds of the zinc are left, maintain when one third is");
        Sheets.Head(table, "Line");
        Sheets.HeadRight(table, "2/3 left until, a", "1/3 left until, a", "End, a");
        Sheets.Head(table, "Look on", "First maintenance by");
        foreach (LineLife life in lives.Where(static one => one.Distribution is not null && !one.Stops))
        {
            var plan = new LifePlan(life.Distribution!, choices.Confidence);
            table.AddRow(
                life.Line.Line.Tag,
                TableReport.Years(plan.Until(Left(2))),
                TableReport.Years(plan.Until(Left(1))),
                TableReport.Years(plan.Until(Left(0))),
                Written(Day(plan, choices, Left(2))),
                Written(Day(plan, choices, Left(1))));
        }

        return table;
    }

    private static Table HotDip(LineLife[] lives, Probability confidence)
    {
        Table table = Sheets.Titled($"Beside hot-dip zinc by ISO 1461, mean thickness, at {Percent(confidence)} (amounts of zinc; nothing says that foil on adhesive behaves like it)");
        Sheets.Head(table, "Line");
        Sheets.HeadRight(table, "Steel mm", "Layers", "Tape, a", "Coating um", "Coating, a", "Tape is worth um");
        foreach (LineLife life in lives)
        {
            if (life.HotDip(confidence) is { } beside)
            {
                table.AddRow(
                    life.Line.Line.Tag,
                    Sheets.Number(life.Notes.SteelThickness!.Value.Millimeters, 1),
                    Sheets.Number(beside.Tape.LayersEverywhere, 0),
                    TableReport.Years(beside.TapeLife),
                    Sheets.Number(beside.Coating.Thickness.Micrometers, 0),
                    TableReport.Years(beside.CoatingLife),
                    Sheets.Number(beside.EqualCoating.Micrometers, 0));
            }
        }

        return table;
    }

    private static string Written(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "-";

    private static string Percent(Probability share) => Percent(share.Fraction);

    private static string Percent(double share) => Sheets.Number(100 * share, share is > 0.001 and < 0.999 ? 0 : 1) + " %";
}
