using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>What the job costs, where the survey has prices.</summary>
internal static class CostReport
{
    /// <summary>The cost; null without prices. A roll without a price or work without a norm is a fault of the survey.</summary>
    internal static CostEstimate? Of(Survey? survey, JobEstimate? estimate, List<SurveyFault> faults)
    {
        if (survey?.Prices is not { } prices || estimate is null)
        {
            return null;
        }

        try
        {
            return new CostEstimate(estimate.TakeOff, estimate.Covered, survey.Work, prices);
        }
        catch (ArgumentException refused)
        {
            faults.Add(new(PriceReader.File, 0, string.Empty, CsvRow.FirstLine(refused)));
            return null;
        }
    }

    internal static Table Rows(CostEstimate cost)
    {
        CostLedger ledger = cost.ToLedger();
        Table table = Sheets.Titled($"Cost in {cost.Prices.Currency}, before tax (prices and times are the survey's own)");
        Sheets.Head(table, "What", "Item");
        Sheets.HeadRight(table, "Quantity", "Unit price", "Amount");
        foreach (CostLedgerLine line in ledger.Lines)
        {
            table.AddRow(
                line.Line.Kind.ToString(),
                line.Line.Name,
                Quantity(line.Line.Quantity),
                Amount(line.Line.UnitPrice),
                Amount(line.Amount));
        }

        table.AddRow("Total", string.Empty, string.Empty, string.Empty, Amount(ledger.Total));
        table.AddRow("For 1 m2", string.Empty, string.Empty, string.Empty, Amount(cost.FirstCostPerSquareMeter.Rounded()));
        return table;
    }

    private static string Amount(Money money) => money.Amount.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Quantity(Measure quantity) => quantity.ToString();
}
