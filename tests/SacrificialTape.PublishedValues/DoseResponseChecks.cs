using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>The dose-response functions of ISO 9223 against decimal arithmetic, their data's bounds, and the error model.</summary>
internal static class DoseResponseChecks
{
    internal static CheckGroup Group => new(
        "ISO 9223:2012, clause 8: dose-response functions",
        "The function of zinc and the intervals are recalled, that of steel was read in a program that uses it. The rates are the functions in 50-digit decimal arithmetic of another language: they check the arithmetic, not the standard. The error model was read in an extract of Annex A.",
        [.. Cases()]);

    // Pd, Sd in mg/(m2.d), RH in %, T in degC; zinc and steel in um/a.
    private static readonly (double Sulfur, double Chloride, double Percent, double Celsius, double Zinc, double Steel)[] Rows =
    [
        (1, 1, 50, 20, 0.2061663346, 3.9858223188),
        (5, 10, 70, 5, 0.7161695410, 13.0615504030),
        (10, 3, 75, 10, 1.2587429476, 29.8401000645),
        (50, 300, 85, 20, 6.6518429627, 172.0125846027),
        (0.7, 0.4, 34, -17.1, 0.0219967947, 0.1393691504),
        (150.4, 760.5, 93, 28.7, 20.7666263158, 479.1159825616),
    ];

    internal static AnnualAtmosphere Air(double celsius, double percent, double sulfur, double chloride) => new(
        Temperature.FromDegreesCelsius(celsius),
        RelativeHumidity.FromPercent(percent),
        DepositionRate.FromMilligramsPerSquareMeterDay(sulfur),
        DepositionRate.FromMilligramsPerSquareMeterDay(chloride));

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach (var row in Rows)
        {
            AnnualAtmosphere air = Air(row.Celsius, row.Percent, row.Sulfur, row.Chloride);
            string site = FormattableString.Invariant($"Pd {row.Sulfur}, Sd {row.Chloride} mg/(m2.d), {row.Percent} %, {row.Celsius} degC");
            yield return Case(FormattableString.Invariant($"zinc/{row.Sulfur}"), "zinc at " + site, row.Zinc, 1e-10, "um/a",
                Evidence.ComputedElsewhere("decimal, 50 digits", References.DoseResponseZinc),
                () => new DoseResponse(Metal.Zinc, air).Rate.MicrometersPerYear);
            yield return Case(FormattableString.Invariant($"steel/{row.Sulfur}"), "carbon steel at " + site, row.Steel, 1e-9, "um/a",
                Evidence.ComputedElsewhere("decimal, 50 digits", References.DoseResponseSteel),
                () => new DoseResponse(Metal.CarbonSteel, air).Rate.MicrometersPerYear);
        }

        foreach ((string name, double low, double high, Func<double, AnnualAtmosphere> air) in new (string, double, double, Func<double, AnnualAtmosphere>)[]
        {
            ("temperature", -17.1, 28.7, static value => Air(value, 70, 10, 10)),
            ("humidity", 34, 93, static value => Air(10, value, 10, 10)),
            ("sulfur-dioxide", 0.7, 150.4, static value => Air(10, 70, value, 10)),
            ("chloride", 0.4, 760.5, static value => Air(10, 70, 10, value)),
        })
        {
            yield return Bound(name, "low", low, -1, air);
            yield return Bound(name, "high", high, 1, air);
        }

        Evidence model = Evidence.From(References.RateErrorModel, "the percentages are round");
        yield return Spread("s-0.7-low", 0.7, 0.5, 0.005, model, static range => range.Lowest);
        yield return Spread("s-0.7-high", 0.7, 2.0, 0.02, model, static range => range.Highest);
        yield return Spread("s-0.01-low", 0.01, 0.99, 5e-4, model, static range => range.Lowest);
        yield return Spread("s-0.01-high", 0.01, 1.01, 5e-4, model, static range => range.Highest);
        Evidence estimate = Evidence.From(References.EstimationUncertainty);
        double s = DoseResponse.EstimateSpread.Value;
        yield return Spread("estimate-low", s, 0.67, 0.005, estimate, static range => range.Lowest);
        yield return Spread("estimate-high", s, 1.50, 0.005, estimate, static range => range.Highest);
    }

    // The last value that is accepted, to a thousandth: found by trying.
    private static PublishedCase Bound(string name, string end, double expected, int sign, Func<double, AnnualAtmosphere> air) =>
        Case($"bound/{name}-{end}", $"{name}, {end} end of what is accepted", expected, 5e-4, "as named", Evidence.From(References.DoseResponseIntervals), () =>
        {
            double inside = expected - (sign * 0.2);
            double outside = expected + (sign * 0.2);
            while (Math.Abs(outside - inside) > 1e-4)
            {
                double middle = (inside + outside) / 2;
                (inside, outside) = Accepts(air(middle)) ? (middle, outside) : (inside, middle);
            }

            return (inside + outside) / 2;
        });

    private static bool Accepts(AnnualAtmosphere air)
    {
        try
        {
            _ = new DoseResponse(Metal.Zinc, air);
            return true;
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }
    }

    private static PublishedCase Spread(
        string id, double s, double expected, double tolerance, Evidence evidence, Func<RateRange, CorrosionRate> end) =>
        Case("spread/" + id, FormattableString.Invariant($"end of the interval over its middle, s = {s:0.###}"), expected, tolerance, "1", evidence, () =>
            end(new LogNormalRate(CorrosionRate.FromMicrometersPerYear(1), LogSpread.FromValue(s)).Range).MicrometersPerYear);

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "dose-response/" + id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
