using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/water-and-soil.md quotes.</summary>
public static class WaterAndSoilPage
{
    public static void Waters()
    {
        #region waters
        foreach (WaterKind water in Enum.GetValues<WaterKind>())
        {
            FirstYearRate rate = FirstYearRate.OfZincIn(water);
            Console.WriteLine($"{rate}  [{rate.Basis.Kind}]");
        }
        #endregion
    }

    public static void InSoftWater()
    {
        #region in-soft-water
        ZincExposure exposure = ZincExposure.From(FirstYearRate.OfZincIn(WaterKind.SoftFresh));
        var life = new LifeEstimate(
            new Foil(Length.FromMicrometers(100)), 1, exposure, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        Console.WriteLine(life);
        foreach (Finding finding in life.Judge(Lifetime.Of(Duration.FromYears365(5)), RuleSet.Default, "Sump"))
        {
            Console.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Rule.Title}");
        }
        #endregion
    }

    public static void InSoil()
    {
        #region in-soil
        PiecewiseLoss soil = PiecewiseLoss.ZincInReinforcedSoil;
        Console.WriteLine($"{soil.FirstYear}, later {soil.Afterwards}  [{soil.Basis}]");
        Console.WriteLine(soil.TimeToLoss(soil.FirstYear, Length.FromMicrometers(80)));
        #endregion
    }

    public static void SoilPower()
    {
        #region soil-power
        var law = PowerLawLoss.InSoil(TimeExponent.FromValue(0.5));
        CorrosionRate firstYear = CorrosionRate.FromMicrometersPerYear(20);
        Console.WriteLine(law.TimeToLoss(firstYear, Length.FromMicrometers(80)));
        #endregion
    }

    public static void SoilConstants()
    {
        #region soil-constants
        ZincExposure soil = ZincExposure.From(FirstYearRate.InSoilByPowerLaw(Metal.Zinc));
        var life = new LifeEstimate(
            new Foil(Length.FromMicrometers(200)), 1, soil, Utilisation.FromFraction(0.8), LawsByMedium.For(soil));
        Console.WriteLine($"{soil.Rate}, {life.ByLaw[0].Law.Name}: {life}");
        foreach (Finding finding in life.Judge(Lifetime.Of(Duration.FromYears365(10)), RuleSet.Default, "Culvert"))
        {
            Console.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Rule.Title}");
        }
        #endregion
    }
}
