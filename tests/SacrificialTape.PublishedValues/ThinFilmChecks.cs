using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Films, their conductivity, and the potential under them.</summary>
internal static class ThinFilmChecks
{
    internal static CheckGroup Group => new(
        "Thin films: conductivity and reach",
        "Conductivities as printed or recalled. Decay lengths, couples and reaches in 30-digit arithmetic of another language: no measured throwing distance was found that could be read, so these rows check the arithmetic and not the steel.",
        [.. Conductivities(), .. Reaches(), .. Couples(), .. Round()]);

    private static readonly double[] Percent = [0.5, 1, 2, 5, 10, 15, 20, 25, 30, 40];

    private static IEnumerable<PublishedCase> Conductivities()
    {
        foreach ((Salt salt, SourceReference source, double[] row) in new (Salt, SourceReference, double[])[]
        {
            (Salt.SodiumChloride, References.SodiumChlorideConductivity, [8.2, 16.0, 30.2, 70.1, 126, 171, 204, 222]),
            (Salt.MagnesiumChloride, References.SaltConductivity, [8.6, 16.6, 31.2, 66.9, 108, 129, 134, 122, 98]),
            (Salt.CalciumChloride, References.SaltConductivity, [8.1, 15.7, 29.4, 67.0, 117, 157, 177, 183, 172, 106]),
        })
        {
            for (int i = 0; i < row.Length; i++)
            {
                double percent = Percent[i];
                yield return Case(
                    FormattableString.Invariant($"conductivity-{salt}-{percent}").ToLowerInvariant(), FormattableString.Invariant($"{salt}, {percent} mass %, 20 degC"),
                    Evidence.From(source), row[i], 1e-9, "mS/cm", () => SaltSolution.Conductivity(salt, percent).SiemensPerMeter * 10);
            }
        }

        foreach ((string id, Electrolyte water, SourceReference source, double low, double high) in new[]
        {
            ("drinking-water", Electrolyte.DrinkingWater, References.WaterConductivity, 0.02, 0.08),
            ("seawater", Electrolyte.Seawater, References.WaterConductivity, 4.8, 5),
        })
        {
            yield return Case(id + "-low", water.Name + ", lowest", Evidence.From(source), low, 0, "S/m", () => water.Lowest.SiemensPerMeter);
            yield return Case(id + "-high", water.Name + ", highest", Evidence.From(source), high, 0, "S/m", () => water.Highest.SiemensPerMeter);
        }

        yield return Case("rain-high", "rain, highest", Evidence.From(References.RainConductivity), 0.015, 0, "S/m", static () => Electrolyte.Rain.Highest.SiemensPerMeter);
        foreach ((Wetting wetting, double um) in new[] { (Wetting.Humidity, 1.0), (Wetting.Dew, 10), (Wetting.Rain, 100) })
        {
            yield return Case($"film-{wetting}".ToLowerInvariant(), $"film by {wetting}".ToLowerInvariant(), Evidence.From(References.WaterOnMetal), um, 0, "um", () => WaterFilm.Of(wetting).Micrometers);
        }
    }

    private static IEnumerable<PublishedCase> Reaches()
    {
        foreach ((double sigma, double um, double mm) in new[]
        {
            (0.005, 100, 0.707), (0.005, 1000, 2.24), (0.05, 100, 2.24), (0.34, 1000, 18.4), (1.6, 10, 4.0), (1.6, 100, 12.6), (5, 10, 7.07), (5, 100, 22.4), (5.0, 1000.0, 70.7),
        })
        {
            yield return Case(
                FormattableString.Invariant($"decay-{sigma}-{um}"), FormattableString.Invariant($"decay length at {sigma} S/m, {um} um, 1 ohm.m2"),
                Evidence.FirstPrinciples("sqrt(sigma d R)"), mm, mm < 1 ? 0.0005 : mm < 10 ? 0.005 : 0.05, "mm", () => Film(sigma, um).DecayLength(PolarisationResistance.FromOhmSquareMeters(1)).Millimeters);
        }

        foreach ((double sigma, double um, double limit, double mm) in new[] { (0.005, 100, 0.1, 1.58), (0.05, 100, 0.1, 5.00), (5, 100, 0.1, 50), (5, 100, 1, 15.8), (1.6, 10.0, 1.0, 2.83) })
        {
            yield return Case(
                FormattableString.Invariant($"oxygen-reach-{sigma}-{um}-{limit}"), FormattableString.Invariant($"reach at {sigma} S/m, {um} um, {limit} A/m2, 0.25 V"),
                Evidence.FirstPrinciples("sqrt(2 sigma d U/i)"), mm, mm < 10 ? 0.005 : 0.05, "mm", () => new OxygenReach(
                    Film(sigma, um), ElectricPotential.FromVolts(0.25), ElectricCurrentDensity.FromAmperesPerSquareMeter(limit)).Reach.Millimeters);
        }

        yield return Case("stern-geary", "polarisation resistance at 1 uA/cm2 and 120 mV slopes", Evidence.From(References.SternGeary, "0.12 x 0.12/(2.302585 x 0.24 x 0.01): the usual 26 mV"), 2.606, 0.0005, "ohm.m2", static () => new TafelElectrode(
            "steel",
            Sce(-0.6),
            ElectricCurrentDensity.FromAmperesPerSquareMeter(0.01),
            ElectricPotential.FromVolts(0.12),
            ElectricPotential.FromVolts(0.12),
            OxygenSupply.Unlimited).ResistanceAtRest(Film(1, 100)).OhmSquareMeters);
    }

