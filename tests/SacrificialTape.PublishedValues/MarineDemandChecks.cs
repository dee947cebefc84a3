using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Current demand by depth and climate, and the class rules by region beside it.</summary>
internal static class MarineDemandChecks
{
    internal static CheckGroup Group => new(
        "Offshore current demand by depth and climate",
        "The table of an offshore code, recalled, at the surface of each band. Class rules by region, which were read, ask for other figures: both are shown where one region lies plainly in one zone. Take the higher unless the code of the job says which.",
        [.. Table(), .. Beside()]);

    private static IEnumerable<PublishedCase> Table()
    {
        (double Depth, string Name, (double Initial, double Mean, double Final)[] Rows)[] bands =
        [
            (30, "0-30", [(0.150, 0.070, 0.100), (0.170, 0.080, 0.110), (0.200, 0.100, 0.130), (0.250, 0.120, 0.170)]),
            (100, "30-100", [(0.120, 0.060, 0.080), (0.140, 0.070, 0.090), (0.170, 0.080, 0.110), (0.200, 0.100, 0.130)]),
            (300, "100-300", [(0.140, 0.070, 0.090), (0.160, 0.080, 0.110), (0.190, 0.090, 0.140), (0.220, 0.110, 0.170)]),
            (1000, "300-", [(0.180, 0.090, 0.130), (0.200, 0.100, 0.150), (0.220, 0.110, 0.170), (0.220, 0.110, 0.170)]),
        ];
        Evidence evidence = Evidence.From(References.DnvDesignDemand);
        foreach ((double depth, string name, (double Initial, double Mean, double Final)[] rows) in bands)
        {
            foreach (ClimateZone zone in Enum.GetValues<ClimateZone>())
            {
                (double initial, double mean, double final) = rows[(int)zone];
                var row = MarineDemand.Of(Length.FromMeters(depth), zone);
                yield return Case($"{name}-{zone}-initial", row.Region + ", start", initial, 1e-12, evidence, () => row.Initial.AmperesPerSquareMeter);
                yield return Case($"{name}-{zone}-mean", row.Region + ", mean", mean, 1e-12, evidence, () => row.Mean.AmperesPerSquareMeter);
                yield return Case($"{name}-{zone}-final", row.Region + ", end", final, 1e-12, evidence, () => row.Final.AmperesPerSquareMeter);
            }
        }
    }

    // Read rows of the class rules against the zone that their sea belongs to by its surface water, shallow.
    private static IEnumerable<PublishedCase> Beside()
    {
        const string Differs = "Class rules and offshore code differ; the code's figure is recalled, the zone of the region is a judgement.";
        Evidence rules = Evidence.From(References.ClassRulesProtection);
        foreach ((string id, string region, ClimateZone zone, double mean) in new[]
        {
            ("north-sea-middle", "North Sea 55 to 62 N", ClimateZone.Temperate, 0.090),
            ("gulf-and-africa", "Arabian Gulf, Africa, Brazil, China, India", ClimateZone.Tropical, 0.070),
            ("mediterranean", "Mediterranean and others", ClimateZone.SubTropical, 0.060),
        })
        {
            var row = MarineDemand.Of(Length.FromMeters(20), zone);
            PublishedCase check = Case("beside-" + id, $"{region}, mean of the class rules against {row.Region}", mean, 1e-12, rules, () => row.Mean.AmperesPerSquareMeter);
            yield return zone == ClimateZone.Tropical ? check : check with { KnownDisagreement = Differs };
        }
    }

    private static PublishedCase Case(string id, string what, double expected, double tolerance, Evidence evidence, Func<double> compute) => new()
    {
        Id = "marine-demand/" + id.ToLowerInvariant(),
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "A/m2",
        Compute = compute,
    };
}
