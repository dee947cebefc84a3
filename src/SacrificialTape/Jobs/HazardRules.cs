using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Jobs;

/// <summary>The rule that each hazard of a line brings up.</summary>
internal static class HazardRules
{
    // What makes a life mere arithmetic. Hot work and strong steel are a danger, but the zinc lasts as it does.
    private static readonly HashSet<string> Voiding = new(
        Enum.GetValues<SiteHazard>().Where(static hazard => hazard != SiteHazard.HotWorkPlanned).Select(RuleOf).Concat(
        [
            RuleIds.AcidWarning, RuleIds.AcidStop, RuleIds.AlkalineWarning, RuleIds.AlkalineStop,
            RuleIds.WetTemperatureWarning, RuleIds.WetTemperatureStop, RuleIds.WetTemperatureUnknown,
        ]),
        StringComparer.Ordinal);

    internal static bool VoidsLife(string ruleId) => Voiding.Contains(ruleId);

    internal static IEnumerable<Finding> Judge(LineHazards hazards, RuleSet rules, string subject)
    {
        foreach (SiteHazard hazard in hazards.Present)
        {
            yield return rules[RuleOf(hazard)].State(subject);
        }

        if (hazards.Acidity is { } acidity)
        {
            // The stop says all that the warning says.
            var ph = new Measure(acidity.Ph, TradeUnit.One);
            Finding? found = rules[RuleIds.AcidStop].Judge(ph, subject)
                ?? rules[RuleIds.AlkalineStop].Judge(ph, subject)
                ?? rules[RuleIds.AcidWarning].Judge(ph, subject)
                ?? rules[RuleIds.AlkalineWarning].Judge(ph, subject);
            if (found is not null)
            {
                yield return found;
            }
        }

        if (hazards.Strength is { } strength && rules[RuleIds.MaximumTensileStrength].Judge(strength, subject) is { } strong)
        {
            yield return strong;
        }

        if (hazards.Hardness is { } hardness
            && rules[RuleIds.MaximumHardness].Judge(new Measure(hardness.Hv, TradeUnit.VickersHardness), subject) is { } hard)
        {
            yield return hard;
        }
    }

    internal static string RuleOf(SiteHazard hazard) => hazard switch
    {
        SiteHazard.ReversingWater => RuleIds.ReversingWater,
        SiteHazard.CopperCouple => RuleIds.CopperCouple,
        SiteHazard.StainlessContact => RuleIds.StainlessContact,
        SiteHazard.CopperEarthing => RuleIds.CopperEarthing,
        SiteHazard.CathodicProtection => RuleIds.CathodicProtection,
        SiteHazard.StrayCurrent => RuleIds.StrayCurrent,
        SiteHazard.UnderInsulation => RuleIds.UnderInsulation,
        SiteHazard.SweatingLine => RuleIds.SweatingLine,
        SiteHazard.ShelteredUnderside => RuleIds.ShelteredUnderside,
        SiteHazard.ClampCrevice => RuleIds.ClampCrevice,
        SiteHazard.Buried => RuleIds.BuriedTape,
        SiteHazard.Immersed => RuleIds.ImmersedTape,
        SiteHazard.AlkalineContact => RuleIds.AlkalineContact,
        SiteHazard.HotWorkPlanned => RuleIds.HotWorkPlanned,
        _ => throw new ArgumentOutOfRangeException(nameof(hazard), hazard, "Not a hazard known here."),
    };
}
