using System.Globalization;
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
    private const int Columns = 150;

    internal static int Write(JobEstimate estimate, TextWriter output)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);

        // Plain text of a fixed width: the same on a screen, on paper and in a file.
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(text),
        });
        console.Profile.Width = Columns;
        console.WriteLine($"{estimate.Job.Name}: {estimate.Lines.Count} lines. Rules: {estimate.Job.Rules}.");
        console.Write(LaySheet(estimate));
        console.Write(Lives(estimate));
        FindingsReport.Write(estimate, console);
        console.Write(Order(estimate));
        console.Write(Totals(estimate));
        foreach (string line in text.ToString().Split('\n'))
        {
            output.WriteLine(line.TrimEnd());
        }

        return 0;
    }

    private static Table LaySheet(JobEstimate estimate)
    {
        Table table = Sheet("Lay sheet (pipe: outside diameter in mm; m: along the pipe, or along the outside of a bend; mark: between setting marks; lap: true, across the strip, outside on bends)");
        Head(table, "Line", "Surface");
        HeadRight(table, "m");
        Head(table, "Lay", "Strip mm");
        HeadRight(table, "Angle deg", "Mark mm", "Lap mm", "Strips", "Metres");
        HeadRight(table, "Layers all", "Layers mean");
        foreach (LineEstimate line in estimate.Lines)
        {
            ILay lay = line.Line.Lay;
            (string kind, string angle, string mark, string lap) = Describe(lay);
            table.AddRow(
                line.Line.Tag,
                Surface(lay.Surface),
                Along(lay.Surface),
                kind,
                $"{Number(lay.Stock.Tape.Foil.Thickness.Millimeters, 2)} x {Number(lay.Stock.Width.Millimeters, 0)}",
                angle,
                mark,
                lap,
                Number(line.Strips.Sum(static strip => strip.Count), 0),
                Number(line.StripLength.Meters, 1),
                Number(lay.LayersEverywhere, 0),
                Number(lay.LayersOnAverage.Ratio, 2));
        }

        return table;
    }

    private static string Surface(Surface surface) => surface switch
    {
        StraightPipe pipe => $"pipe {Number(pipe.OutsideDiameter.Millimeters, 1)}",
        Bend bend => $"bend {Number(bend.Angle.Degrees, 0)} deg {Number(bend.OutsideDiameter.Millimeters, 1)}",
        _ => surface.Description,
    };

    // Of a bend, the arc along its outside: what a crew measures.
    private static string Along(Surface surface) => surface switch
    {
        StraightPipe pipe => Number(pipe.Length.Meters, 2),
        Bend bend => Number(bend.OutsideArc.Meters, 2),
        _ => string.Empty,
    };

    private static (string Kind, string Angle, string Mark, string Lap) Describe(ILay lay) => lay switch
    {
        SpiralLay spiral => (
            spiral.Ends.LevelTurnsAtEachEnd == 0 ? "spiral, flush" : $"spiral, {spiral.Ends.LevelTurnsAtEachEnd} level",
            Number(spiral.Geometry.Angle.Degrees, 1),
            Number(spiral.Geometry.Advance.Millimeters, 1),
            Number(spiral.Geometry.TrueLap.Millimeters, 1)),
        RingLay rings => (
            $"{rings.Rings} ring(s)",
            string.Empty,
            rings.Rings > 1 ? Number(rings.Stock.Width.Millimeters - rings.Lap.Millimeters, 1) : string.Empty,
            rings.Rings > 1 ? Number(rings.Lap.Millimeters, 1) : string.Empty),
        BendRingLay rings => (
            $"{rings.Rings} ring(s)",
            string.Empty,
            Number(rings.Stock.Width.Millimeters - rings.OutsideLap.Millimeters, 1),
            Number(rings.OutsideLap.Millimeters, 1)),
        AlongPipeLay along => ($"{along.StripsRound} along", string.Empty, string.Empty, Number(along.Lap.Millimeters, 1)),
        _ => (lay.Description, string.Empty, string.Empty, string.Empty),
    };

    private static Table Lives(JobEstimate estimate)
    {
        Table table = Sheet("Life of the zinc in years (earliest: least foil at the highest rate; no published life of foil on adhesive was found)");
        Head(table, "Line", "Exposure");
        HeadRight(table, "Rate um/a", "Zinc um", "Linear", "Power law", "Earliest", "Latest", "Required");
        Head(table, "Verdict");
        HeadRight(table, "Bare cm2/m2");
        foreach (LineEstimate line in estimate.Lines)
        {
            LifeEstimate life = line.Life;
            table.AddRow(
                line.Line.Tag,
                life.Exposure.Name,
                $"{Number(life.Exposure.FirstYear.Lowest.MicrometersPerYear, 1)} to {Number(life.Exposure.FirstYear.Highest.MicrometersPerYear, 1)}",
                Number(life.ZincCounted.Micrometers, 0),
                Range(life.ByLaw[0]),
                Range(life.ByLaw[1]),
                Years(life.Earliest),
                Years(life.Latest),
                Years(line.Line.RequiredLife),
                Verdict(line),
                line.Contact is { } contact ? Number(contact.Ratio.SquareCentimetersPerSquareMeter, 0) : string.Empty);
        }

        return table;
    }

    private static Table Order(JobEstimate estimate)
    {
        Table table = Sheet("To order (metres: bought = cover + lap + trim + splice + contingency + left over)");
        Head(table, "Strip mm");
        HeadRight(table, "Roll m", "Rolls", "At least", "Bought", "Cover", "Lap", "Trim", "Splice", "Contingency", "Left over", "Splices", "Zinc kg");
        foreach (StockTakeOff stock in estimate.TakeOff.Stocks)
        {
            StripLedger ledger = stock.Ledger;
            table.AddRow(
                $"{Number(stock.Stock.Tape.Foil.Thickness.Millimeters, 2)} x {Number(stock.Stock.Width.Millimeters, 0)}{(stock.Stock.Tape.ConductsAtLaps ? string.Empty : " faced")}",
                Number(stock.Stock.RollLength.Meters, 0),
                Number(stock.Rolls, 0),
                Number(stock.LeastRolls, 0),
                Number(ledger.Bought.Meters, 1),
                Number(ledger.Cover.Meters, 1),
                Number(ledger.Lap.Meters, 1),
                Number(ledger.Trim.Meters, 1),
                Number(ledger.Splice.Meters, 1),
                Number(ledger.Contingency.Meters, 1),
                Number(ledger.Offcut.Meters, 1),
                Number(stock.Splices, 0),
                Number(stock.ZincBought.Kilograms, 1));
        }

        return table;
    }

    private static Table Totals(JobEstimate estimate)
    {
        Table table = Sheet("Totals");
        Head(table, "What");
        HeadRight(table, "Number");
        table.AddRow("Steel covered, m2", Number(estimate.Covered.SquareMeters, 1));
        table.AddRow("Strip laid and trimmed, m", Number(estimate.StripLength.Meters, 1));
        table.AddRow("Rolls", Number(estimate.TakeOff.Stocks.Sum(static stock => stock.Rolls), 0));
        table.AddRow("Zinc bought, kg", Number(estimate.TakeOff.ZincBought.Kilograms, 1));
        table.AddRow("Zinc on the steel, kg", Number(estimate.TakeOff.ZincLaid.Kilograms, 1));
        table.AddRow("Of the strip, m on lines that stop", Number(Stopped(estimate).Sum(static line => line.StripLength.Meters), 1));
        table.AddRow("Lines that stop", Number(Stopped(estimate).Count(), 0));
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

    private static string Range(LawLife life) => $"{Years(life.Earliest)} to {Years(life.Latest)}";

    // Past two centuries the figure is arithmetic, not a forecast; --json has it all the same.
    private static string Years(Lifetime life) => life switch
    {
        { IsUnlimited: true } => "unlimited",
        { Duration.Days: > 200 * 365 } => "over 200",
        _ => Number(life.Duration.Days / 365, 1),
    };

    private static Table Sheet(string title) => new Table { Title = new TableTitle("\n" + title), Border = TableBorder.Ascii2 };

    private static void Head(Table table, params string[] names)
    {
        foreach (string name in names)
        {
            table.AddColumn(new TableColumn(name) { NoWrap = true, Padding = new Padding(0, 0, 1, 0) });
        }
    }

    private static void HeadRight(Table table, params string[] names)
    {
        foreach (string name in names)
        {
            table.AddColumn(new TableColumn(name) { Alignment = Justify.Right, NoWrap = true, Padding = new Padding(0, 0, 1, 0) });
        }
    }

    private static string Number(double number, int decimals) =>
        number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
