using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Dew points, saturation pressures, wet bulbs and margins as they are printed.</summary>
internal static class DewPointChecks
{
    internal static CheckGroup Group => new(
        "Dew point and humidity",
        "A dew-point table of the coating trade, saturation pressures and an example of a handbook as an open library's tests carry them, a worked example of another library, and constants against one another. A table rounded to 0.1 degC is held to 0.15 degC.",
        [.. Table(), .. Pressures(), .. WetBulb(), .. Sets(), .. Margins()]);

    private static IEnumerable<PublishedCase> Table()
    {
        foreach ((double air, double humidity, double dewPoint) in new[]
        {
            (2, 80, -1.0), (6, 70, 0.9), (10, 50, 0.0), (10, 70, 4.8), (10, 90, 8.5), (15, 85, 12.6), (18, 60, 10.1), (20, 40, 6.0),
            (20, 50, 9.3), (20, 60, 12.0), (20, 70, 14.4), (20, 85, 17.4), (25, 50, 13.8), (30, 50, 18.4), (30.0, 55.0, 20.0),
        })
        {
            yield return Case(
                FormattableString.Invariant($"table-{air}-{humidity}"), FormattableString.Invariant($"dew point at {air} degC and {humidity} %"),
                Evidence.From(Sources.DewPointTable), dewPoint, 0.15, "degC", () => Air(air, humidity).DewPoint.DegreesCelsius);
        }

        yield return Case("table-30-65", "dew point at 30 degC and 65 %", Evidence.From(Sources.DewPointTable), 23.7, 0.15, "degC", static () => Air(30, 65).DewPoint.DegreesCelsius) with
        {
            KnownDisagreement = "a misprint: the row runs 21.4, 23.7, 23.9, and 22.7 lies between its neighbours",
        };
        yield return Case(
            "table-10-90-other", "dew point at 10 degC and 90 %, another table", Evidence.From(Sources.DewPointTable, "8.4 in the other table"), 8.4, 0.15, "degC",
            static () => Air(10, 90).DewPoint.DegreesCelsius);
    }

    private static IEnumerable<PublishedCase> Pressures()
    {
        Evidence table = Evidence.From(Sources.SaturationTable, "the short formula is known to be some 0.3 % low at 25 degC; tolerance 0.4 %");
        foreach ((double celsius, double pascal) in new[] { (5, 872.6), (25, 3169.7), (50.0, 12351.3) })
        {
            yield return Case(
                FormattableString.Invariant($"saturation-{celsius}"), FormattableString.Invariant($"saturation pressure over water at {celsius} degC"), table, pascal, 0.004 * pascal, "Pa",
                () => SaturationConstants.Wmo.SaturationPressure(Temperature.FromDegreesCelsius(celsius)).Pascals);
        }

        foreach ((double celsius, double pascal) in new[] { (-5, 401.74), (-20.0, 103.24) })
        {
            yield return Case(
                FormattableString.Invariant($"saturation-ice-{-celsius}"), FormattableString.Invariant($"saturation pressure over ice at {celsius} degC"), table, pascal, 0.004 * pascal, "Pa",
                () => SaturationConstants.WmoOverIce.SaturationPressure(Temperature.FromDegreesCelsius(celsius)).Pascals);
        }
    }

    private static IEnumerable<PublishedCase> WetBulb()
    {
        // Printed to 7 degC and 14 %: half a digit of each.
        WetBulbReading Example() => new(
            Temperature.FromDegreesCelsius(40), Temperature.FromDegreesCelsius(20), Pressure.FromPascals(101_325), Psychrometer.Aspirated);
        Evidence example = Evidence.From(Sources.SaturationTable, "example 1: 40 degC, wet bulb 20 degC, 101.325 kPa");
        yield return Case("wet-bulb-humidity", "humidity of the handbook's example", example, 14, 0.5, "%", () => Example().Humidity.Percent) with
        {
            KnownDisagreement = "the handbook's wet bulb is that of saturation without loss of heat; a psychrometer of this coefficient reads half a per cent drier here",
        };
        yield return Case("wet-bulb-dew-point", "dew point of the handbook's example", example, 7, 0.5, "degC", () => Example().Air.DewPoint.DegreesCelsius);

        WetBulbReading Other() => new(
            Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(12), Pressure.FromHectopascals(958),
            new Psychrometer("of the example", new Measure(6.21e-4, TradeUnit.PerKelvin), Basis.From(References.PsychrometricEquation)));
        Evidence documented = Evidence.From(References.PsychrometricEquation, "another saturation formula there: tolerance 0.4 %");
        yield return Case("psychrometric-pressure", "vapour pressure at 25 and 12 degC, 958 hPa", documented, 627.52, 0.004 * 627.52, "Pa", () => Other().Air.VapourPressure.Pascals);
        yield return Case("psychrometric-humidity", "humidity at 25 and 12 degC, 958 hPa", documented, 19.84, 0.004 * 19.84, "%", () => Other().Humidity.Percent);
        foreach ((Psychrometer type, double coefficient) in new[] { (Psychrometer.Aspirated, 0.000662), (Psychrometer.NaturallyVentilated, 0.0008), (Psychrometer.Unventilated, 0.0012) })
        {
            yield return Case(
                "psychrometer-" + type.Name.Replace(' ', '-'), "coefficient, " + type.Name, Evidence.From(References.PsychrometerCoefficients), coefficient, 0, "1/K",
                () => type.Coefficient.Number);
        }

        yield return Case(
            "psychrometric-fao", "vapour pressure at 25.6 and 19.5 degC, 87.9 kPa", Evidence.From(Sources.PsychrometerExample), 1.91, 0.005, "kPa",
            static () => new WetBulbReading(
                Temperature.FromDegreesCelsius(25.6), Temperature.FromDegreesCelsius(19.5), Pressure.FromKilopascals(87.9), Psychrometer.Aspirated, SaturationConstants.Tetens).Air.VapourPressure.Kilopascals);
    }

