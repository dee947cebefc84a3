using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>Tape that is up and was inspected: inspections.csv, if the folder has it, with readings.csv and defects.csv.</summary>
internal static class InspectionSheet
{
    internal const string File = "inspections.csv";

    private static readonly string[] Columns =
    [
        "name", "laid", "stock", "covered_m2", "exposure", "margin_mm", "step_mm", "lap_mm",
        "currency", "once", "per_patch", "per_m2", "rewrapping", "discount_percent",
    ];

    private static readonly string[] Optional = ["layers", "usable", "outliers", "significance", "confidence", "coverage", "zone_m2"];

    private static readonly string[] Amounts = ["once", "per_patch", "per_m2", "rewrapping"];

    private static readonly Dictionary<string, bool> Outliers = new() { ["keep"] = false, ["leave out"] = true };

    internal static IReadOnlyList<TankInspection> Read(
        string folder,
        IReadOnlyDictionary<string, StripStock> stock,
        IReadOnlyDictionary<string, SurveyExposure> exposures,
        TakeOffChoices takeOff,
        List<SurveyFault> faults)
    {
        if (!System.IO.File.Exists(Path.Combine(folder, File)) || CsvTable.Read(folder, File, Columns, Optional, faults) is not { } table)
        {
            return [];
        }

        var terms = new Dictionary<string, (CsvRow Row, InspectionTerms? Terms)>(StringComparer.Ordinal);
        foreach (CsvRow row in table.Rows)
        {
            string name = row.Text("name");
            if (!terms.TryAdd(name, (row, Terms(row, name, stock, exposures, takeOff))))
            {
                row.Fault("name", $"'{name}' stands twice.");
            }
        }

        ReadingSheet readings = ReadingSheet.Read(folder, terms, faults);
        DefectSheet defects = DefectSheet.Read(folder, terms, faults);
        var read = new List<TankInspection>();
        foreach ((string name, (CsvRow row, InspectionTerms? one)) in terms)
        {
            // Faults of a file keep what leans on it from being worked out, so that one slip is not told twice.
            if (one is null || faults.Count > 0 || readings.CampaignsOf(name, row) is not { } campaigns)
            {
                continue;
            }

            TankInspection? whole = row.Try(
                "name",
                () => new TankInspection(one, campaigns, readings.ThinnestOf(name, campaigns[^1].Day), defects.Of(name)),
                ("margin", "margin_mm"),
                ("step", "step_mm"),
                ("lap", "lap_mm"),
                ("covered", "covered_m2"));
            if (whole is not null)
            {
                read.Add(whole);
            }
        }

        return read;
    }

    private static InspectionTerms? Terms(
        CsvRow row, string name, IReadOnlyDictionary<string, StripStock> stock, IReadOnlyDictionary<string, SurveyExposure> exposures, TakeOffChoices takeOff)
    {
        DateOnly laid = row.Day("laid");
        StripStock? strip = row.Choice("stock", stock);
        double covered = MoreThanNothing(row, "covered_m2", row.Number("covered_m2"));
        int layers = row.WholeOr("layers", 1);
        if (layers < 1)
        {
            row.Fault("layers", "At least one layer was laid.");
        }

        ZincExposure? predicted = Exposure(row, exposures);
        double usable = Inside(row, "usable", RuleSet.Default[RuleIds.UsableFraction].Limit!.Value.Number, 1);
        bool leave = row.Choice("outliers", Outliers, "keep");
        double significance = Inside(row, "significance", 0.05, 0.2);
        double confidence = Inside(row, "confidence", 0.95, 0.999999);
        double coverage = Inside(row, "coverage", 0.9, 0.999999);
        double? zone = row.OptionalNumber("zone_m2") is { } stated ? MoreThanNothing(row, "zone_m2", stated) : null;
        RepairTerms? repair = Repair(row);
        return row.Faulty ? null : new InspectionTerms(
            name,
            laid,
            strip!,
            Area.FromSquareMeters(covered),
            layers,
            predicted!,
            Utilisation.FromFraction(usable),
            leave,
            Probability.FromFraction(significance),
            Probability.FromFraction(confidence),
            Probability.FromFraction(coverage),
            zone is { } m2 ? Area.FromSquareMeters(m2) : null,
            takeOff,
            repair!);
    }

    private static ZincExposure? Exposure(CsvRow row, IReadOnlyDictionary<string, SurveyExposure> exposures)
    {
        var known = LineReader.Exposures.Where(static one => one.Value is not null)
            .ToDictionary(static one => one.Key, static one => ZincExposure.FromCategory(one.Value!.Value));
        foreach ((string name, SurveyExposure exposure) in exposures)
        {
            known[name] = exposure.Zinc;
        }

        return row.Choice("exposure", known);
    }

    private static RepairTerms? Repair(CsvRow row)
    {
        double margin = row.Number("margin_mm");
        double step = row.Number("step_mm");
        double lap = row.Number("lap_mm");
        string currency = row.Text("currency");
        double discount = row.Number("discount_percent");
        decimal[] amounts = [.. Amounts.Select(column => Amount(row, column))];
        return row.Faulty ? null : row.Try(
            "currency",
            () => new RepairTerms(
                Length.FromMillimeters(margin),
                Length.FromMillimeters(step),
                Length.FromMillimeters(lap),
                new RepairPrices(new Money(amounts[0], currency), new Money(amounts[1], currency), new Money(amounts[2], currency)),
                new Money(amounts[3], currency),
                DiscountRate.FromFractionPerYear(discount / 100)),
            ("value", "discount_percent"));
    }

    private static decimal Amount(CsvRow row, string column)
    {
        double amount = row.Number(column);
        if (amount is < 0 or > 1e12)
        {
            row.Fault(column, FormattableString.Invariant($"{amount} is not an amount from 0 to 1e12."));
            return 0;
        }

        return (decimal)amount;
    }

    private static double MoreThanNothing(CsvRow row, string column, double squareMetres)
    {
        if (!row.Faulty && squareMetres <= 0)
        {
            row.Fault(column, FormattableString.Invariant($"{squareMetres} m2 is not more than 0 m2."));
        }

        return squareMetres;
    }

    private static double Inside(CsvRow row, string column, double otherwise, double most)
    {
        double number = row.NumberOr(column, otherwise);
        if (!(number > 0 && number <= most))
        {
            row.Fault(column, FormattableString.Invariant($"{number} is not more than 0 and at most {most}; write a fraction."));
        }

        return number;
    }
}
