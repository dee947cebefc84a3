using SacrificialTape.Costing;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;

namespace SacrificialTape.Reports.Sections;

/// <summary>What the job costs, if prices were given.</summary>
internal static class CostSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        if (pack.Options.Cost is not { } cost)
        {
            yield break;
        }

        CostLedger ledger = pack.Options.MinorDigits is { } stated ? cost.ToLedger(stated) : cost.ToLedger();
        int digits = ledger.MinorDigits;
        yield return new HeadingBlock(2, "Cost");
        yield return new TableBlock(
            $"First cost in {cost.Prices.Currency}, by the user's own prices",
            [new("Kind"), new("Item"), TableColumn.Of("Amount")],
            [
                .. ledger.Lines.Select(line => (IReadOnlyList<string>)[Word(line.Line.Kind), Item(line.Line, pack), text.Amount(line.Amount, digits)]),
                ["Total", string.Empty, text.Amount(ledger.Total, digits)],
            ]);
        yield return new ParagraphBlock($"First cost per m2: {text.Amount(cost.FirstCostPerSquareMeter, digits)}.");
    }

    private static string Item(CostLine line, JobPack pack) =>
        line.Stock is { } stock && StripText.NameOf(stock, pack) is { } name ? $"{name}: {line.Name}" : line.Name;

    private static string Word(CostKind kind) => kind switch
    {
        CostKind.Rolls => "Rolls",
        CostKind.Labour => "Labour",
        CostKind.Access => "Access",
        CostKind.Consumables => "Consumables",
        CostKind.Waste => "Waste",
        _ => "Other costs",
    };
}
