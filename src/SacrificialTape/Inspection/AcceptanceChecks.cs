using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>Readings and spots against their rules; shares in per cent.</summary>
internal static class AcceptanceChecks
{
    internal static IEnumerable<Finding?> Readings(
        AcceptanceRule rule, double[] um, double nominal, StoredNumber most, SamplingCount? wanted, RuleSet rules, string subject)
    {
        if (wanted is not null && um.Length < wanted.Readings)
        {
            yield return rules[RuleIds.TooFewReadings].State(
                $"{subject}, {wanted.SchemeName}", new Measure(um.Length, TradeUnit.One), new Measure(wanted.Readings, TradeUnit.One));
        }

        double low = um.Min() / nominal * 100;
        double below = um.Count(one => WithAllowance.Below(one, nominal)) * 100.0 / um.Length;
        if (rule == AcceptanceRule.EightyTwenty)
        {
            yield return Percent(rules, RuleIds.EightyTwentyMean, um.Average() / nominal * 100, subject);
            yield return Percent(rules, RuleIds.EightyTwentyLeast, low, subject);
            yield return Percent(rules, RuleIds.EightyTwentyShare, below, subject);
        }
        else
        {
            yield return Percent(rules, RuleIds.NinetyTenLeast, low, subject);
            yield return Percent(rules, RuleIds.NinetyTenShare, below, subject);
        }

        if (most.IsSet && WithAllowance.Above(um.Max(), most.Bare))
        {
            yield return rules[RuleIds.ThicknessAboveMost].State(
                subject, new Measure(um.Max(), TradeUnit.Micrometer), new Measure(most.Bare, TradeUnit.Micrometer));
        }
    }

    internal static IEnumerable<Finding?> Spots(ValueList<AcceptanceSpot> spots, double least, double most, RuleSet rules, string subject)
    {
        if (spots.Count < 5)
        {
            yield return rules[RuleIds.TooFewReadings].State(
                $"{subject}, SSPC-PA 2", new Measure(spots.Count, TradeUnit.One), new Measure(5, TradeUnit.One));
        }

        double mean = spots.Average(static spot => spot.MeanUm);
        var measured = new Measure(mean, TradeUnit.Micrometer);
        if (WithAllowance.Below(mean, least))
        {
            yield return rules[RuleIds.AreaMeanOutside].State(subject, measured, new Measure(least, TradeUnit.Micrometer));
        }
        else if (WithAllowance.Above(mean, most))
        {
            yield return rules[RuleIds.AreaMeanOutside].State(subject, measured, new Measure(most, TradeUnit.Micrometer));
        }

        yield return Percent(rules, RuleIds.SpotLeast, spots.Min(static spot => spot.MeanUm) / least * 100, subject);
        yield return Percent(rules, RuleIds.SpotMost, spots.Max(static spot => spot.MeanUm) / most * 100, subject);
    }

    private static Finding? Percent(RuleSet rules, string rule, double percent, string subject) =>
        rules[rule].Judge(new Measure(percent, TradeUnit.Percent), subject);
}
