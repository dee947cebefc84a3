using SacrificialTape.Exposure;

namespace SacrificialTape.Documents;

/// <summary>The exposures that the library itself names: the document keeps the name, and the library its rates.</summary>
internal static class NamedExposures
{
    internal static IReadOnlyList<(string Kind, string Name, ZincExposure Exposure)> All { get; } =
    [
        .. JobWords.Categories.Select(static pair => ("category", pair.Word, ZincExposure.FromCategory(pair.Value))),
        .. Enum.GetValues<IndoorCategory>().Select(static one => ("indoor category", one.ToString(), ZincExposure.From(FirstYearRate.Indoors(Metal.Zinc, one)))),
        .. Places.Select(static pair => ("indoor place", pair.Word, ZincExposure.From(FirstYearRate.Indoors(Metal.Zinc, pair.Place)))),
        .. Waters.Select(static pair => ("water", pair.Word, ZincExposure.From(FirstYearRate.OfZincIn(pair.Water)))),
        ("soil", "reinforced fill", ZincExposure.From(FirstYearRate.InReinforcedSoil(Metal.Zinc))),
        ("soil", "power law", ZincExposure.From(FirstYearRate.InSoilByPowerLaw(Metal.Zinc))),
    ];

    internal static IReadOnlyList<string> Kinds { get; } = [.. All.Select(static one => one.Kind).Distinct()];

    private static (string Word, IndoorPlace Place)[] Places =>
    [
        ("heated and clean", IndoorPlace.HeatedAndClean), ("unheated with condensation", IndoorPlace.UnheatedWithCondensation),
        ("humid production", IndoorPlace.HumidProduction), ("pool or chemical plant", IndoorPlace.PoolOrChemicalPlant),
        ("always condensing and polluted", IndoorPlace.AlwaysCondensingAndPolluted),
    ];

    private static (string Word, WaterKind Water)[] Waters =>
    [
        ("sea", WaterKind.Sea), ("temperate sea", WaterKind.TemperateSea), ("hard fresh", WaterKind.HardFresh),
        ("soft fresh", WaterKind.SoftFresh), ("distilled", WaterKind.Distilled),
    ];
}
