using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.PublishedValues;

/// <summary>Wet service temperatures at which the default rules speak, against the temperatures that sources name.</summary>
internal static class TemperatureLimitChecks
{
    internal static CheckGroup Group => new(
        "Polarity reversal and the temperature limit of zinc in water",
        "Reversal at 60 degC and above was read, and seen in tanks at 60 to 82 degC; another source says 70 degC. The lower figure for anodes is recalled. That no finding comes at lower temperatures is not a statement of any source.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence reversal = Evidence.From(References.PolarityReversal);
        Evidence anode = Evidence.From(References.ZincAnodeTemperature);
        yield return Number("stop/limit", "number of the stop", RuleIds.WetTemperatureStop, 60, reversal);
        yield return Number("warning/limit", "number of the warning", RuleIds.WetTemperatureWarning, 50, anode);
        yield return Found("stop/at-60", "stop at 60 degC, wet", RuleIds.WetTemperatureStop, 60, reversal);
        yield return Found("stop/at-82", "stop at 82 degC, wet", RuleIds.WetTemperatureStop, 82, reversal);
        yield return Found("stop/at-60-in-fahrenheit", "stop at 140 degF, wet", RuleIds.WetTemperatureStop, (140.0 - 32) * 5 / 9, reversal);
        yield return Found("warning/at-51", "warning at 51 degC, wet", RuleIds.WetTemperatureWarning, 51, anode);
    }

    private static PublishedCase Number(string id, string what, string rule, double degrees, Evidence evidence) => new()
    {
        Id = "temperature/" + id,
        What = what,
        Evidence = evidence,
        Expected = degrees,
        Tolerance = 0,
        Unit = "degC",
        Compute = () => RuleSet.Default[rule].Limit!.Value.In(TradeUnit.DegreeCelsius),
    };

    private static PublishedCase Found(string id, string what, string rule, double degrees, Evidence evidence) => new()
    {
        Id = "temperature/" + id,
        What = what,
        Evidence = evidence,
        Expected = 1,
        Tolerance = 0,
        Unit = "finding",
        Compute = () => RuleSet.Default[rule].Judge(new Measure(degrees, TradeUnit.DegreeCelsius), "check") is null ? 0 : 1,
        Show = static found => found == 1 ? "found" : "nothing",
    };
}
