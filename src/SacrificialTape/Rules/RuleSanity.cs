using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>Which limits cannot be: numbers that their quantity never takes, and pairs that contradict each other.</summary>
internal static class RuleSanity
{
    // Each first limit must not be above its second.
    private static readonly (string Lower, string Upper)[] Ordered =
    [
        (RuleIds.MinimumFoilThickness, RuleIds.MaximumFoilThickness),
        (RuleIds.MinimumStripWidth, RuleIds.MaximumStripWidth),
        (RuleIds.WetTemperatureWarning, RuleIds.WetTemperatureStop),
        (RuleIds.AcidStop, RuleIds.AcidWarning),
        (RuleIds.AcidWarning, RuleIds.AlkalineWarning),
        (RuleIds.AlkalineWarning, RuleIds.AlkalineStop),
        (RuleIds.MinimumApplicationTemperature, RuleIds.MaximumLayingTemperature),
    ];

    /// <summary>Why a limit cannot be, or null.</summary>
    internal static string? Impossible(Rule rule)
    {
        if (rule.Limit is not { } limit)
        {
            return null;
        }

        (double low, double high) = Range(rule.Id, limit.Key.Unit);
        return limit.Key.Number < low || limit.Key.Number > high
            ? $"A limit of {MeasureText.Exact(limit)} cannot be: expected {Range(low, high, limit.Key.Unit)}."
            : null;
    }

    /// <summary>The pairs of rules whose limits contradict each other.</summary>
    internal static IEnumerable<(Rule Lower, Rule Upper)> Contradictions(RuleSet rules)
    {
        foreach ((string lower, string upper) in Ordered)
        {
            if (rules.TryGet(lower, out Rule? low) && rules.TryGet(upper, out Rule? high)
                && low.Limit is { } least && high.Limit is { } most
                && least.Key.Unit == most.Key.Unit && least.Key.Number > most.Key.Number)
            {
                yield return (low, high);
            }
        }
    }

    private static (double Low, double High) Range(string id, TradeUnit unit) => id switch
    {
        RuleIds.UsableFraction => (double.Epsilon, 1),
        RuleIds.AcidStop or RuleIds.AcidWarning or RuleIds.AlkalineWarning or RuleIds.AlkalineStop => (0, 14),
        RuleIds.MinimumBareRatio => (0, 10_000),
        RuleIds.MaximumSpiralAngle => (0, 90),
        _ => unit switch
        {
            TradeUnit.DegreeCelsius => (-273.15, double.MaxValue),
            TradeUnit.Volt => (double.MinValue, double.MaxValue),
            _ => (0, double.MaxValue),
        },
    };

    private static string Range(double low, double high, TradeUnit unit) => (low, high) switch
    {
        (double.Epsilon, _) => $"more than 0 and at most {MeasureText.Exact(new Measure(high, unit))}",
        (_, double.MaxValue) => $"at least {MeasureText.Exact(new Measure(low, unit))}",
        _ => $"{MeasureText.Exact(new Measure(low, unit))} to {MeasureText.Exact(new Measure(high, unit))}",
    };
}
