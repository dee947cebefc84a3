using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>Choices made from cases, at invented prices.</summary>
internal static class Choosing
{
    internal static Money Eur(decimal amount) => new(amount, "EUR");

    internal static LineNeeds Needs(ChoiceCase given, ValueList<StayClear>? spots = null) => new(
        "A-1", ZincExposure.FromCategory(given.Category), Lifetime.Of(Duration.FromYears365(given.Years)), spots: spots);

    internal static StraightPipe PipeOf(ChoiceCase given) => Pipe(given.DiameterMm, given.LengthMm);

    internal static ValueList<StripStock> StocksOf(ChoiceCase given) =>
        new(given.Stocks.Select(static one => Stock(one.WidthMm, one.RollM, one.FoilMm)).Distinct());

    internal static ValueList<ILayMaker> Makers(ChoiceCase given) =>
    [
        LayMaker.Rings(PipeOf(given)), LayMaker.AlongPipe(PipeOf(given)), LayMaker.Spiral(PipeOf(given)), LayMaker.Spiral(PipeOf(given), SpiralEnds.LevelTurns()),
    ];

    // A price by the zinc with something on top that the seed decides, so that no order of sizes is the order of prices.
    internal static CostPrices Prices(ChoiceCase given, IEnumerable<StripStock> stocks)
    {
        var random = new Random(given.Seed);
        int[] odd = [.. Enumerable.Range(0, 97).Select(_ => random.Next(1, 60))];
        return new(
            new ValueList<RollPrice>(stocks.Select(stock => new RollPrice(
                stock,
                Eur(odd[(int)(stock.Width.Millimeters + (stock.RollLength.Meters * 3) + (stock.Tape.Foil.Thickness.Micrometers / 5)) % 97]
                    + (decimal)Math.Round(stock.Width.Meters * stock.RollLength.Meters * stock.Tape.Foil.Thickness.Micrometers / 10, 2))))),
            new LabourRate(Eur(45)),
            [
                new LabourNorm(new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe"), LabourMeasure.Pieces, Duration.FromMinutes(3)),
                new LabourNorm(new LabourKind(StripPurpose.AlongPipe, ApplicationMethod.ByHand, "pipe"), LabourMeasure.StripLength, Duration.FromMinutes(0.7)),
                new LabourNorm(new LabourKind(StripPurpose.Spiral, ApplicationMethod.ByHand, "pipe"), LabourMeasure.StripLength, Duration.FromMinutes(0.5)),
                new LabourNorm(new LabourKind(StripPurpose.Spiral, ApplicationMethod.ByHand, "pipe"), LabourMeasure.Area, Duration.FromMinutes(12)),
            ],
            access: [AccessItem.Lump("ladder", Eur(20))],
            consumables: [new Consumable("solvent", Eur(1.5m))],
            waste: new WasteDisposal(Eur(0.9m)));
    }

    internal static ChoiceOptions Options(ChoiceCase given, RollCounting rolls = RollCounting.Whole, RuleSet? rules = null, IEnumerable<StripStock>? stocks = null) => new(
        new ValueList<StripStock>(stocks ?? StocksOf(given)),
        new ValueList<Length>(given.LapsMm.Select(Mm)),
        [1, 2],
        Makers(given),
        Prices(given, stocks ?? StocksOf(given)),
        Make.TakeOff(),
        Choices(2),
        rolls,
        rules: rules);

    internal static TapeChoice Choice(ChoiceCase given, RollCounting rolls = RollCounting.Whole, RuleSet? rules = null, IEnumerable<StripStock>? stocks = null) =>
        TapeChoice.Among(Needs(given), Options(given, rolls, rules, stocks));
}
