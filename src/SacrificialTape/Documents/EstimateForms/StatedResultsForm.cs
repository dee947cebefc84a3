using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How the results of an estimate are read and written.</summary>
internal static class StatedResultsForm
{
    internal static StatedResults? Read(FormReader reader)
    {
        StatedTotals totals = reader.Object("totals", ReadTotals);
        ValueList<StatedLine> lines = reader.List("lines", ReadLine);
        ValueList<StatedStock> stocks = reader.List("stocks", ReadStock);
        ValueList<StatedFinding> findings = reader.List("findings", ReadFinding);
        Money? cost = reader.Has("firstCost") ? MoneyText.Read(reader, "firstCost") : null;
        return reader.Make(() => new StatedResults(totals, lines, stocks, findings, cost));
    }

    internal static void Write(FormWriter writer, StatedResults results)
    {
        writer.Object("totals", results.Totals, WriteTotals);
        writer.List("lines", results.Lines, WriteLine);
        writer.List("stocks", results.Stocks, WriteStock);
        writer.List("findings", results.Findings, WriteFinding);
        if (results.FirstCost is { } cost)
        {
            MoneyText.Write(writer, "firstCost", cost);
        }
    }

    private static StatedTotals? ReadTotals(FormReader reader)
    {
        Measure covered = reader.Measure("covered", TradeUnit.SquareMeter);
        Measure leftClear = reader.Measure("leftClear", TradeUnit.SquareMeter);
        Measure strip = reader.Measure("strip", TradeUnit.Millimeter);
        int rolls = reader.Count("rolls");
        Measure zincBought = reader.Measure("zincBought", TradeUnit.Kilogram);
        Measure zincLaid = reader.Measure("zincLaid", TradeUnit.Kilogram);
        return reader.Make(() => new StatedTotals(covered, leftClear, strip, rolls, zincBought, zincLaid));
    }

    private static void WriteTotals(FormWriter writer, StatedTotals totals)
    {
        writer.Measure("covered", totals.Covered);
        writer.Measure("leftClear", totals.LeftClear);
        writer.Measure("strip", totals.StripLength);
        writer.Count("rolls", totals.Rolls);
        writer.Measure("zincBought", totals.ZincBought);
        writer.Measure("zincLaid", totals.ZincLaid);
    }

    private static StatedLine? ReadLine(FormReader reader)
    {
        string tag = reader.Text("tag");
        Measure covered = reader.Measure("covered", TradeUnit.SquareMeter);
        Measure leftClear = reader.Measure("leftClear", TradeUnit.SquareMeter);
        Measure strip = reader.Measure("strip", TradeUnit.Millimeter);
        Lifetime earliest = LifetimeText.Read(reader, "earliest");
        Lifetime latest = LifetimeText.Read(reader, "latest");
        bool holds = reader.Flag("lifeHolds");
        ValueList<StatedFinding> findings = reader.List("findings", ReadFinding);
        return reader.Make(() => new StatedLine(tag, covered, leftClear, strip, earliest, latest, holds, findings));
    }

    private static void WriteLine(FormWriter writer, StatedLine line)
    {
        writer.Text("tag", line.Tag);
        writer.Measure("covered", line.Covered);
        writer.Measure("leftClear", line.LeftClear);
        writer.Measure("strip", line.StripLength);
        LifetimeText.Write(writer, "earliest", line.Earliest);
        LifetimeText.Write(writer, "latest", line.Latest);
        writer.Flag("lifeHolds", line.LifeHolds);
        writer.List("findings", line.Findings, WriteFinding);
    }

    private static StatedStock? ReadStock(FormReader reader)
    {
        string name = reader.Text("name");
        int rolls = reader.Count("rolls");
        int least = reader.Count("leastRolls");
        int splices = reader.Count("splices");
        Measure bought = reader.Measure("bought", TradeUnit.Millimeter);
        Measure zincBought = reader.Measure("zincBought", TradeUnit.Kilogram);
        Measure zincLaid = reader.Measure("zincLaid", TradeUnit.Kilogram);
        return reader.Make(() => new StatedStock(name, rolls, least, splices, bought, zincBought, zincLaid));
    }

    private static void WriteStock(FormWriter writer, StatedStock stock)
    {
        writer.Text("name", stock.Name);
        writer.Count("rolls", stock.Rolls);
        writer.Count("leastRolls", stock.LeastRolls);
        writer.Count("splices", stock.Splices);
        writer.Measure("bought", stock.Bought);
        writer.Measure("zincBought", stock.ZincBought);
        writer.Measure("zincLaid", stock.ZincLaid);
    }

    private static StatedFinding? ReadFinding(FormReader reader)
    {
        string rule = reader.Text("rule");
        Severity severity = reader.Word("severity", Words.Severities);
        string subject = reader.Text("subject");
        Measure? measured = reader.Members.OptionalMeasure("measured");
        Measure? limit = reader.Members.OptionalMeasure("limit");
        string message = reader.Text("message");
        return reader.Make(() => new StatedFinding(rule, severity, subject, measured, limit, message));
    }

    private static void WriteFinding(FormWriter writer, StatedFinding finding)
    {
        writer.Text("rule", finding.RuleId);
        writer.Word("severity", finding.Severity, Words.Severities);
        writer.Text("subject", finding.Subject);
        writer.Raw(json =>
        {
            if (finding.Measured is { } measured)
            {
                json.Measure("measured", measured);
            }

            if (finding.Limit is { } limit)
            {
                json.Measure("limit", limit);
            }
        });
        writer.Text("message", finding.Message);
    }
}
