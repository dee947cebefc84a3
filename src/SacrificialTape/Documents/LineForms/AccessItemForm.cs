using SacrificialTape.Costing;

namespace SacrificialTape.Documents;

/// <summary>How what access costs is read and written: a lump, or by the day.</summary>
internal static class AccessItemForm
{
    internal static AccessItem? Read(FormReader reader)
    {
        string name = reader.Text("name");
        if (reader.Has("lump"))
        {
            Money lump = MoneyText.Read(reader, "lump");
            return reader.Make(() => AccessItem.Lump(name, lump));
        }

        Money perDay = MoneyText.Read(reader, "perDay");
        double days = reader.Number("days");
        return reader.Make(() => AccessItem.PerDay(name, perDay, days));
    }

    internal static void Write(FormWriter writer, AccessItem item)
    {
        writer.Text("name", item.Name);
        MoneyText.Write(writer, item.IsPerDay ? "perDay" : "lump", item.Price);
        if (item.IsPerDay)
        {
            writer.Number("days", item.Days);
        }
    }
}
