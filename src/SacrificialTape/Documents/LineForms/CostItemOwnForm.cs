using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a cost of the user's own is read and written.</summary>
internal static class CostItemOwnForm
{
    internal static CostItemForm Form { get; } = CostItemForm.Of<CostItem>("amount", Read, Write);

    private static CostItem? Read(FormReader reader)
    {
        string name = reader.Text("name");
        Money amount = MoneyText.Read(reader, "amount");
        string when = reader.Word("when", "at the start", "after", "every");
        double? years = when is "after" or "every" ? reader.Number("time", TradeUnit.Year) : null;
        bool notAtTheEnd = when == "every" && reader.Flag("notAtTheEnd");
        return reader.Make(() => new CostItem(name, amount, when switch
        {
            "at the start" => CostTiming.AtStart,
            "after" => CostTiming.After(Duration.FromYears365(years!.Value)),
            _ => CostTiming.Every(Duration.FromYears365(years!.Value), !notAtTheEnd),
        }));
    }

    private static void Write(FormWriter writer, CostItem item)
    {
        CostTiming timing = item.Timing;
        writer.Text("name", item.Name);
        MoneyText.Write(writer, "amount", item.Amount);
        writer.Text("when", timing.IsAtStart ? "at the start" : timing.Recurs ? "every" : "after");
        if (!timing.IsAtStart)
        {
            writer.Number("time", timing.Years, TradeUnit.Year);
            writer.Flag("notAtTheEnd", timing.Recurs && !timing.AlsoAtTheEnd);
        }
    }
}
