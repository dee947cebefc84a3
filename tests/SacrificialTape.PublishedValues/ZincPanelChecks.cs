using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Twenty-year zinc panels: mean rate two ways, and the first-year rate behind them under the power law.</summary>
internal static class ZincPanelChecks
{
    internal static CheckGroup Group => new(
        "Twenty-year zinc panels",
        "Loss in per cent of mass is published, exposed about 1930 to 1954 in the air of that time. Half the sheet is lost from each face, so the mean rate is per cent x 0.889 mm / (2 x 20 a). The first-year rate behind it is that over 20^0.813 = 11.4219, with the recalled exponent: what the law makes of the panel, not something measured. By it State College (rural) and Key West (sea coast) are of C3, Phoenix (dry) of C2, and Altoona (industrial) of CX.",
        [.. Cases()]);

    // Per cent of mass; um a face in 20 years; mean and first year in um/a.
    private static readonly (string Site, double Percent, double Um, double Mean, double First, string Category)[] Rows =
    [
        ("Altoona", 30.7, 136.5, 6.82, 11.947, "CX"),
        ("State College", 5.0, 22.2, 1.11, 1.946, "C3"),
        ("Key West", 2.9, 12.9, 0.645, 1.129, "C3"),
        ("Phoenix", 0.8, 3.6, 0.178, 0.311, "C2"),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        var years = Duration.FromYears365(20);
        foreach (var row in Rows)
        {
            Evidence evidence = Evidence.FirstPrinciples(
                FormattableString.Invariant($"{row.Percent} % x 889 um / 2 = {row.Um} um in 20 a"), Sources.TwentyYearPanels);
            string site = row.Site.Replace(' ', '-').ToLowerInvariant();
            var loss = Length.FromMillimeters(row.Percent / 100 * 0.889 / 2);
            double digit = row.Mean < 1 ? 0.0005 : 0.005;
            yield return Case(site + "/thickness", row.Site + ", mean rate from thickness", row.Mean, digit, "um/a", evidence, () =>
                FirstYearRate.FromThicknessLoss(Metal.Zinc, loss, years, "panel").Range.Highest.MicrometersPerYear);

            // The panel weighed: 9 x 12 x 0.035 in, both faces; edges make no difference worth a digit.
            double grams = row.Percent / 100 * 9 * 12 * 0.035 * Math.Pow(2.54, 3) * 7.14;
            double squareCm = 2 * 9 * 12 * 2.54 * 2.54;
            yield return Case(site + "/mass", row.Site + ", mean rate from mass", row.Mean, digit, "um/a", evidence, () =>
                CouponChecks.Coupon(grams, squareCm, 20 * 8760, 7.14).Rate.MicrometersPerYear);
            yield return Case(site + "/first-year", row.Site + ", first year under the power law", row.First, 5e-4, "um/a",
                Evidence.FirstPrinciples(FormattableString.Invariant($"{row.Percent * 889 / 200:0.###} / 11.42187"), References.PowerLawExponents),
                () => FirstYearLoss.Under(PowerLawLoss.ZincMean, loss, years).MicrometersPerYear);
            yield return Case(site + "/category", row.Site + ", category of that", (int)Enum.Parse<CorrosivityCategory>(row.Category), 0, "category",
                Evidence.FirstPrinciples("by the bounds 0.1, 0.7, 2.1, 4.2, 8.4, 25 um/a", References.CorrosivityCategories),
                () => Ask.CategoryOfUm(FirstYearLoss.Under(PowerLawLoss.ZincMean, loss, years).MicrometersPerYear, Metal.Zinc)) with
            {
                Show = Ask.CategoryName,
            };
        }
    }

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
        {
            Id = "zinc-panel/" + id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
