using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using Spectre.Console;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>Tape that is up: readings, rates, remaining life, how the estimate did, the greatest loss to expect, when to look again.</summary>
internal static class InspectionReport
{
    internal static int Write(Survey survey, TextWriter output, TextWriter errors)
    {
        if (survey.Inspections.Count == 0)
        {
            errors.WriteLine($"The survey has no {InspectionSheet.File}.");
            return 2;
        }

        using var text = new StringWriter(CultureInfo.InvariantCulture);
        IAnsiConsole console = Sheets.Console(text);
        console.WriteLine($"{survey.Job.Name}: tape that is up. Rules: {RuleSet.Default}.");
        console.WriteLine("A remaining life is a calculation from few spots, no licence to wait: whoever is responsible, and local codes, say when to look.");
        foreach (TankInspection one in survey.Inspections)
        {
            Write(one, console);
        }

        FindingsReport.Write(survey.Inspections.SelectMany(static one => one.Findings()), lines: 0, console);
        Sheets.Print(text, output);
        return 0;
    }

    internal static string Verdict(PredictionVerdict verdict) => verdict switch
    {
        PredictionVerdict.Faster => "faster than predicted",
        PredictionVerdict.Slower => "slower than predicted",
        _ => "not contradicted",
    };

    private static void Write(TankInspection one, IAnsiConsole console)
    {
        InspectionTerms terms = one.Terms;
        console.WriteLine();
        console.WriteLine($"{terms.Name}: {terms.Stock}, laid {Day(terms.Laid)}, {Sheets.Number(terms.Covered.SquareMeters, 1)} m2");
        if (terms.Layers > 1)
        {
            console.WriteLine($"{terms.Layers} layers: only the one that was read is counted; what lies under it comes on top.");
        }

        console.Write(Readings(one));
        console.Write(Rates(one));
        console.Write(Lives(one));
        console.WriteLine($"Plan by the thin spots under the law that gives least: {Years(one.PlanBy)} a. Look again {one.Next}: by {Day(one.NextDay)}.");
        console.WriteLine(one.Extremes is { } extremes
            ? $"Greatest loss to expect on the whole area, from {extremes.Losses.Count} zones of {Sheets.Number(extremes.SampleArea.SquareMeters, 2)} m2: {Sheets.Number(extremes.LargestLoss.Micrometers, 1)} um of {Sheets.Number(terms.Stock.Tape.Foil.Thickness.Micrometers, 0)} um."
            : $"No greatest loss to expect: {one.WhyNoExtremes}");
        console.Write(Predictions(one));
        RepairReport.Write(one, console);
    }

    private static Table Readings(TankInspection one)
    {
        Table table = Sheets.Titled($"Readings in um (limit: {Percent(one.Terms.Coverage)} of the foil are at least so thick, with {Percent(one.Terms.Confidence)} confidence; outliers {(one.Terms.LeaveOutliers ? "left out by choice" : "kept")})");
        Sheets.Head(table, "Day");
        Sheets.HeadRight(table, "Age a", "n", "Mean", "s", "Lowest", "Limit", "by rank");
        Sheets.HeadWrapped(table, "Flagged");
        foreach (Campaign day in one.Campaigns)
        {
            var limit = new ThicknessLimit(day.Used, one.Terms.Coverage, one.Terms.Confidence);
            var rank = new RankLimit(day.Used, one.Terms.Coverage, one.Terms.Confidence);
            table.AddRow(
                Day(day.Day),
                Years(day.Age),
                Sheets.Number(day.Used.Count, 0),
                Micrometers(day.Used.Mean),
                Micrometers(day.Used.StandardDeviation),
                Micrometers(day.Used.Lowest),
                Micrometers(limit.Value),
                rank.Value is { } value ? Micrometers(value) : "-",
                string.Join("; ", day.Readings.Outliers.Select(static flagged => $"{Micrometers(flagged.Thickness)} um ({flagged.Reading.Preparation.Note})")));
        }

        return table;
    }

    private static Table Rates(TankInspection one)
    {
        Table table = Sheets.Titled("Rates and the straight line through them");
        Sheets.Head(table, "Rate");
        Sheets.HeadRight(table, "um/a", "Remaining a");
        foreach (RemainingLifeByRate rate in one.ByRate)
        {
            table.AddRow(
                rate.Choice switch { RateChoice.LongTerm => "since laying", RateChoice.ShortTerm => "since last read", _ => "the larger" },
                Rate(rate.Rate),
                Years(rate.Remaining));
        }

        if (one.Between is { } between)
        {
            table.AddRow($"at most, {Percent(between.Confidence)}", Rate(between.HighestRate), Years(between.EarliestRemaining(one.Required)));
        }

        return table;
    }

    private static Table Lives(TankInspection one)
    {
        Table table = Sheets.Titled($"Remaining life in years, the law drawn through the readings and on to {Micrometers(one.Required)} um left ({Percent(one.Terms.Confidence)} confidence)");
        Sheets.Head(table, "Law");
        Sheets.HeadRight(table, "First year um/a", "Mean", "Earliest", "Latest", "Thin spots");
        foreach (RemainingLifeFromReadings life in one.Lives)
        {
            table.AddRow(life.Law.Name, Rate(life.FirstYear), Years(life.Mean), Years(life.Earliest), Years(life.Latest), Years(life.OfThinSpots));
        }

        return table;
    }

    private static Table Predictions(TankInspection one)
    {
        Table table = Sheets.Titled($"Held against the estimate of {Day(one.Terms.Laid)}, {one.Terms.Predicted.Name} (first-year rates in um/a under one law)");
        Sheets.Head(table, "Law");
        Sheets.HeadRight(table, "Predicted", "Measured", "Of highest");
        Sheets.Head(table, "Verdict");
        Sheets.HeadRight(table, "Estimate next with");
        foreach (PredictionCheck check in one.Checks)
        {
            table.AddRow(
                check.Measured.Law.Name,
                Range(check.Predicted.FirstYear),
                Rate(check.Measured.FirstYear),
                Sheets.Number(check.RatioToHighest, 2),
                Verdict(check.Verdict),
                check.Measured.FirstYearRange is { } range ? Range(range) : "no loss was found");
        }

        return table;
    }

    internal static string Years(Duration? life) => life is { } known ? Sheets.Number(known.Days / 365, 1) : "undetermined";

    private static string Range(RateRange range) => $"{Sheets.Number(range.Lowest.MicrometersPerYear, 2)} to {Sheets.Number(range.Highest.MicrometersPerYear, 2)}";

    private static string Rate(CorrosionRate? rate) => rate is { } known ? Sheets.Number(known.MicrometersPerYear, 2) : "-";

    private static string Micrometers(Length thickness) => Sheets.Number(thickness.Micrometers, 1);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Percent(Probability share) => Sheets.Number(100 * share.Fraction, 0) + " %";
}