    private static IEnumerable<PublishedCase> Sets()
    {
        foreach ((SaturationConstants set, SourceReference source, double saturation20) in new[]
        {
            (SaturationConstants.Wmo, References.SaturationWmo, 6.112 * Math.Exp(352.4 / 263.12)),
            (SaturationConstants.AlduchovEskridge, References.SaturationAlduchov, 6.1094 * Math.Exp(352.5 / 263.04)),
            (SaturationConstants.Buck, References.SaturationBuck, 6.1121 * Math.Exp(350.04 / 260.97)),
            (SaturationConstants.Bolton, References.SaturationBolton, 6.112 * Math.Exp(353.4 / 263.5)),
            (SaturationConstants.Tetens, References.SaturationTetens, 6.108 * Math.Exp(345.4 / 257.3)),
        })
        {
            yield return Case(
                "set-" + source.Id, "saturation at 20 degC, " + set.Name, Evidence.FirstPrinciples("e0 exp(20 a/(b + 20)) with the printed constants", source), saturation20, 1e-12, "hPa",
                () => set.SaturationPressure(Temperature.FromDegreesCelsius(20)).Hectopascals);
        }

        yield return Case(
            "set-ice", "saturation at -10 degC, WMO over ice", Evidence.FirstPrinciples("6.112 exp(-224.6/262.62) with the recalled constants", References.SaturationWmoIce),
            6.112 * Math.Exp(-224.6 / 262.62), 1e-12, "hPa", static () => SaturationConstants.WmoOverIce.SaturationPressure(Temperature.FromDegreesCelsius(-10)).Hectopascals);
        yield return Case(
            "tetens-15", "saturation at 15 degC, Tetens (FAO-56)", Evidence.From(Sources.TetensAt15), 1.70535, 5e-6, "kPa",
            static () => SaturationConstants.Tetens.SaturationPressure(Temperature.FromDegreesCelsius(15)).Kilopascals);
    }

    private static IEnumerable<PublishedCase> Margins()
    {
        Evidence margin = Evidence.From(References.DewPointMargin);
        yield return Case("margin-rule", "number of the margin", margin, 3, 0, "K", static () => Number(RuleIds.MinimumDewPointMargin, TradeUnit.Kelvin));
        yield return Case("humidity-rule", "number of the humidity", margin, 85, 0, "%", static () => Number(RuleIds.MaximumHumidity, TradeUnit.Percent));
        yield return Case("margin-us", "number of the margin, as recalled of United States practice", Evidence.From(Sources.MarginInFahrenheit), 2.8, 0.05, "K", static () => Number(RuleIds.MinimumDewPointMargin, TradeUnit.Kelvin)) with
        {
            KnownDisagreement = "5 degF is 2.8 K; the larger margin is the rule",
        };
        foreach ((double air, double humidity, double least) in new[] { (20, 70, 17.4), (10.0, 90.0, 11.4) })
        {
            yield return Case(
                FormattableString.Invariant($"least-surface-{air}-{humidity}"), FormattableString.Invariant($"lowest surface at {air} degC and {humidity} %"), margin, least, 0.05, "degC",
                () => new DewPointMargin(Air(air, humidity), Temperature.FromDegreesCelsius(air)).LowestSurface(RuleSet.Default).DegreesCelsius);
        }
    }

    private static MoistAir Air(double celsius, double percent) => new(Temperature.FromDegreesCelsius(celsius), RelativeHumidity.FromPercent(percent));

    private static double Number(string rule, TradeUnit unit) => RuleSet.Default[rule].Limit!.Value.In(unit);

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "dew-point/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
