using FsCheck.Xunit;

namespace SacrificialTape.Tests.SiteConditions;

[Properties(MaxTest = 500)]
public sealed class HumidityLaws
{
    [Property]
    public void The_dew_point_is_never_above_the_air_and_rises_with_humidity(short celsius, byte humidity, byte more, byte which)
    {
        (Temperature air, SaturationConstants set) = Air(celsius, which);
        double low = 2 + (humidity % 97);
        double high = Math.Min(100, low + 0.01 + (more / 10.0));
        double dry = new MoistAir(air, RelativeHumidity.FromPercent(low), set).DewPoint.DegreesCelsius;
        double damp = new MoistAir(air, RelativeHumidity.FromPercent(high), set).DewPoint.DegreesCelsius;
        Assert.True(dry < damp);
        Assert.True(damp <= air.DegreesCelsius + 1e-12);
        Near.Equal(air.DegreesCelsius, new MoistAir(air, RelativeHumidity.FromPercent(100), set).DewPoint.DegreesCelsius, 1e-12, absolute: 1e-12);
    }

    [Property]
    public void Humidity_and_dew_point_are_inverse_of_one_another(short celsius, byte humidity, byte which)
    {
        (Temperature air, SaturationConstants set) = Air(celsius, which);
        var moist = new MoistAir(air, RelativeHumidity.FromPercent(40 + (humidity % 60)), set);
        if (moist.DewPoint < set.Lowest)
        {
            return; // outside the range of the set, and refused
        }

        var read = new DewPointReading(air, moist.DewPoint, set);
        Near.Equal(moist.Humidity.Percent, read.Humidity.Percent, 1e-11);
        Near.Equal(moist.DewPoint.DegreesCelsius, read.Air.DewPoint.DegreesCelsius, 1e-10, absolute: 1e-10);

        // At the dew point the vapour in the air saturates.
        Near.Equal(moist.VapourPressure.Hectopascals, set.SaturationPressure(moist.DewPoint).Hectopascals, 1e-11);
    }

    [Property]
    public void The_wet_bulb_that_a_humidity_cools_to_gives_that_humidity_back(byte celsius, byte humidity)
    {
        // The wet bulb by halving an interval: another way than the closed form of the library.
        double air = 5 + (celsius % 40);
        double wanted = 40 + (humidity % 60);
        double low = 0;
        double high = air;
        double Humidity(double wet) => 100 * (Saturation(wet) - (0.000662 * 1000 * (air - wet))) / Saturation(air);
        if (Humidity(0) > wanted)
        {
            return; // the bulb would freeze
        }

        for (int i = 0; i < 80; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Humidity(middle) < wanted ? (middle, high) : (low, middle);
        }

        var read = new WetBulbReading(Celsius(air), Celsius(high), Pressure.FromHectopascals(1000), Psychrometer.Aspirated);
        Near.Equal(wanted, read.Humidity.Percent, 1e-9);
        Assert.True(read.Air.DewPoint <= read.WetBulb);

        static double Saturation(double t) => 6.112 * Math.Exp(17.62 * t / (243.12 + t));
    }

    [Fact]
    public void All_sets_over_water_agree_within_a_tenth_of_a_degree()
    {
        foreach (double air in new[] { 2, 10, 20, 30.0 })
        {
            foreach (double humidity in new[] { 40, 60, 80, 95.0 })
            {
                double[] all =
                [
                    .. SaturationConstants.All.Where(static set => set.Over == WaterPhase.Water)
                        .Select(set => new MoistAir(Celsius(air), RelativeHumidity.FromPercent(humidity), set).DewPoint.DegreesCelsius),
                ];
                Assert.Equal(5, all.Length);
                Assert.InRange(all.Max() - all.Min(), 0, 0.1);
            }
        }
    }

    [Fact]
    public void Constants_of_two_sets_cannot_be_mixed()
    {
        Assert.Empty(typeof(SaturationConstants).GetConstructors());
        Assert.All(SaturationConstants.All, static set => Near.Equal(set.AtZero.Hectopascals, set.SaturationPressure(Celsius(0)).Hectopascals, 1e-15));
    }

