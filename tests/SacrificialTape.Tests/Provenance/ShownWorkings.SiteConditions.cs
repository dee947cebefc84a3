using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Humidity, salts and the number of readings.</content>
public sealed partial class ShownWorkings
{
    [Fact]
    public static void Of_humidity_and_dew_point()
    {
        foreach (SaturationConstants set in SaturationConstants.All)
        {
            Temperature air = Temperature.FromDegreesCelsius(set.Over == WaterPhase.Ice ? -8.25 : 17.5);
            var moist = new MoistAir(air, RelativeHumidity.FromPercent(62.5), set);
            IReadOnlyDictionary<string, double> shown = Checked(moist);
            Near.Equal(moist.DewPoint.DegreesCelsius, shown["T_d"], 1e-12);
            Near.Equal(moist.VapourPressure.Hectopascals, shown["e"], 1e-12);
            Near.Equal(moist.SaturationPressure.Hectopascals, shown["e_s"], 1e-12);
            var read = new DewPointReading(air, moist.DewPoint, set);
            Ends(Checked(read), read.Humidity.Percent);
        }

        var margin = new DewPointMargin(new MoistAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(70)), Temperature.FromDegreesCelsius(18));
        IReadOnlyDictionary<string, double> far = Checked(margin);
        Near.Equal(margin.Margin.Kelvins, far["m"], 1e-12);
        Near.Equal(margin.LowestSurface(RuleSet.Default).DegreesCelsius, far["T_min"], 1e-12);
        var wet = new WetBulbReading(Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(12), Pressure.FromHectopascals(958), Psychrometer.Aspirated);
        Ends(Checked(wet), wet.Humidity.Percent);
    }

    [Fact]
    public static void Of_salts()
    {
        var salts = new SaltReading(
            Volume.FromMilliliters(10), Area.FromSquareMillimeters(1250),
            ElectricConductivity.FromMicrosiemensPerCentimeter(2), ElectricConductivity.FromMicrosiemensPerCentimeter(9));
        Ends(Checked(salts), salts.Salts.MilligramsPerSquareMeter);
    }

    [Fact]
    public static void Of_sampling()
    {
        foreach (SamplingScheme scheme in Enum.GetValues<SamplingScheme>())
        {
            foreach (double m2 in new[] { 10, 17.5, 250.5 })
            {
                var count = new SamplingCount(scheme, Area.FromSquareMeters(m2));
                Ends(Checked(count), count.Readings);
            }
        }

        var line = new SamplingLine(Mm(12_345), Mm(1000), 3);
        Ends(Checked(line), line.Readings);
    }
}
