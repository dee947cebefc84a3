using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/galvanic.md quotes.</summary>
public static class GalvanicPage
{
    public static void Capacity()
    {
        #region capacity
        Console.WriteLine(TheoreticalCapacity.Zinc.ShowWorkings());
        foreach (PracticalCapacity capacity in PracticalCapacity.Published)
        {
            Console.WriteLine($"{capacity}  [{capacity.Basis}]");
        }
        #endregion
    }

    public static void TapeEndLife()
    {
        #region tape-end-life
        var foil = new Foil(Length.FromMicrometers(80));
        var usable = Utilisation.FromFraction(0.8);
        var end = new TapeEnd(bareMargin: Length.FromMillimeters(5), zincWidth: Length.FromMillimeters(7));
        var demand = CurrentDemand.FromSteelCorrosion(CorrosivityCategory.C3);
        var apart = new OwnCorrosionAndDemand(
            TheoreticalCapacity.Zinc, ZincExposure.FromCategory(CorrosivityCategory.C3), LinearLoss.Law);
        var life = new HolidayLife(foil, end.Feed!, demand, apart, usable);
        Console.WriteLine($"{demand}; the zinc recedes by up to {life.HighestDemandRate} for it");
        Console.WriteLine($"beside the bare steel {life}; away from it {new LifeEstimate(foil, 1, apart.Exposure, usable, [LinearLoss.Law])}");
        foreach (Finding finding in end.Judge(RuleSet.Default, "line 7, upper end"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void PowerLawRoot()
    {
        #region power-law-root
        var feed = ZincFeed.RoundHoliday(Length.FromMillimeters(20), zincDecay: Length.FromMillimeters(7));
        var demand = CurrentDemand.FromSteelCorrosion(CorrosionRate.FromMicrometersPerYear(20), "invented: steel coupons on this rack, one year");
        var apart = new OwnCorrosionAndDemand(
            TheoreticalCapacity.Zinc, ZincExposure.FromCategory(CorrosivityCategory.C3), PowerLawLoss.ZincMean);
        var life = new HolidayLife(new Foil(Length.FromMicrometers(100)), feed, demand, apart, Utilisation.FromFraction(0.8));
        Console.WriteLine(life.ShowWorkings());
        #endregion
    }

    public static void AnodeDesign()
    {
        #region anode-design
        var breakdown = new CoatingBreakdown(BreakdownConstants.CategoryThreeShallow, Duration.FromYears365(30));
        Console.WriteLine($"bare share {breakdown.Initial:0.000} at the start, {breakdown.Mean:0.000} on the mean, {breakdown.Final:0.000} at the end");
        var mean = ElectricCurrent.FromAmperes(100 * 0.10 * breakdown.Mean);
        var mass = new AnodeMass(PracticalCapacity.DnvSeawater, AnodeUtilisation.Of(AnodeShape.ShortFlushBraceletOrOther), mean, breakdown.Life);
        Console.WriteLine($"{mean.Amperes:0.00} A on the mean take {mass.Mass.Kilograms:0.0} kg");
        #endregion
    }

    public static void SoilAnodes()
    {
        #region soil-anodes
        var anode = new SoilAnode(SoilAnodeKind.MagnesiumWellCoated, 0.71, 1, ElectricResistivity.FromOhmMeters(50));
        Console.WriteLine(anode);
        Console.WriteLine($"for 726 mA: {anode.Number(ElectricCurrent.FromMilliamperes(726))} anodes");
        #endregion
    }

    public static void TwoDemands()
    {
        #region two-demands
        Console.WriteLine(MarineDemand.Published[1]);
        MarineDemand code = MarineDemand.Of(Length.FromMeters(20), ClimateZone.Temperate);
        Console.WriteLine($"{code}  [{code.Basis}]");
        #endregion
    }
}
