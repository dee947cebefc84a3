using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/exposure.md quotes.</summary>
public static class ExposurePage
{
    public static void ByCategory()
    {
        #region by-category
        foreach (Metal metal in new[] { Metal.Zinc, Metal.CarbonSteel })
        {
            FirstYearRate rate = FirstYearRate.FromCategory(metal, CorrosivityCategory.C4);
            Console.WriteLine($"{metal}: {rate.Range}  [{rate.Basis}]");
        }
        #endregion
    }

    public static void ByAir()
    {
        #region by-air
        var air = new AnnualAtmosphere(
            Temperature.FromDegreesCelsius(10),
            RelativeHumidity.FromPercent(75),
            PollutionClasses.SulfurDioxideDeposition(MassConcentration.FromMicrogramsPerCubicMeter(12.5)),
            DepositionRate.FromMilligramsPerSquareMeterDay(3));
        var zinc = new DoseResponse(Metal.Zinc, air);
        Console.WriteLine(zinc.ShowWorkings());
        Console.WriteLine($"zinc {zinc.Category}, steel {new DoseResponse(Metal.CarbonSteel, air).Category}");
        #endregion
    }

    public static void BeyondData()
    {
        #region beyond-data
        var air = new AnnualAtmosphere(
            Temperature.FromDegreesCelsius(27),
            RelativeHumidity.FromPercent(80),
            DepositionRate.FromMilligramsPerSquareMeterDay(1),
            DepositionRate.FromMilligramsPerSquareMeterDay(900));
        try
        {
            _ = new DoseResponse(Metal.Zinc, air);
        }
        catch (ArgumentOutOfRangeException refused)
        {
            Console.WriteLine(refused.Message);
        }

        var accepted = new DoseResponse(Metal.Zinc, air, BeyondFit.AcceptWithFinding);
        ZincExposure exposure = ZincExposure.From(FirstYearRate.From(accepted));
        Console.WriteLine(exposure.FirstYear);
        foreach (Finding finding in exposure.Judge(RuleSet.Default, "Jetty, line 3"))
        {
            Console.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Measured}");
        }
        #endregion
    }

    public static void ByCoupon()
    {
        #region by-coupon
        var coupon = new CouponLoss(
            Mass.FromGrams(0.357),
            Area.FromSquareCentimeters(250),
            Duration.FromYears365(1),
            Zinc.Density,
            new CouponUncertainty(Mass.FromMilligrams(4), Area.FromSquareCentimeters(2.5)));
        Console.WriteLine($"{coupon.Rate}, or {coupon.MassRate}: {Corrosivity.CategoryOf(coupon.MassRate, Metal.Zinc)}");
        FirstYearRate rate = FirstYearRate.From(Metal.Zinc, coupon, "invented: rack 7, one year");
        Console.WriteLine(rate);
        #endregion
    }

    public static void ByThickness()
    {
        #region by-thickness
        var loss = Length.FromMicrometers(13);
        var time = Duration.FromYears365(10);
        FirstYearRate mean = FirstYearRate.FromThicknessLoss(Metal.Zinc, loss, time, "invented: gauge readings");
        Console.WriteLine($"mean of the years {mean.Range.Highest}");
        foreach (Finding finding in mean.Judge(RuleSet.Default, "Line 3"))
        {
            Console.WriteLine($"[{finding.Rule.Id}] {finding.Measured}");
        }

        Console.WriteLine($"first year under the power law {FirstYearLoss.Under(PowerLawLoss.ZincMean, loss, time)}");
        #endregion
    }

    public static void Classes()
    {
        #region classes
        DepositionRate sulfur = DepositionRate.FromMilligramsPerSquareMeterDay(8);
        foreach (Iso9223Edition edition in new[] { Iso9223Edition.Of1992, Iso9223Edition.Of2012 })
        {
            Console.WriteLine($"8 mg/(m2.d) {edition}: {PollutionClasses.SulfurDioxide(sulfur, edition)}");
        }

        Console.WriteLine(PollutionClasses.Wetness(Duration.FromHours(3067), Iso9223Edition.Of1992));
        #endregion
    }

    public static void Indoors()
    {
        #region indoors
        foreach (IndoorCategory category in Enum.GetValues<IndoorCategory>())
        {
            Console.WriteLine(FirstYearRate.Indoors(Metal.Zinc, category));
        }

        MassLossRate weighed = MassLossRate.FromGramsPerSquareMeterYear(0.9);
        Console.WriteLine($"{weighed}: {IndoorCorrosivity.CategoryOf(weighed, Metal.Zinc)}, {Corrosivity.CategoryOf(weighed, Metal.Zinc)} of the open air");
        FirstYearRate hall = FirstYearRate.Indoors(Metal.Zinc, IndoorPlace.HumidProduction);
        Console.WriteLine(hall);
        foreach (Finding finding in hall.Judge(RuleSet.Default, "Bottling hall"))
        {
            Console.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Rule.Title}");
        }
        #endregion
    }
}
