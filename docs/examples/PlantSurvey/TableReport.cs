using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Wrapping;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>The estimate as tables for a foreman and an estimator.</summary>
internal static class TableReport
{
    internal static int Write(Survey survey, JobEstimate estimate, CostEstimate? cost, TextWriter output)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        IAnsiConsole console = Sheets.Console(text);
        console.WriteLine($"{estimate.Job.Name}: {estimate.Lines.Count} lines. Rules: {estimate.Job.Rules}.");
        console.Write(LaySheet(estimate));
        if (Others(estimate).Any())
        {
            console.Write(OtherLays(estimate));
        }

        console.Write(Lives(survey, estimate));
        FindingsReport.Write(estimate, console);
        console.Write(Order(estimate));
        if (cost is not null)
        {
            console.Write(CostReport.Rows(cost));
        }

        console.Write(Totals(estimate));
        Sheets.Print(text, output);
        return 0;
    }

    private static Table LaySheet(JobEstimate estimate)
    {
        Table table = Sheets.Titled("Lay sheet (pipe: outside diameter in mm; m: along the pipe, or along the outside of a bend; mark: between setting marks; lap: true, across the strip, outside on bends)");
        Sheets.Head(table, "Line", "Surface");
        Sheets.HeadRight(table, "m");
        Sheets.Head(table, "Lay", "Strip mm");
        Sheets.HeadRight(table, "Angle deg", "Mark mm", "Lap mm", "Strips", "Metres");
        Sheets.HeadRight(table, "Layers all", "Layers mean");
        foreach (LineEstimate line in estimate.Lines.Where(IsPipe))
        {
            ILay lay = line.Line.Lay;
            (string kind, string angle, string mark, string lap) = Describe(lay);
            table.AddRow(
                line.Line.Tag,
                Surface(lay.Surface),
                Along(lay.Surface),
                kind,
                $"{Sheets.Number(lay.Stock.Tape.Foil.Thickness.Millimeters, 2)} x {Sheets.Number(lay.Stock.Width.Millimeters, 0)}",
                angle,
                mark,
                lap,
                Sheets.Number(line.Strips.Sum(static strip => strip.Count), 0),
                Sheets.Number(line.StripLength.Meters, 1),
                Sheets.Number(lay.LayersEverywhere, 0),
                Sheets.Number(lay.LayersOnAverage.Ratio, 2));
        }

        return table;
    }

    private static string Surface(Surface surface) => surface switch
    {
        StraightPipe pipe => $"pipe {Sheets.Number(pipe.OutsideDiameter.Millimeters, 1)}",
        Bend bend => $"bend {Sheets.Number(bend.Angle.Degrees, 0)} deg {Sheets.Number(bend.OutsideDiameter.Millimeters, 1)}",
        _ => surface.Description,
    };

    // Of a bend, the arc along its outside: what a crew measures.
    private static string Along(Surface surface) => surface switch
    {
        StraightPipe pipe => Sheets.Number(pipe.Length.Meters, 2),
        Bend bend => Sheets.Number(bend.OutsideArc.Meters, 2),
        _ => string.Empty,
    };

    private static (string Kind, string Angle, string Mark, string Lap) Describe(ILay lay) => lay switch
    {
        SpiralLay spiral => (
            spiral.Ends.LevelTurnsAtEachEnd == 0 ? "spiral, flush" : $"spiral, {spiral.Ends.LevelTurnsAtEachEnd} level",
            Sheets.Number(spiral.Geometry.Angle.Degrees, 1),
            Sheets.Number(spiral.Geometry.Advance.Millimeters, 1),
            Sheets.Number(spiral.Geometry.TrueLap.Millimeters, 1)),
        RingLay rings => (
            $"{rings.Rings} ring(s)",
            string.Empty,
            rings.Rings > 1 ? Sheets.Number(rings.Stock.Width.Millimeters - rings.Lap.Millimeters, 1) : string.Empty,
            rings.Rings > 1 ? Sheets.Number(rings.Lap.Millimeters, 1) : string.Empty),
        BendRingLay rings => (
            $"{rings.Rings} ring(s)",
            string.Empty,
            Sheets.Number(rings.Stock.Width.Millimeters - rings.OutsideLap.Millimeters, 1),
            Sheets.Number(rings.OutsideLap.Millimeters, 1)),
        AlongPipeLay along => ($"{along.StripsRound} along", string.Empty, string.Empty, Sheets.Number(along.Lap.Millimeters, 1)),
        _ => (lay.Description, string.Empty, string.Empty, string.Empty),
    };

    // Every other shape says in words what is laid how.
    private static Table OtherLays(JobEstimate estimate)
    {
        Table table = Sheets.Titled("Lay sheet of the other shapes (dimensions in mm)");
        Sheets.Head(table, "Line");
        Sheets.HeadWrapped(table, "Surface");
        Sheets.HeadRight(table, "m2");
        Sheets.HeadWrapped(table, "Lay");
        Sheets.Head(table, "Strip mm");
        Sheets.HeadRight(table, "Strips", "Metres", "Layers all", "mean");
        foreach (LineEstimate line in Others(estimate))
        {
            ILay lay = line.Line.Lay;
            table.AddRow(
                line.Line.Tag,
                lay.Surface.Description,
                Sheets.Number(lay.Surface.Area.SquareMeters, 2),
                lay.Description,
                $"{Sheets.Number(lay.Stock.Tape.Foil.Thickness.Millimeters, 2)} x {Sheets.Number(lay.Stock.Width.Millimeters, 0)}",
                Sheets.Number(line.Strips.Sum(static strip => strip.Count), 0),
                Sheets.Number(line.StripLength.Meters, 1),
                Sheets.Number(lay.LayersEverywhere, 0),
                Sheets.Number(lay.LayersOnAverage.Ratio, 2));
        }

        return table;
    }

    private static IEnumerable<LineEstimate> Others(JobEstimate estimate) => estimate.Lines.Where(static line => !IsPipe(line));

    private static bool IsPipe(LineEstimate line) => line.Line.Lay.Surface is StraightPipe or Bend;

    private static Table Lives(Survey survey, JobEstimate estimate)
    {
        Table table = Sheets.Titled("Life of the zinc in years (earliest: least foil at the highest rate; no published life of foil on adhesive was found)");
        Sheets.Head(table, "Line");
        Sheets.HeadWrapped(table, "Exposure");
        Sheets.HeadRight(table, "Rate um/a", "Zinc um", "Linear", "Other law", "Earliest", "Latest", "Required");
        Sheets.HeadWrapped(table, "Verdict");
        Sheets.HeadRight(table, "Bare cm2/m2");
        foreach (LineEstimate line in estimate.Lines)
        {
            LifeEstimate life = line.Life;
            table.AddRow(
                line.Line.Tag,
                survey.Notes[line.Line.Tag].Exposure?.Name ?? life.Exposure.Name,
                $"{Sheets.Number(life.Exposure.FirstYear.Lowest.MicrometersPerYear, 1)} to {Sheets.Number(life.Exposure.FirstYear.Highest.MicrometersPerYear, 1)}",
                Sheets.Number(life.ZincCounted.Micrometers, 0),
                Range(life.ByLaw.FirstOrDefault(static one => one.Law is LinearLoss)),
                Range(life.ByLaw.FirstOrDefault(static one => one.Law is not LinearLoss)),
                Years(life.Earliest),
                Years(life.Latest),
                Years(line.Line.RequiredLife),
                Verdict(line),
                line.Contact is { } contact ? Sheets.Number(contact.Ratio.SquareCentimetersPerSquareMeter, 0) : string.Empty);
        }

        return table;
    }

    private static Table Order(JobEstimate estimate)
    {
        Table table = Sheets.Titled("To order (metres: bought = cover + lap + trim + splice + contingency + left over)");
        Sheets.Head(table, "Strip mm");
        Sheets.HeadRight(table, "Roll m", "Rolls", "At least", "Bought", "Cover", "Lap", "Trim", "Splice", "Contingency", "Left over", "Splices", "Zinc kg");
        foreach (StockTakeOff stock in estimate.TakeOff.Stocks)
        {
            StripLedger ledger = stock.Ledger;
            table.AddRow(
                $"{Sheets.Number(stock.Stock.Tape.Foil.Thickness.Millimeters, 2)} x {Sheets.Number(stock.Stock.Width.Millimeters, 0)}{(stock.Stock.Tape.ConductsAtLaps ? string.Empty : " faced")}",
                Sheets.Number(stock.Stock.RollLength.Meters, 0),
                Sheets.Number(stock.Rolls, 0),
                Sheets.Number(stock.LeastRolls, 0),
                Sheets.Number(ledger.Bought.Meters, 1),
                Sheets.Number(ledger.Cover.Meters, 1),
                Sheets.Number(ledger.Lap.Meters, 1),
                Sheets.Number(ledger.Trim.Meters, 1),
                Sheets.Number(ledger.Splice.Meters, 1),
                Sheets.Number(ledger.Contingency.Meters, 1),
                Sheets.Number(ledger.Offcut.Meters, 1),
                Sheets.Number(stock.Splices, 0),
                Sheets.Number(stock.ZincBought.Kilograms, 1));
        }

        return table;
    }

    private static Table Totals(JobEstimate estimate)
    {
        Table table = Sheets.Titled("Totals");
        Sheets.Head(table, "What");
        Sheets.HeadRight(table, "Number");
        table.AddRow("Steel covered, m2", Sheets.Number(estimate.Covered.SquareMeters, 1));
        table.AddRow("Strip laid and trimmed, m", Sheets.Number(estimate.StripLength.Meters, 1));
        table.AddRow("Rolls", Sheets.Number(estimate.TakeOff.Stocks.Sum(static stock => stock.Rolls), 0));
        table.AddRow("Zinc bought, kg", Sheets.Number(estimate.TakeOff.ZincBought.Kilograms, 1));
        table.AddRow("Zinc on the steel, kg", Sheets.Number(estimate.TakeOff.ZincLaid.Kilograms, 1));
        table.AddRow("Of the strip, m on lines that stop", Sheets.Number(Stopped(estimate).Sum(static line => line.StripLength.Meters), 1));
        table.AddRow("Lines that stop", Sheets.Number(Stopped(estimate).Count(), 0));
        return table;
    }

    // They are in the order all the same: whether to leave them out is for the estimator to say.
    private static IEnumerable<LineEstimate> Stopped(JobEstimate estimate) =>
        estimate.Lines.Where(static line => line.Findings.Any(static finding => finding.Severity == Severity.Stop));

    private static string Verdict(LineEstimate line)
    {
        if (line.Findings.Any(static finding => finding.Rule.Id == RuleIds.LifeFallsShort))
        {
            return "falls short";
        }

        string verdict = line.Findings.Any(static finding => finding.Rule.Id == RuleIds.LifeMayFallShort) ? "may fall short" : "lasts";
        return line.Findings.Max(static finding => finding.Severity) switch
        {
            Severity.Stop => "STOP, see findings",
            Severity.Warning => verdict + ", see findings",
            _ => verdict,
        };
    }

    private static string Range(LawLife? life) => life is null ? "-" : $"{Years(life.Earliest)} to {Years(life.Latest)}";

    // Past two centuries the figure is arithmetic, not a forecast; --json has it all the same.
    internal static string Years(Lifetime life) => life switch
    {
        { IsUnlimited: true } => "unlimited",
        { Duration.Days: > 200 * 365 } => "over 200",
        _ => Sheets.Number(life.Duration.Days / 365, 1),
    };
}
