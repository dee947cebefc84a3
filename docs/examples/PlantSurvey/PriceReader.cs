using SacrificialTape.Costing;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>What things cost and how long work takes: prices.csv and norms.csv, which a survey may leave out.</summary>
internal static class PriceReader
{
    internal const string File = "prices.csv";

    private const string NormFile = "norms.csv";

    private static readonly Dictionary<string, string> Kinds =
        new[] { "roll", "labour", "access", "consumable", "waste", "own" }.ToDictionary(static kind => kind);

    private static readonly Dictionary<string, StripPurpose> Purposes =
        Enum.GetValues<StripPurpose>().ToDictionary(static purpose => purpose.ToString());

    private static readonly Dictionary<string, LabourMeasure> Measures = new()
    {
        ["m2"] = LabourMeasure.Area,
        ["m"] = LabourMeasure.StripLength,
        ["piece"] = LabourMeasure.Pieces,
    };

    internal static CostPrices? Read(string folder, IReadOnlyDictionary<string, StripStock> stock, List<SurveyFault> faults)
    {
        if (!System.IO.File.Exists(Path.Combine(folder, File)))
        {
            return null;
        }

        CsvTable? prices = CsvTable.Read(folder, File, ["kind", "item", "amount", "currency"], ["days"], faults);
        CsvTable? norms = CsvTable.Read(folder, NormFile, ["lay", "method", "surface", "hours", "per"], [], faults);
        if (prices is null || norms is null)
        {
            return null;
        }

        List<LabourNorm> read = [.. norms.Rows.Select(Norm).OfType<LabourNorm>()];
        var items = prices.Rows.Select(row => (Row: row, Kind: row.Choice("kind", Kinds), Price: Price(row))).ToList();
        if (faults.Count > 0)
        {
            return null;
        }

        List<T> Of<T>(string kind, Func<CsvRow, Money, T> make)
            where T : class =>
            [.. items.Where(one => one.Kind == kind).Select(one => one.Row.Try("amount", () => make(one.Row, one.Price))).OfType<T>()];

        List<LabourRate> labour = Of("labour", static (_, price) => new LabourRate(price));
        List<WasteDisposal> waste = Of("waste", static (_, price) => new WasteDisposal(price));
        List<RollPrice> rolls = Of("roll", (row, price) => row.Choice("item", stock) is { } strip ? new RollPrice(strip, price) : null!);
        List<AccessItem> access = Of("access", static (row, price) => row.OptionalNumber("days") is { } days
            ? AccessItem.PerDay(row.Text("item"), price, days)
            : AccessItem.Lump(row.Text("item"), price));
        List<Consumable> consumables = Of("consumable", static (row, price) => new Consumable(row.Text("item"), price));
        List<ICostItem> own = Of<ICostItem>("own", static (row, price) => new CostItem(row.Text("item"), price, CostTiming.AtStart));
        if (labour.Count != 1 || waste.Count > 1)
        {
            faults.Add(new(File, 1, string.Empty, "One row of labour is needed, and one of waste at most."));
        }

        return faults.Count > 0 ? null : prices.Rows[0].Try("currency", () => new CostPrices(
            rolls, labour[0], read, access, consumables, waste.FirstOrDefault(), own));
    }

    private static Money Price(CsvRow row)
    {
        double amount = row.Number("amount");
        string currency = row.Text("currency");
        Money price = default;
        _ = row.Faulty ? null : row.Try("amount", () => (object)(price = new Money((decimal)amount, currency)), ("currency", "currency"));
        return price;
    }

    private static LabourNorm? Norm(CsvRow row)
    {
        StripPurpose lay = row.Choice("lay", Purposes);
        ApplicationMethod method = row.Choice("method", LineReader.Methods);
        string surface = row.Text("surface");
        double hours = row.Number("hours");
        LabourMeasure per = row.Choice("per", Measures);
        return row.Faulty
            ? null
            : row.Try("hours", () => new LabourNorm(new LabourKind(lay, method, surface), per, Duration.FromHours(hours)));
    }
}
