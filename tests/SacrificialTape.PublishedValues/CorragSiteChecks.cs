using SacrificialTape.Exposure;

namespace SacrificialTape.PublishedValues;

/// <summary>Classification of measured sites. The losses are published; the categories are read off the bounds by hand.</summary>
internal static class CorragSiteChecks
{
    internal static CheckGroup Group => new(
        "ISO CORRAG sites",
        "One-year losses as listed elsewhere; the categories are not published but read off the quoted bounds of ISO 9223 by hand, so they are arithmetic. Ahtari and Bergen lie on an inclusive bound for zinc. At 7 of the 27 sites with both metals the categories differ: category goes by metal. The list heads its zinc column 'hot-dip galvanized', another text says pure zinc.",
        [.. Cases()]);

    private static readonly Site[] Sites =
    [
        new("Ahtari", 0.70, "C2", 12.8, "C2"), new("Auby", 5.60, "C5", 106.0, "C5"), new("Baracaldo", 1.20, "C3", null, null),
        new("Batumi", 1.60, "C3", 28.7, "C3"), new("Bergen", 2.10, "C3", 27.9, "C3"), new("Bergisch Gladbach", 1.60, "C3", 36.2, "C3"),
        new("Biarritz", 4.30, "C5", 87.2, "C5"), new("Birkenes", 2.30, "C4", 19.7, "C2"), new("Borregaard", 3.80, "C4", 61.7, "C4"),
        new("Boucherville", 1.40, "C3", 23.2, "C2"), new("Buenos Aires", 1.01, "C3", 16.2, "C2"), new("Camet", 1.26, "C3", 36.8, "C3"),
        new("Choshi", 1.40, "C3", 43.3, "C3"), new("Crowthorne", 1.10, "C3", 37.4, "C3"), new("Fleet Hall", 1.34, "C3", 39.0, "C3"),
        new("Helsinki", 1.30, "C3", 33.3, "C3"), new("Iguazu", 1.62, "C3", 5.8, "C2"), new("Jubany", 1.87, "C3", 36.6, "C3"),
        new("Judgeford", 0.66, "C2", 19.3, "C2"), new("Kasperske Hory", 1.90, "C3", 26.0, "C3"), new("Kattesand", 1.50, "C3", 35.2, "C3"),
        new("Kopisty", 3.50, "C4", 70.7, "C4"), new("Kure Beach", 2.01, "C3", 37.9, "C3"), new("Kvarnvik", 1.80, "C3", 61.6, "C4"),
        new("Lagoas", 1.00, "C3", 26.9, "C3"), new("Los Angeles", 1.09, "C3", 21.4, "C2"), new("Madrid", 0.60, "C2", 27.7, "C3"),
        new("El Pardo", 0.50, "C2", 15.5, "C2"),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach (Site site in Sites)
        {
            yield return Check(site.Name, Metal.Zinc, site.Zinc, site.ZincCategory);
            if (site.Steel is { } steel)
            {
                yield return Check(site.Name, Metal.CarbonSteel, steel, site.SteelCategory!);
            }
        }

        yield return new PublishedCase
        {
            Id = "corrag/categories-differ",
            What = "sites where steel and zinc are of different category",
            Evidence = Evidence.FirstPrinciples(
                "counted by hand: Birkenes, Boucherville, Buenos Aires, Iguazu, Kvarnvik, Los Angeles, Madrid", Sources.CorragSites),
            Expected = 7,
            Tolerance = 0,
            Unit = "sites",
            Compute = () => Sites.Count(static site => site.Steel is { } steel
                && Ask.CategoryOfUm(site.Zinc, Metal.Zinc) != Ask.CategoryOfUm(steel, Metal.CarbonSteel)),
        };
    }

    private static PublishedCase Check(string name, Metal metal, double rate, string category) => new()
    {
        Id = $"corrag/{name.Replace(' ', '-')}-{(metal == Metal.Zinc ? "zinc" : "steel")}".ToLowerInvariant(),
        What = FormattableString.Invariant($"{name}, {(metal == Metal.Zinc ? "zinc" : "steel")} {rate} um/a"),
        Evidence = Evidence.FirstPrinciples("by the quoted bounds: " + Bounds(metal, category), Sources.CorragSites),
        Expected = (int)Enum.Parse<CorrosivityCategory>(category),
        Tolerance = 0,
        Unit = "category",
        Compute = () => Ask.CategoryOfUm(rate, metal),
        Show = Ask.CategoryName,
    };

    private static string Bounds(Metal metal, string category) => (metal, category) switch
    {
        (Metal.Zinc, "C2") => "0.1 < r <= 0.7",
        (Metal.Zinc, "C3") => "0.7 < r <= 2.1",
        (Metal.Zinc, "C4") => "2.1 < r <= 4.2",
        (Metal.Zinc, "C5") => "4.2 < r <= 8.4",
        (_, "C2") => "1.3 < r <= 25",
        (_, "C3") => "25 < r <= 50",
        (_, "C4") => "50 < r <= 80",
        _ => "80 < r <= 200",
    };

    private sealed record Site(string Name, double Zinc, string ZincCategory, double? Steel, string? SteelCategory);
}
