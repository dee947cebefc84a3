using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.PublishedValues;

/// <summary>Critical values of Grubbs' test, two-sided.</summary>
internal static class OutlierChecks
{
    private static readonly double[] AtFive = [1.155, 1.481, 1.715, 1.887, 2.202, 2.126, 2.215, 2.290, 2.355, 2.412, 2.462, 2.507, 2.549];

    private static readonly double[] AtOne = [1.155, 1.496, 1.764, 1.973, 2.139, 2.274, 2.387, 2.482, 2.564, 2.636, 2.699, 2.755, 2.755];

    internal static CheckGroup Group => new(
        "Outliers: critical values of Grubbs' test",
        "A printed table of two-sided critical values, 3 to 15 readings. Two of its entries break the run of their column and are held to be misprints: 2.202 for 7 readings, where 2.020 fits, and 2.755 twice.",
        [.. AtFive.Select(static (value, at) => Case(at + 3, 0.05, value)), .. AtOne.Select(static (value, at) => Case(at + 3, 0.01, value))]);

    private static PublishedCase Case(int count, double significance, double value) => new()
    {
        Id = FormattableString.Invariant($"outlier/{significance}/{count}"),
        What = FormattableString.Invariant($"{count} readings, significance {significance}"),
        Evidence = Evidence.From(References.GrubbsTest),
        Expected = value,
        Tolerance = 0.0011,
        Unit = "1",
        Compute = () => FoilReadings.CriticalDistance(count, Probability.FromFraction(significance)),
        KnownDisagreement = (count, significance) switch
        {
            (7, 0.05) => "2.202 lies above the values for 8 readings: 2.020 with two digits changed places",
            (15, 0.01) => "2.755 stands for 14 readings and again for 15: the value of the row above",
            _ => null,
        },
    };
}
