using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.TakeOff;

namespace SacrificialTape.Reports.Sections;

/// <summary>What to order, and where every metre of it goes.</summary>
internal static class OrderSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        yield return new HeadingBlock(2, "To order");
        yield return new TableBlock(
            $"Strip by stock, {text.Long} (bought = cover + lap + trim + splice + contingency + left over)",
            [
                new("Strip"), TableColumn.Of($"Roll {text.Long}"), TableColumn.Of("Rolls"), TableColumn.Of("At least"), TableColumn.Of("Bought"), TableColumn.Of("Cover"),
                TableColumn.Of("Lap"), TableColumn.Of("Trim"), TableColumn.Of("Splice"), TableColumn.Of("Contingency"), TableColumn.Of("Left over"), TableColumn.Of($"Zinc {text.Heavy}"),
            ],
            [.. pack.Estimate.TakeOff.Stocks.Select(stock => Row(stock, pack, text))]);
    }

    private static IReadOnlyList<string> Row(StockTakeOff stock, JobPack pack, NumberText text)
    {
        StripLedger ledger = stock.Ledger;
        return
        [
            StripText.Of(stock.Stock, pack, text),
            text.Metres(stock.Stock.RollLength),
            text.Count(stock.Rolls),
            text.Count(stock.LeastRolls),
            text.Metres(ledger.Bought),
            text.Metres(ledger.Cover),
            text.Metres(ledger.Lap),
            text.Metres(ledger.Trim),
            text.Metres(ledger.Splice),
            text.Metres(ledger.Contingency),
            text.Metres(ledger.Offcut),
            text.Mass(stock.ZincBought),
        ];
    }
}
