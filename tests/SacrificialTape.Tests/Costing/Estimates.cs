using FsCheck.Xunit;
using static SacrificialTape.Tests.Costing.PricedJob;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Costing;

/// <summary>An estimate is the sum of its lines, and each line is what a clerk would write.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 100)]
public sealed class Estimates
{
    [Fact]
    public void Every_line_by_hand()
    {
        CostEstimate estimate = Full();

        // 25 pieces of 1 m, ten on a roll of 10 m: 3 rolls. 2.25 m2 at 0.4 h and 25 pieces at 3 min, 45 an hour.
        Assert.Equal(Eur(3 * 80), estimate.FirstCostOf(CostKind.Rolls));
        Assert.Equal(Eur((0.9m + 1.25m) * 45), estimate.FirstCostOf(CostKind.Labour));
        Assert.Equal(Eur(300 + (1.5m * 120.5m)), estimate.FirstCostOf(CostKind.Access));
        Assert.Equal(Eur(2.25m * 1.333m), estimate.FirstCostOf(CostKind.Consumables));

        // 25 x 0.05 m of trim and 5 m left: 6.25 m of 100 x 0.1 mm zinc at 7140 kg/m3 is 0.446 25 kg.
        Assert.Equal(Eur(0.44625m * 0.9m), estimate.FirstCostOf(CostKind.Waste));
        Assert.Equal(Eur(55), estimate.FirstCostOf(CostKind.Own));
        decimal first = 240 + 96.75m + 480.75m + 2.99925m + 0.401625m + 55;
        Assert.Equal(Eur(first), estimate.FirstCost);
        Assert.Equal(Eur(first / 2.25m), estimate.FirstCostPerSquareMeter);
        Assert.Equal(["inspection"], estimate.Later.Select(static item => item.Name));
        Assert.Equal(9, estimate.Lines.Count);
    }

    [Fact]
    public void The_ledger_closes_to_the_last_cent()
    {
        CostLedger ledger = Full().ToLedger();
        Assert.Equal(8, ledger.Lines.Count);
        Assert.All(ledger.Lines, static line => Assert.Equal(line.Amount, line.Amount.Rounded(2)));
        Assert.Equal(Eur(240 + 40.5m + 56.25m + 300 + 180.75m + 3.00m + 0.40m + 55), ledger.Total);
        Assert.Equal(ledger.Total - Full().FirstCost, ledger.RoundingDifference);
        Assert.Equal(ledger.Total, Enum.GetValues<CostKind>().Aggregate(Eur(0), (sum, kind) => sum + ledger.TotalOf(kind)));
        Assert.Equal(Eur(240 + 41 + 56 + 300 + 181 + 3 + 0 + 55), Full().ToLedger(0).Total);
        Assert.EndsWith("\nTotal: 875.90 EUR", ledger.ToString(), StringComparison.Ordinal);
    }

    [Property]
    public void A_ledger_of_any_job_closes(CutCase given, ushort price, byte digits)
    {
        StripTakeOff takeOff = Cutting.TakeOff(given);
        StockTakeOff stock = takeOff.Stocks.Single();
        CostPrices prices = new(
            [new RollPrice(stock.Stock, Eur(price / 1000m))],
            new LabourRate(Eur(33.333m)),
            [new LabourNorm(Rings, LabourMeasure.StripLength, Duration.FromHours(0.0123))],
            consumables: [new Consumable("solvent", Eur(0.777m))],
            waste: new WasteDisposal(Eur(-1.05m)));
        LabourWork work = new(Rings, Area.FromSquareMeters(7.7), stock.Ledger.Cover, 3);
        CostEstimate estimate = new(takeOff, Area.FromSquareMeters(7.7), [work], prices);
        CostLedger ledger = estimate.ToLedger(digits % 5);
        Assert.Equal(ledger.Total.Amount, ledger.Lines.Sum(static line => line.Amount.Amount));
        Assert.Equal(estimate.FirstCost.Amount, estimate.Lines.Sum(static line => line.Amount.Amount));
        decimal half = 0.5m * (decimal)Math.Pow(10, -(digits % 5));
        Assert.True(Math.Abs(ledger.RoundingDifference.Amount) <= ledger.Lines.Count * half);
        Assert.Equal(Eur(stock.Rolls * (price / 1000m)), estimate.FirstCostOf(CostKind.Rolls));
        Near.Equal((stock.Ledger.Trim.Meters + stock.Ledger.Offcut.Meters) * 0.1 * 0.0001 * 7140 * -1.05, (double)estimate.FirstCostOf(CostKind.Waste).Amount, 1e-12);
    }

    [Property]
    public void Costs_scale_with_prices_and_the_order_of_items_does_not_matter(ushort one, ushort two, byte factor)
    {
        CostItem a = new("a", Eur(one / 100m), CostTiming.AtStart);
        CostItem b = new("b", Eur(two / 100m), CostTiming.AtStart);
        Money first = Estimate(Prices(own: [a, b])).FirstCost;
        Assert.Equal(first, Estimate(Prices(own: [b, a])).FirstCost);
        Assert.Equal(first, Estimate(Prices()).FirstCost + a.Amount + b.Amount);
        Assert.Equal(Estimate(Prices()).FirstCost * factor, Estimate(Prices(80m * factor, 45m * factor)).FirstCost);
    }

