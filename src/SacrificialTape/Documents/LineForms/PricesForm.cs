using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>How the user's prices and norms are read and written. Amounts are text with their currency, to the last digit.</summary>
internal static class PricesForm
{
    internal static CostPrices? Read(FormReader reader)
    {
        ValueList<RollPrice> rolls = reader.List("rolls", ReadRoll);
        Money labour = MoneyText.Read(reader, "labourPerHour");
        ValueList<LabourNorm> norms = reader.List("norms", LabourNormForm.Read);
        ValueList<AccessItem> access = reader.List("access", AccessItemForm.Read);
        ValueList<Consumable> consumables = reader.List("consumables", ReadConsumable);
        Money? waste = reader.Has("wastePerKilogram") ? MoneyText.Read(reader, "wastePerKilogram") : null;
        ValueList<ICostItem> own = reader.List("own", reader.Context.Forms.CostItems.Read);
        return reader.Make(() => new CostPrices(
            rolls, new LabourRate(labour), norms, access, consumables, waste is { } perKilogram ? new WasteDisposal(perKilogram) : null, own));
    }

    internal static void Write(FormWriter writer, CostPrices prices)
    {
        writer.List("rolls", prices.Rolls, WriteRoll);
        MoneyText.Write(writer, "labourPerHour", prices.Labour.PerHour);
        writer.List("norms", prices.Norms, LabourNormForm.Write);
        writer.List("access", prices.Access, AccessItemForm.Write);
        writer.List("consumables", prices.Consumables, WriteConsumable);
        if (prices.Waste is { } waste)
        {
            MoneyText.Write(writer, "wastePerKilogram", waste.PerKilogram);
        }

        writer.List("own", prices.Own, writer.Context.Forms.CostItems.Write);
    }

    private static RollPrice? ReadRoll(FormReader reader)
    {
        StripStock stock = reader.Stock("stock");
        Money perRoll = MoneyText.Read(reader, "perRoll");
        return reader.Make(() => new RollPrice(stock, perRoll));
    }

    private static void WriteRoll(FormWriter writer, RollPrice price)
    {
        writer.Stock("stock", price.Stock);
        MoneyText.Write(writer, "perRoll", price.PerRoll);
    }

    private static Consumable? ReadConsumable(FormReader reader)
    {
        string name = reader.Text("name");
        Money price = MoneyText.Read(reader, "perSquareMeter");
        return reader.Make(() => new Consumable(name, price));
    }

    private static void WriteConsumable(FormWriter writer, Consumable consumable)
    {
        writer.Text("name", consumable.Name);
        MoneyText.Write(writer, "perSquareMeter", consumable.PerSquareMeter);
    }
}