    private static IEnumerable<PublishedCase> Couples()
    {
        foreach ((double sigma, double edge, double current, double far, double peak) in new[]
        {
            (5, -0.979551321320897, 3.56120589003644, -0.944521161518386, 3.54154465066517),
            (0.05, -0.926711659827637, 0.730358857533806, -0.607463009561324, 35.3553390593274),
        })
        {
            Evidence evidence = Evidence.ComputedElsewhere("closed form of the couple, 30 digits");
            string id = FormattableString.Invariant($"couple-{sigma}");
            string what = FormattableString.Invariant($"couple at {sigma} S/m, 100 um, 25 mm zinc, 10 mm steel");
            LinearCouple couple = new(Film(sigma, 100), Zinc, Length.FromMillimeters(25), Steel, Length.FromMillimeters(10));
            ThinFilmProfile Numeric() => new(Film(sigma, 100), [new(Zinc, Length.FromMillimeters(25)), new(Steel, Length.FromMillimeters(10))]);
            yield return Case(id + "-edge", what + ": edge", evidence, edge, 1e-12, "V", () => couple.SteelEdge.Volts);
            yield return Case(id + "-current", what + ": current", evidence, current, 1e-12, "mA/m", () => couple.Current.MilliamperesPerMeter);
            yield return Case(id + "-far", what + ": far end", evidence, far, 1e-12, "V", () => couple.FarEnd.Volts);
            yield return Case(id + "-peak", what + ": edge of zinc over its mean", evidence, peak, 1e-11, "1", () => couple.PeakOverMean);
            yield return Case(id + "-numeric-edge", what + ": edge, numerically", evidence, edge, 4.3e-10, "V", () => Numeric().LowestOn(1).Volts);
            yield return Case(id + "-numeric-far", what + ": far end, numerically", evidence, far, 4.3e-10, "V", () => Numeric().HighestOn(1).Volts);
            yield return Case(id + "-numeric-current", what + ": current, numerically", evidence, current, 1e-8, "mA/m", () => Numeric().SegmentCurrents[0].MilliamperesPerMeter);
        }
    }

    private static IEnumerable<PublishedCase> Round()
    {
        foreach ((double x, double ratio) in new[]
        {
            (0.01, 21.175325540662), (0.1, 4.05997714963233), (0.5, 1.79187250843222), (1, 1.4296253982604), (2, 1.22803692981891), (5, 1.09577504564133), (20, 1.02470201701829), (1000.0, 1.00049987512481),
        })
        {
            yield return Case(
                FormattableString.Invariant($"round-{x}"), FormattableString.Invariant($"round holiday of radius {x} decay lengths: bare for each area of zinc"),
                Evidence.ComputedElsewhere("x/2 x K0(x)/K1(x), 30 digits"), x / 2 / ratio, 1e-12 * Math.Max(1, x), "1", () => ZincFeed.RoundHoliday(
                    Length.FromMillimeters(2 * x * 10), Length.FromMillimeters(10)).BarePerZinc.Ratio);
        }
    }

    private static LinearElectrode Zinc { get; } = new("zinc", Sce(-1.03), PolarisationResistance.FromOhmSquareMeters(0.1));

    private static LinearElectrode Steel { get; } = new("steel", Sce(-0.60), PolarisationResistance.FromOhmSquareMeters(1));

    private static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);

    private static ThinFilm Film(double sigma, double um) => new(Length.FromMicrometers(um), ElectricConductivity.FromSiemensPerMeter(sigma));

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "thin-film/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
