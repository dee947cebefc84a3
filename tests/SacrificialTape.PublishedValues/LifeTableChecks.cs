using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>The recalled life table of ISO 14713-1, by the linear law.</summary>
internal static class LifeTableChecks
{
    internal static CheckGroup Group => new(
        "ISO 14713-1, Table 2: life to first maintenance",
        "Recalled, and the recollection and the rule that makes it (thickness over the category's bounds, in whole years) are not independent: that they agree proves little. Only '85 um, C4: 20 to 40 years' was read. One recalled cell does not follow the rule; it is listed as a known disagreement.",
        [.. Cases()]);

    // Thickness, then least and most in C3, C4, C5, CX. A most of 101 stands for the printed ">100".
    private static readonly (string System, double Um, int[] Years)[] Rows =
    [
        ("hot dip", 85, [40, 101, 20, 40, 10, 20, 3, 10]),
        ("hot dip", 140, [67, 101, 33, 67, 17, 33, 6, 17]),
        ("hot dip", 200, [95, 101, 48, 95, 24, 48, 8, 24]),
        ("hot dip sheet", 20, [10, 29, 5, 10, 2, 5, 1, 2]),
        ("hot dip sheet", 42, [20, 60, 10, 20, 5, 10, 2, 5]),
        ("sherardized", 15, [7, 21, 4, 7, 2, 4, 1, 2]),
        ("sherardized", 30, [14, 43, 7, 14, 4, 7, 1, 4]),
        ("sherardized", 45, [21, 65, 11, 21, 5, 11, 2, 5]),
        ("electroplated", 5, [2, 7, 1, 2, 1, 1, 0, 1]),
        ("electroplated", 25, [12, 36, 6, 12, 3, 6, 1, 3]),
        ("mechanically plated", 8, [4, 11, 2, 4, 1, 2, 0, 1]),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((string system, double um, int[] years) in Rows)
        {
            for (int i = 0; i < years.Length; i++)
            {
                CorrosivityCategory category = CorrosivityCategory.C3 + (i / 2);
                bool least = i % 2 == 0;
                int printed = years[i];
                string id = FormattableString.Invariant($"life-table/{um}-um-{category}/{(least ? "least" : "most")}").ToLowerInvariant();
                string what = FormattableString.Invariant($"{system}, {um} um in {category}, {(least ? "least" : "most")}");
                double Life()
                {
                    RateRange rates = Corrosivity.RatesOf(category, Metal.Zinc);
                    return Ask.LifeYears(LinearLoss.Law, um, (least ? rates.Highest : rates.Lowest).MicrometersPerYear);
                }

                yield return printed > 100
                    ? new PublishedCase
                    {
                        Id = id,
                        What = what,
                        Evidence = Evidence.From(Sources.LifeTable),
                        Expected = 101,
                        Tolerance = 0,
                        Unit = "a",
                        Compute = () => Life() > 100 ? 101 : Life(),
                        Show = static life => life > 100 ? ">100" : life.ToString("G7", CultureInfo.InvariantCulture),
                    }
                    : new PublishedCase
                    {
                        Id = id,
                        What = what,
                        Evidence = Evidence.From(Sources.LifeTable),
                        Expected = printed,
                        Tolerance = 0.5,
                        Unit = "a",
                        Compute = Life,
                        KnownDisagreement = um == 45 && category == CorrosivityCategory.C3 && !least
                            ? "45/0.7 is 64.3; the recalled cell says 65. To be looked up in the standard."
                            : null,
                    };
            }
        }
    }
}
