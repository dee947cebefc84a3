using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>How many readings, and how they are accepted.</summary>
internal static class SamplingChecks
{
    internal static CheckGroup Group => new(
        "Thickness readings: how many, and when they are accepted",
        "Four paint documents as an article compares them. On tape they are used by choice.",
        [.. Counts(), .. Acceptance()]);

    private static IEnumerable<PublishedCase> Counts()
    {
        Evidence article = Evidence.From(References.SamplingComparison);
        (SamplingScheme Scheme, double M2, int Readings, Evidence Evidence)[] rows =
        [
            (SamplingScheme.SspcPa2, 500, 35, article), (SamplingScheme.As38943, 500, 35, article), (SamplingScheme.Iso19840, 500, 70, article), (SamplingScheme.ImoPspc, 500, 100, article),
            (SamplingScheme.SspcPa2, 100, 15, article), (SamplingScheme.As38943, 100, 15, article), (SamplingScheme.Iso19840, 100, 30, article), (SamplingScheme.ImoPspc, 100, 20, article),
            (SamplingScheme.Iso19840, 1, 5, Evidence.From(References.SamplingSmallest)),
            (SamplingScheme.Iso19840, 2, 10, article), (SamplingScheme.Iso19840, 8, 15, article), (SamplingScheme.Iso19840, 15, 20, article), (SamplingScheme.Iso19840, 25, 20, article), (SamplingScheme.Iso19840, 60, 30, article),
            (SamplingScheme.SspcPa2, 15, 10, article), (SamplingScheme.SspcPa2, 25, 15, article), (SamplingScheme.SspcPa2, 60, 15, article),
            (SamplingScheme.As38943, 15, 10, article), (SamplingScheme.As38943, 25, 15, article), (SamplingScheme.As38943, 60, 15, article),
            (SamplingScheme.ImoPspc, 10, 2, article), (SamplingScheme.ImoPspc, 20, 4, article), (SamplingScheme.ImoPspc, 30, 6, article),
            (SamplingScheme.SspcPa2, 10, 5, Evidence.From(References.SamplingPa2)), (SamplingScheme.SspcPa2, 30, 15, Evidence.From(References.SamplingPa2)), (SamplingScheme.SspcPa2, 200, 20, Evidence.From(References.SamplingPa2)),
        ];
        foreach ((SamplingScheme scheme, double m2, int readings, Evidence evidence) in rows)
        {
            yield return Case(
                FormattableString.Invariant($"{scheme}-{m2}").ToLowerInvariant(), FormattableString.Invariant($"{scheme}, {m2} m2"), evidence, readings, "readings",
                () => new SamplingCount(scheme, Area.FromSquareMeters(m2)).Readings);
        }

        yield return Case(
            "gauge-readings", "readings of the gauge for a spot of SSPC-PA 2", Evidence.From(References.SamplingPa2), 3, "readings",
            static () => new SamplingCount(SamplingScheme.SspcPa2, Area.FromSquareMeters(50)).GaugeReadingsEach);
    }

    private static IEnumerable<PublishedCase> Acceptance()
    {
        // Specified 8 to 12: spots from 6.4 to 14.4 pass, and the mean of the area lies inside 8 to 12.
        foreach ((double one, bool passes) in new[] { (6.4, true), (6.39, false), (14.4, true), (14.41, false) })
        {
            yield return Case(
                FormattableString.Invariant($"spot-{one}"), FormattableString.Invariant($"a spot of {one} mil among four of 10, specified 8 to 12"), Evidence.From(References.SamplingPa2), passes ? 1 : 0, "accepted",
                () => Spots(one) ? 1 : 0);
        }

        foreach ((string id, AcceptanceRule rule, int below, double share, bool passes) in new[]
        {
            ("80-20-at", AcceptanceRule.EightyTwenty, 20, 80, true), ("80-20-share", AcceptanceRule.EightyTwenty, 21, 80, false), ("80-20-low", AcceptanceRule.EightyTwenty, 20, 79, false),
            ("90-10-at", AcceptanceRule.NinetyTen, 10, 90, true), ("90-10-share", AcceptanceRule.NinetyTen, 11, 90, false), ("90-10-low", AcceptanceRule.NinetyTen, 10, 89.0, false),
        })
        {
            yield return Case(
                id, FormattableString.Invariant($"{rule}: {below} of 100 readings at {share} % of nominal"), Evidence.From(References.SamplingComparison), passes ? 1 : 0, "accepted",
                () => new AcceptanceByReadings(
                    Enumerable.Range(0, 100).Select(at => Length.FromMicrometers(at < below ? share : 110)), Length.FromMicrometers(100), rule, RuleSet.Default, "check").IsAccepted ? 1 : 0);
        }
    }

    private static bool Spots(double mil)
    {
        AcceptanceSpot Of(double value) => new(Enumerable.Repeat(Length.FromMils(value), 3));
        return new AcceptanceBySpots([Of(mil), Of(10), Of(10), Of(10), Of(10)], Length.FromMils(8), Length.FromMils(12), RuleSet.Default, "check").IsAccepted;
    }

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, string unit, Func<double> compute) => new()
    {
        Id = "sampling/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = 0,
        Unit = unit,
        Compute = compute,
    };
}
