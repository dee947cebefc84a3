using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What one lay of a choice costs at the start.</summary>
internal static class ChoiceCost
{
    internal static (Money Rolls, Money Labour, Money Waste, Money Other) Of(
        SurveyLine line, StripTakeOff takeOff, LabourKind kind, ChoiceOptions options)
    {
        CostPrices prices = options.Prices;
        Area covered = Area.FromSquareMeters(line.CoveredM2);
        double stripM = 0;
        long pieces = 0;
        foreach (Wrapping.Strip strip in line.LayStrips)
        {
            stripM += (double)strip.LengthUm * strip.Count / 1e6;
            pieces += strip.Count;
        }

        var work = new LabourWork(kind, covered, Length.FromMeters(stripM), pieces);
        var estimate = new CostEstimate(takeOff, covered, [work], prices);
        Money labour = estimate.FirstCostOf(CostKind.Labour);
        Money rolls = estimate.FirstCostOf(CostKind.Rolls);
        Money waste = estimate.FirstCostOf(CostKind.Waste);
        Money other = estimate.FirstCost - labour - rolls - waste;
        return options.RollCounting == RollCounting.Whole
            ? (rolls, labour, waste, other)
            : (UsedUp(takeOff, prices, out Money scrapped), labour, scrapped, other);
    }

    // Offcuts worth keeping go back to the store; scrap is paid and thrown away with the trim.
    private static Money UsedUp(StripTakeOff takeOff, CostPrices prices, out Money scrapped)
    {
        var rolls = new Money(0, prices.Currency);
        scrapped = rolls;
        foreach (StockTakeOff stock in takeOff.Stocks)
        {
            long scrap = stock.PlanCuts().ScrapUm;
            long used = stock.Ledger.BoughtUm - stock.Ledger.OffcutUm + scrap;
            rolls += prices.PriceOf(stock.Stock)!.PerRoll.Times((double)used / stock.Stock.RollUm);
            if (prices.Waste is { } waste)
            {
                Mass zinc = stock.Stock.ZincMass(Length.FromMicrometers(stock.Ledger.TrimUm + scrap));
                scrapped += waste.PerKilogram.Times(UnitConversions.Kilograms(zinc));
            }
        }

        return rolls;
    }
}
