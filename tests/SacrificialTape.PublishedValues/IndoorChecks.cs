using SacrificialTape.Exposure;
using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>Indoor categories, and rooms that a standard names as examples.</summary>
internal static class IndoorChecks
{
    internal static CheckGroup Group => new(
        "Zinc and steel indoors",
        "Bounds of indoor categories as recalled. They can be held against the categories of the open air, which were read as quoted elsewhere: IC3 must end where C1 ends and IC5 where C2 ends, for both metals. Rooms are examples of a standard, as quoted in a handbook.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence recalled = Evidence.From(References.IndoorCategories);
        foreach ((Metal metal, double density, double[] upper) in new[]
        {
            (Metal.Zinc, 7.14, new[] { 50.0, 250, 700, 2500, 5000 }), (Metal.CarbonSteel, 7.86, [70, 1000, 10_000, 70_000, 200_000]),
        })
        {
            for (int i = 0; i < upper.Length; i++)
            {
                var category = (IndoorCategory)(i + 1);
                yield return Case($"{metal}-{category}", $"{metal}, {category}, upper bound", upper[i], 1e-9, "mg/(m2.a)", recalled, () =>
                    IndoorCorrosivity.RatesOf(category, metal).Highest.MicrometersPerYear * density * 1000);
            }

            yield return Case($"{metal}-ic3-is-c1", $"{metal}, IC3 ends where C1 ends", metal == Metal.Zinc ? 0.7 : 10, 1e-9, "g/(m2.a)", Evidence.From(References.CorrosivityCategories, "C1"), () =>
                IndoorCorrosivity.RatesOf(IndoorCategory.IC3, metal).Highest.MicrometersPerYear * density);
            yield return Case($"{metal}-ic5-is-c2", $"{metal}, IC5 ends where C2 ends", metal == Metal.Zinc ? 5 : 200, 1e-9, "g/(m2.a)", Evidence.From(References.CorrosivityCategories, "C2"), () =>
                IndoorCorrosivity.RatesOf(IndoorCategory.IC5, metal).Highest.MicrometersPerYear * density);
        }

        foreach ((IndoorPlace place, CorrosivityCategory category) in new[]
        {
            (IndoorPlace.HeatedAndClean, CorrosivityCategory.C1), (IndoorPlace.UnheatedWithCondensation, CorrosivityCategory.C2), (IndoorPlace.HumidProduction, CorrosivityCategory.C3),
            (IndoorPlace.PoolOrChemicalPlant, CorrosivityCategory.C4), (IndoorPlace.AlwaysCondensingAndPolluted, CorrosivityCategory.C5),
        })
        {
            yield return Case($"room-{place}", $"room: {place}", (int)category, 0, "category", Evidence.From(References.IndoorExamples), () => (int)IndoorCorrosivity.CategoryOf(place)) with { Show = Ask.CategoryName };
        }
    }

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
    {
        Id = "indoor/" + id.ToLowerInvariant(),
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
