using SacrificialTape.Exposure;
using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>Bounds of the corrosivity categories, in both columns of the table, for both metals.</summary>
internal static class CorrosivityCategoryChecks
{
    internal static CheckGroup Group => new(
        "ISO 9223:2012, Table 2: corrosivity categories",
        "C1 to C5 as quoted elsewhere, CX recalled except for steel in um/a. A bound belongs to the category below it: each is tried on the spot and one part in a million above.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Bounds(Metal.Zinc, "um/a", [0.1, 0.7, 2.1, 4.2, 8.4, 25], Ask.CategoryOfUm),
        .. Bounds(Metal.Zinc, "g/(m2.a)", [0.7, 5, 15, 30, 60, 180], Ask.CategoryOfGrams),
        .. Bounds(Metal.CarbonSteel, "um/a", [1.3, 25, 50, 80, 200, 700], Ask.CategoryOfUm),
        .. Bounds(Metal.CarbonSteel, "g/(m2.a)", [10, 200, 400, 650, 1500, 5500], Ask.CategoryOfGrams),
        .. Ranges(Metal.Zinc, [0, 0.1, 0.7, 2.1, 4.2, 8.4, 25]),
        .. Ranges(Metal.CarbonSteel, [0, 1.3, 25, 50, 80, 200, 700]),
    ];

    private static IEnumerable<PublishedCase> Bounds(
        Metal metal, string unit, double[] upper, Func<double, Metal, double> categoryOf)
    {
        for (int i = 0; i < upper.Length; i++)
        {
            double bound = upper[i];
            int category = i + 1;
            string id = FormattableString.Invariant($"category/{Name(metal)}-{(unit == "um/a" ? "um" : "g")}-{bound}");
            yield return Class(id + "/at", FormattableString.Invariant($"{Name(metal)}, {bound} {unit}"), metal, unit, category, category, () => categoryOf(bound, metal));
            yield return Class(id + "/above", FormattableString.Invariant($"{Name(metal)}, a millionth above {bound} {unit}"), metal, unit, category, category + 1, () => categoryOf(bound * 1.000001, metal));
        }
    }

    private static PublishedCase Class(
        string id, string what, Metal metal, string unit, int boundOf, int expected, Func<double> compute) => new()
        {
            Id = id,
            What = what,
            Evidence = SourceOf(metal, unit, boundOf),
            Expected = expected,
            Tolerance = 0,
            Unit = "category",
            Compute = compute,
            Show = Ask.CategoryName,
        };

    private static IEnumerable<PublishedCase> Ranges(Metal metal, double[] bounds)
    {
        for (int i = 1; i < bounds.Length; i++)
        {
            var category = (CorrosivityCategory)i;
            foreach ((string end, double bound, int boundOf) in new[] { ("lowest", bounds[i - 1], i - 1), ("highest", bounds[i], i) })
            {
                yield return new PublishedCase
                {
                    Id = $"category/{Name(metal)}-range-{category}/{end}".ToLowerInvariant(),
                    What = $"{end} rate of {category}, {Name(metal)}",
                    Evidence = SourceOf(metal, "um/a", Math.Max(1, boundOf)),
                    Expected = bound,
                    Tolerance = 0,
                    Unit = "um/a",
                    Compute = () =>
                    {
                        RateRange rates = Corrosivity.RatesOf(category, metal);
                        return (end == "lowest" ? rates.Lowest : rates.Highest).MicrometersPerYear;
                    },
                };
            }
        }
    }

    private static Evidence SourceOf(Metal metal, string unit, int category) =>
        category < (int)CorrosivityCategory.CX
            ? Evidence.From(References.CorrosivityCategories)
            : metal == Metal.CarbonSteel && unit == "um/a"
                ? Evidence.From(References.ExtremeCategoryOfSteel)
                : Evidence.From(References.CorrosivityCategoryExtreme);

    private static string Name(Metal metal) => metal == Metal.Zinc ? "zinc" : "steel";
}
