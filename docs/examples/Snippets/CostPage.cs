using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/cost.md quotes. All prices, times and rates are invented.</summary>
public static class CostPage
{
    public static void Estimate()
    {
        #region estimate
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(24));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        var lay = new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        var takeOff = StripTakeOff.Of(lay.Strips, TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));

        // Invented: put in your own.
        var spiral = new LabourKind(StripPurpose.Spiral, ApplicationMethod.ByHand, "pipe");
        var prices = new CostPrices(
            rolls: [new RollPrice(stock, new Money(90, "EUR"))],
            labour: new LabourRate(new Money(50, "EUR")),
            norms: [new LabourNorm(spiral, LabourMeasure.Area, Duration.FromHours(0.5))],
            access: [AccessItem.PerDay("lift", new Money(180, "EUR"), days: 2)],
            consumables: [new Consumable("solvent", new Money(1.10m, "EUR"))],
            waste: new WasteDisposal(new Money(0.80m, "EUR")),
            own: [new CostItem("permit", new Money(75, "EUR"), CostTiming.AtStart)]);
        var cost = new CostEstimate(takeOff, pipe.Area, [LabourWork.Of(lay, spiral)], prices);
        CostLedger ledger = cost.ToLedger();
        foreach (CostKind kind in Enum.GetValues<CostKind>())
        {
            Console.WriteLine($"{kind,-12} {ledger.TotalOf(kind).Amount,8:0.00}");
        }

        Console.WriteLine($"{"Total",-12} {ledger.Total.Amount,8:0.00} {ledger.Total.Currency}, {cost.FirstCostPerSquareMeter.Rounded()} per m2");
        #endregion
    }

    public static void Factors()
    {
        #region factors
        var value = new TimeValue(DiscountRate.FromFractionPerYear(0.06), Lifetime.Of(Duration.FromYears365(10)));
        Console.WriteLine($"paid in 10 years   {value.SinglePaymentFactor:0.0000}");
        Console.WriteLine($"paid each year     {value.SeriesFactor:0.0000}");
        Console.WriteLine($"capital recovery   {value.CapitalRecoveryFactor:0.00000}");
        Console.WriteLine($"annual cost        {value.EquivalentAnnualCost(new Money(1000, "EUR")).Rounded()}");
        Console.WriteLine($"replaced for ever  {value.PresentWorthOfReplacementForEver(new Money(1000, "EUR")).Rounded()}");
        #endregion
    }

    public static void Compare()
    {
        #region compare
        static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));
        Area area = Area.FromSquareMeters(100);

        // Invented: put in your own.
        var thin = new CostOption("one layer", area, new Money(6000, "EUR"), Years(10), Years(20));
        var thick = new CostOption(
            "two layers", area, new Money(9000, "EUR"), Years(20), Years(40),
            [new CostItem("inspection", new Money(200, "EUR"), CostTiming.Every(Duration.FromYears365(5), alsoAtTheEnd: false))]);
        var comparison = new CostComparison([thin, thick], Duration.FromYears365(20), DiscountRate.FromFractionPerYear(0.06));
        Console.WriteLine(comparison);
        Console.WriteLine($"decided: {comparison.IsDecided}");
        #endregion
    }
}
