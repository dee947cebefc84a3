using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/site-conditions.md quotes.</summary>
public static class SiteConditionsPage
{
    public static void DewPoint()
    {
        #region dew-point
        var air = new MoistAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(70));
        Console.WriteLine(air);
        var margin = new DewPointMargin(air, Temperature.FromDegreesCelsius(16));
        Console.WriteLine($"{margin}; lowest surface {margin.LowestSurface(RuleSet.Default).DegreesCelsius:0.0} degC");
        Console.WriteLine(margin.ShowWorkings());
        #endregion
    }

    public static void WetBulb()
    {
        #region wet-bulb
        var read = new WetBulbReading(
            Temperature.FromDegreesCelsius(40),
            Temperature.FromDegreesCelsius(20),
            Pressure.FromHectopascals(1013.25),
            Psychrometer.Aspirated);
        Console.WriteLine(read);
        Console.WriteLine(read.Air);
        #endregion
    }

    public static void Slip()
    {
        #region slip
        try
        {
            _ = new MoistAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(0.65));
        }
        catch (ArgumentOutOfRangeException refused)
        {
            Console.WriteLine(refused.Message);
        }
        #endregion
    }

    public static void Readiness()
    {
        #region readiness
        var salts = new SaltReading(
            Volume.FromMilliliters(15),
            Area.FromSquareMillimeters(1250),
            before: ElectricConductivity.FromMicrosiemensPerCentimeter(3),
            after: ElectricConductivity.FromMicrosiemensPerCentimeter(13));
        var seen = new SurfaceReading(
            air: new MoistAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(70)),
            surfaceTemperature: Temperature.FromDegreesCelsius(18),
            serviceTemperature: Temperature.FromDegreesCelsius(45),
            wetness: SurfaceWetness.Dry,
            dryFor: Duration.FromHours(6),
            dwellBeforeWet: Duration.FromHours(3),
            cleaning: CleaningGrade.St3,
            dust: new DustRating(1, 2),
            residues: [],
            salts: salts.Salts);
        var first = new SurfaceReadiness(seen, RuleSet.Default, "line A-1");
        Console.WriteLine(salts);
        Console.WriteLine(first);
        foreach (Finding finding in first.Findings)
        {
            Console.WriteLine(finding);
        }
        #endregion
    }
}
