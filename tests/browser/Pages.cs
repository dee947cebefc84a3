using System.Globalization;
using SacrificialTape.Reports;
using SacrificialTape.Reports.Tests;
using SacrificialTape.SiteConditions;

namespace SacrificialTape.Browser.Tests;

/// <summary>Pages of an invented job as readers of several countries get them, and every kind of picture.</summary>
internal static class Pages
{
    internal static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["metric"] = new JobPack(Samples.Estimate()).ToHtml(),
        ["US customary, with workings"] = new JobPack(
            Samples.Estimate(), new JobPackOptions { Units = ReportUnits.UsCustomary, Culture = CultureInfo.GetCultureInfo("en-US"), WithWorkings = true }).ToHtml(),
        ["German, with thickness readings"] = new JobPack(
            Samples.Estimate("Anleger"), new JobPackOptions { Culture = CultureInfo.GetCultureInfo("de-DE"), ThicknessSampling = SamplingScheme.Iso19840 }).ToHtml(),
    };

    internal static IReadOnlyDictionary<string, Picture> Pictures { get; } = new Dictionary<string, Picture>(StringComparer.Ordinal)
    {
        ["spiral"] = Picture.OfLay(Samples.Spiral),
        ["rings over windows"] = Picture.OfLay(Samples.Rings, WindowPlan.For(Samples.Rings, RuleSet.Default)),
        ["bend"] = Picture.OfBend(Samples.Bend),
        ["gores"] = Picture.OfGores(new GoreLay(HemisphericalHead.FromOutside(Samples.Mm(1000), Samples.Mm(40)), Samples.Stock(120), Samples.Mm(15))),
        ["life"] = Picture.OfLife(Samples.Estimate().Lines[0].Life, Samples.FifteenYears),
        ["patch"] = Picture.OfPatch(Patch()),
        ["work"] = Picture.OfWork(Work()),
    };

    private static OvalPatch Patch() =>
        OvalPatch.Smallest(CutOut.Rectangle(Length.FromMillimeters(80), Length.FromMillimeters(30)), Length.FromMillimeters(5), Length.FromMillimeters(5));

    private static WorkWindows Work()
    {
        var start = new DateTimeOffset(2026, 5, 14, 6, 0, 0, TimeSpan.FromHours(2));
        var air = new MoistAir(Temperature.FromDegreesCelsius(16), RelativeHumidity.FromPercent(60));
        return new WorkWindows(
            new SiteLog(Enumerable.Range(0, 24).Select(hour => new SiteHour(start.AddHours(hour), air, Temperature.FromDegreesCelsius(20 - (hour / 2.0)), rain: hour == 9))),
            RuleSet.Default,
            "tank");
    }
}
