using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Costing;

/// <summary>A small job with invented prices, with one thing changed at a time.</summary>
internal static class PricedJob
{
    internal static readonly LabourKind Rings = new(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe");

    internal static Money Eur(decimal amount) => new(amount, "EUR");

    // 25 rings of 1 m, 5 cm of each trimmed, from rolls of 10 m: 9 on a roll after the first nine and so on.
    internal static StripTakeOff TakeOff(int pieces = 25) => StripTakeOff.Of(
        [new Strip(Stock(100, 10), Mm(1000), pieces, StripPurpose.Ring, false, Mm(900), Mm(50))], Make.TakeOff(0));

    internal static LabourWork Work(double squareMeters = 2.25, long pieces = 25) =>
        new(Rings, Area.FromSquareMeters(squareMeters), Length.FromMeters(pieces), pieces);

    internal static CostPrices Prices(
        decimal roll = 80, decimal hour = 45, ValueList<LabourNorm>? norms = null, ValueList<AccessItem>? access = null,
        ValueList<Consumable>? consumables = null, WasteDisposal? waste = null, ValueList<ICostItem>? own = null) => new(
        [new RollPrice(Stock(100, 10), Eur(roll))],
        new LabourRate(Eur(hour)),
        norms ?? [new LabourNorm(Rings, LabourMeasure.Area, Duration.FromHours(0.4)), new LabourNorm(Rings, LabourMeasure.Pieces, Duration.FromMinutes(3))],
        access,
        consumables,
        waste,
        own);

    internal static CostEstimate Full() => Estimate(Prices(
        access: [AccessItem.Lump("scaffold", Eur(300)), AccessItem.PerDay("lift", Eur(120.5m), 1.5)],
        consumables: [new Consumable("solvent", Eur(1.333m))],
        waste: new WasteDisposal(Eur(0.9m)),
        own: [new CostItem("permit", Eur(55), CostTiming.AtStart), new CostItem("inspection", Eur(40), CostTiming.Yearly)]));

    internal static CostEstimate Estimate(CostPrices prices) => new(TakeOff(), Area.FromSquareMeters(2.25), [Work()], prices);
}