    [Fact]
    public void The_work_of_a_lay_is_its_area_strip_and_pieces()
    {
        var lay = new RingLay(Pipe(200, 1000), Stock(), Mm(10), Choices());
        LabourWork work = LabourWork.Of(lay, Rings);
        Near.Equal(Math.PI * 0.2, work.Area.SquareMeters, 1e-12);
        Assert.Equal(lay.Strips.Sum(static strip => strip.Count), work.Pieces);
        Near.Equal(lay.Strips.Sum(static strip => strip.TotalLength.Meters), work.StripLength.Meters, 1e-12);
    }

    [Fact]
    public void A_host_adds_its_own_kind_of_cost()
    {
        CostEstimate estimate = Estimate(Prices(own: [new Crane(3)]));
        Assert.Equal(Eur(1500), estimate.FirstCostOf(CostKind.Own));
    }

    [Fact]
    public void Nothing_is_guessed()
    {
        Said<ArgumentException>("No price is given for a roll of 0.1 x 100 mm, rolls of 10 m", static () => Estimate(new CostPrices(
            [new RollPrice(Stock(50, 10), Eur(1))], new LabourRate(Eur(1)), [new LabourNorm(Rings, LabourMeasure.Area, Duration.Zero)])));
        Said<ArgumentException>("No norm says how long this work takes: ring, by hand, pipe", static () => Estimate(Prices(norms:
            [new LabourNorm(new LabourKind(StripPurpose.Ring, ApplicationMethod.WrappingHead, "pipe"), LabourMeasure.Area, Duration.Zero)])));
        Said<ArgumentException>("Priced twice: 0.1 x 100 mm", static () => new CostPrices(
            [new RollPrice(Stock(100, 10), Eur(1)), new RollPrice(Stock(100, 10), Eur(2))], new LabourRate(Eur(1)), []));
        LabourNorm norm = new(Rings, LabourMeasure.Area, Duration.FromHours(1));
        Said<ArgumentException>("Priced twice: ring, by hand, pipe: 2 h per m2", () => Prices(norms: [norm, new LabourNorm(Rings, LabourMeasure.Area, Duration.FromHours(2))]));
    }

    [Fact]
    public void Currencies_mixed_anywhere_are_refused_by_name()
    {
        Money yen = new(1, "JPY");
        foreach (Func<object> mixed in new Func<object>[]
        {
            () => new CostPrices([new RollPrice(Stock(), yen)], new LabourRate(Eur(1)), []),
            () => Prices(access: [AccessItem.Lump("rope", yen)]),
            () => Prices(consumables: [new Consumable("solvent", yen)]),
            () => Prices(waste: new WasteDisposal(yen)),
            () => Prices(own: [new CostItem("permit", yen, CostTiming.AtStart)]),
        })
        {
            Said<ArgumentException>("EUR and JPY cannot be mixed", mixed);
        }
    }

    [Fact]
    public void Bad_prices_are_refused()
    {
        Errors.Refused(static () => new RollPrice(Stock(), Eur(-1)), "perRoll", "-1 EUR", "at least 0 EUR");
        Errors.Refused(static () => new LabourRate(Eur(-0.01m)), "perHour", "-0.01 EUR");
        Errors.Refused(static () => new Consumable("solvent", Eur(-2)), "perSquareMeter", "-2 EUR");
        Errors.Refused(static () => AccessItem.Lump("rope", Eur(-2)), "price", "-2 EUR");
        Errors.Refused(static () => AccessItem.PerDay("rope", Eur(2), 0), "days", "0 days", "more than 0 days");
        Errors.Refused(static () => AccessItem.PerDay("rope", Eur(2), double.NaN), "days", "not a finite number");
        Errors.Refused(static () => new LabourNorm(Rings, LabourMeasure.Area, Duration.FromHours(-1)), "timePerUnit", "-1 h", "at least 0 h");
        Errors.Refused(static () => new LabourNorm(Rings, (LabourMeasure)9, Duration.Zero), "measure", "Not a measure");
        Errors.Refused(static () => new LabourKind((StripPurpose)99, ApplicationMethod.ByHand, "pipe"), "lay", "Not a kind of lay");
        Errors.Refused(static () => new LabourKind(StripPurpose.Ring, (ApplicationMethod)99, "pipe"), "method", "Not a method");
        Errors.Refused(static () => Work(-1), "area", "-1 m2");
        Errors.Refused(static () => Work(1, -1), "pieces");
        Errors.Refused(static () => new CostEstimate(PricedJob.TakeOff(), Area.Zero, [Work()], Prices()), "area", "0 m2", "more than 0 m2");
        Errors.Refused(static () => CostTiming.After(Duration.Zero), "time", "0 a", "more than 0");
        Errors.Refused(static () => CostTiming.Every(Duration.FromHours(1), true), "interval", "at least 0.01");
        Assert.Throws<InvalidOperationException>(static () => new CostItem("a", default, CostTiming.AtStart));
        Assert.Throws<InvalidOperationException>(static () => new WasteDisposal(default));
        Assert.Throws<InvalidOperationException>(static () => new LabourRate(default));
        Assert.Throws<ArgumentException>(static () => new Consumable(" ", Eur(1)));
    }

    private static void Said<T>(string text, Func<object> make)
        where T : Exception => Assert.Contains(text, Assert.Throws<T>(() => { _ = make(); }).Message, StringComparison.Ordinal);

    private sealed class Crane(int days) : ICostItem
    {
        public string Name => "crane";

        public Money Amount => new(500 * days, "EUR");

        public CostTiming Timing => CostTiming.AtStart;
    }
}
