using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Contact;

/// <summary>Voltage lost held against what drives the current.</summary>
internal static class VoltageRules
{
    internal static IEnumerable<Finding> Judge(double lostV, DrivingVoltage driving, AdhesiveResistance? adhesive, RuleSet rules, string subject)
    {
        double volts = UnitConversions.Volts(driving.Voltage);
        if (volts <= 0)
        {
            yield return rules[RuleIds.NoDrivingVoltage].State(subject, new Measure(volts, TradeUnit.Volt));
        }
        else if (rules[RuleIds.MaximumVoltageShare].Judge(
            new Measure(VoltageKernel.SharePercent(lostV, volts, default(NoSteps)), TradeUnit.Percent), subject) is { } share)
        {
            yield return share;
        }

        if (adhesive?.State == AdhesiveState.Fresh)
        {
            yield return rules[RuleIds.FreshAdhesive].State(subject);
        }
    }
}