    [Fact]
    public void A_fraction_for_a_percentage_is_asked_back()
    {
        Errors.Refused(static () => new MoistAir(Celsius(20), RelativeHumidity.FromPercent(0.65)), "humidity", "0.65 %", "at least 2 and at most 100 %", "is it a fraction? 0.65 means 0.65 %");
        Errors.Refused(static () => new MoistAir(Celsius(20), RelativeHumidity.FromPercent(1)), "humidity", "is it a fraction?");
        Errors.Refused(static () => new MoistAir(Celsius(20), RelativeHumidity.FromPercent(0)), "humidity", "is it a fraction?");
        Errors.Refused(static () => new MoistAir(Celsius(20), RelativeHumidity.FromPercent(100.1)), "humidity", "100.1 %");
        Assert.Equal(2, new MoistAir(Celsius(20), RelativeHumidity.FromPercent(2)).Humidity.Percent);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new MoistAir(Celsius(61), RelativeHumidity.FromPercent(50)), "temperature", "61 degC", "at least -45 and at most 60 degC", "WMO");
        Errors.Refused(static () => new MoistAir(Celsius(1), RelativeHumidity.FromPercent(50), SaturationConstants.WmoOverIce), "temperature", "1 degC", "at most 0 degC");
        Errors.Refused(static () => new DewPointReading(Celsius(10), Celsius(10.1)), "dewPoint", "10.1 degC", "at most the air");
        Errors.Refused(static () => new DewPointReading(Celsius(30), Celsius(-40)), "dewPoint", "%", "the humidity that this dew point means");
        Errors.Refused(static () => new WetBulbReading(Celsius(20), Celsius(-1), Pressure.FromHectopascals(1000), Psychrometer.Aspirated), "wetBulb", "ice forms");
        Errors.Refused(static () => new WetBulbReading(Celsius(20), Celsius(21), Pressure.FromHectopascals(1000), Psychrometer.Aspirated), "wetBulb", "21 degC");
        Errors.Refused(static () => new WetBulbReading(Celsius(40), Celsius(5), Pressure.FromHectopascals(1000), Psychrometer.Aspirated), "wetBulb", "is the sleeve wet?");
        Errors.Refused(static () => new WetBulbReading(Celsius(20), Celsius(15), Pressure.FromKilopascals(10), Psychrometer.Aspirated), "pressure", "100 hPa", "at least 500");
        Errors.Refused(static () => new Psychrometer("own", new Measure(0.662, TradeUnit.PerKelvin), Basis.Judgement("a slip")), "coefficient", "0.662 1/K");
        Assert.Throws<ArgumentException>(static () => new WetBulbReading(
            Celsius(-1), Celsius(-1), Pressure.FromHectopascals(1000), Psychrometer.Aspirated, SaturationConstants.WmoOverIce));
        var air = new MoistAir(Celsius(20), RelativeHumidity.FromPercent(50));
        Errors.Refused(() => new DewPointMargin(air, Celsius(401)), "surface", "401 degC");
    }

    [Fact]
    public void The_margin_is_judged_with_its_bound_included()
    {
        var air = new MoistAir(Celsius(20), RelativeHumidity.FromPercent(70));
        double bound = new DewPointMargin(air, Celsius(20)).LowestSurface(RuleSet.Default).DegreesCelsius;
        Near.Equal(air.DewPoint.DegreesCelsius + 3, bound, 1e-14);
        Assert.Empty(new DewPointMargin(air, Celsius(bound)).Judge(RuleSet.Default, "A-1"));
        Assert.Equal(RuleIds.MinimumDewPointMargin, new DewPointMargin(air, Celsius(bound - 0.001)).Judge(RuleSet.Default, "A-1").Single().Rule.Id);
    }

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);

    private static (Temperature Air, SaturationConstants Set) Air(short celsius, byte which)
    {
        SaturationConstants set = SaturationConstants.All[which % SaturationConstants.All.Count];
        double share = Math.Abs(celsius % 1000) / 1000.0;
        return (Celsius(set.Lowest.DegreesCelsius + (share * (set.Highest.DegreesCelsius - set.Lowest.DegreesCelsius))), set);
    }
}
