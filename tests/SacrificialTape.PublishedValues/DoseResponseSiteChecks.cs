using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Losses at four sites against the interval of the dose-response function.</summary>
internal static class DoseResponseSiteChecks
{
    internal static CheckGroup Group => new(
        "Dose-response function against four sites",
        "Observed one-year losses of ISO CORRAG sites, and climates of the same sites that are weakly recalled and of other years; chloride is set to the lowest that the function takes, 0.4 mg/(m2.d), since the sites are inland. All that can be asked is that a loss lies within -33 % / +50 %. Zinc does at all four, steel at two. That is weak support for the sulfur dioxide term and none for the chloride term.",
        [.. Cases()]);

    // T in degC, RH in %, SO2 in ug/m3, observed losses in um.
    private static readonly (string Name, double Celsius, double Percent, double Concentration, double Zinc, double Steel, bool SteelFits)[] Sites =
    [
        ("Ahtari", 3.1, 78, 6.3, 0.70, 12.8, false),
        ("Helsinki", 6.3, 78, 20.7, 1.30, 33.3, false),
        ("Kasperske Hory", 7.0, 77, 19.7, 1.90, 26.0, true),
        ("Kopisty", 9.6, 73, 83.3, 3.50, 70.7, true),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach (var site in Sites)
        {
            yield return Check(site.Name, Metal.Zinc, site.Celsius, site.Percent, site.Concentration, site.Zinc, true);
            yield return Check(site.Name, Metal.CarbonSteel, site.Celsius, site.Percent, site.Concentration, site.Steel, site.SteelFits);
        }
    }

    private static PublishedCase Check(
        string name, Metal metal, double celsius, double percent, double concentration, double observed, bool fits) => new()
        {
            Id = $"dose-response-site/{name.Replace(' ', '-')}-{(metal == Metal.Zinc ? "zinc" : "steel")}".ToLowerInvariant(),
            What = FormattableString.Invariant($"{name}, {(metal == Metal.Zinc ? "zinc" : "steel")}: observed {observed} um/a lies within the interval of the estimate"),
            Evidence = Evidence.From(Sources.SiteClimates, "losses from the list of ISO CORRAG sites"),
            Expected = 1,
            Tolerance = 0,
            Unit = "1",
            Compute = () => Within(metal, celsius, percent, concentration, observed) ? 1 : 0,
            Show = static number => number == 1 ? "within" : "outside",
            KnownDisagreement = fits ? null : "The loss is more than half above the estimate. Climate and loss are of different years, and the climate is weakly recalled: it cannot be said which of them is off.",
        };

    private static bool Within(Metal metal, double celsius, double percent, double concentration, double observed)
    {
        DepositionRate sulfur = PollutionClasses.SulfurDioxideDeposition(MassConcentration.FromMicrogramsPerCubicMeter(concentration));
        RateRange range = new DoseResponse(
            metal, DoseResponseChecks.Air(celsius, percent, sulfur.MilligramsPerSquareMeterDay, 0.4)).LogNormal.Range;
        return observed >= range.Lowest.MicrometersPerYear && observed <= range.Highest.MicrometersPerYear;
    }
}
