using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Limits of pH, strength and hardness at which the default rules speak, against the numbers that sources name.</summary>
internal static class SiteLimitChecks
{
    internal static CheckGroup Group => new(
        "pH of what wets the zinc; strength and hardness of the steel",
        "Sources disagree on every one of these limits; each row is held against the one that the rule names. Rows that are known to disagree show what the others say.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence sheet = Evidence.From(References.ZincWaterSheet);
        yield return Limit("acid/stop", RuleIds.AcidStop, 5.5, TradeUnit.One, "pH", sheet);
        yield return Limit("alkaline/stop", RuleIds.AlkalineStop, 12.5, TradeUnit.One, "pH", sheet);
        yield return Limit("acid/warning", RuleIds.AcidWarning, 6, TradeUnit.One, "pH", Evidence.From(References.ZincHandbookWater));
        yield return Limit("acid/warning-bulletin", RuleIds.AcidWarning, 6.5, TradeUnit.One, "pH", Evidence.From(References.ZincWaterBulletin)) with
        {
            KnownDisagreement = "the bulletin wants half a pH more; two other sources ask for no more than 5.5",
        };
        yield return Limit("alkaline/stop-association", RuleIds.AlkalineStop, 12, TradeUnit.One, "pH", Evidence.From(References.ZincWaterAssociation)) with
        {
            KnownDisagreement = "the association ends at 12; the rule warns from 11 and stops at 12.5",
        };
        yield return Limit("strength", RuleIds.MaximumTensileStrength, 1100, TradeUnit.Megapascal, "MPa", Evidence.From(References.HighStrengthFasteners));
        yield return Limit("strength/sharp-rise", RuleIds.MaximumTensileStrength, 1200, TradeUnit.Megapascal, "MPa", Evidence.From(References.HighStrengthFasteners)) with
        {
            KnownDisagreement = "the same text has the sharp rise at 1200 MPa and its concern from 1100: the safer is the rule",
        };
        yield return Limit("hardness", RuleIds.MaximumHardness, 320, TradeUnit.VickersHardness, "HV", Evidence.From(References.FastenerHardness));
        yield return Limit("hardness/2018", RuleIds.MaximumHardness, 390, TradeUnit.VickersHardness, "HV", Evidence.From(References.FastenerHardnessNewer)) with
        {
            KnownDisagreement = "editions disagree: the newer allows harder steel, and was only recalled; the safer is the rule",
        };
        yield return Limit("hardness/bolts", RuleIds.MaximumHardness, 350, TradeUnit.VickersHardness, "HV", Evidence.From(References.BoltsUnderProtection)) with
        {
            KnownDisagreement = "bolts under cathodic protection are recalled to be allowed up to 350 HV; the safer is the rule",
        };
        yield return Stops("acid/at-4", "stops at pH 4, where the association has its sharp rise", new LineHazards(acidity: Acidity.FromPh(4)), Evidence.From(References.ZincWaterAssociation));
        yield return Stops("alkaline/at-13", "stops at pH 13, where zincate forms", new LineHazards(acidity: Acidity.FromPh(13)), sheet);
        yield return Stops(
            "strength/at-1250", "stops for steel of 1250 MPa", new LineHazards(tensileStrength: Pressure.FromMegapascals(1250)), Evidence.From(References.HighStrengthFasteners));
        yield return Stops("hardness/at-366", "stops for steel of 366 HV", new LineHazards(hardness: VickersHardness.FromHv(366)), Evidence.From(References.FastenerHardness));
    }

    private static PublishedCase Limit(string id, string rule, double number, TradeUnit unit, string symbol, Evidence evidence) => new()
    {
        Id = "site-limit/" + id,
        What = $"number of {rule}",
        Evidence = evidence,
        Expected = number,
        Tolerance = 0,
        Unit = symbol,
        Compute = () => RuleSet.Default[rule].Limit!.Value.In(unit),
    };

    private static PublishedCase Stops(string id, string what, LineHazards hazards, Evidence evidence) => new()
    {
        Id = "site-limit/" + id,
        What = what,
        Evidence = evidence,
        Expected = 1,
        Tolerance = 0,
        Unit = "stops",
        Compute = () => Ask.Findings(hazards).Count(static finding => finding.Severity == Severity.Stop),
    };
}
