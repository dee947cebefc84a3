using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Salts, profile, dust and temperatures of a surface, against the numbers that sources name.</summary>
internal static class SurfaceReadinessChecks
{
    internal static CheckGroup Group => new(
        "Surface before laying",
        "Conversion of conductivity to salts (recalled), segments of profile comparators, and the limits of the default rules that a document stands behind. Most other limits of a surface are judgement or common practice, and nothing outside can be held against them.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double ml, double perMicroS) in new[] { (15.0, 6.0), (10.0, 4.0) })
        {
            yield return Case(
                FormattableString.Invariant($"salts-{ml}"), FormattableString.Invariant($"salts for 1 uS/cm in {ml} ml from 1250 mm2"),
                Evidence.From(References.SaltConductivityConversion), perMicroS, 1e-9, "mg/m2",
                () => Salts(ml, 1250, 5, 6));
        }

        yield return Case(
            "salts-si", "salts for 3 to 11 uS/cm in 15 ml from 1250 mm2", Evidence.FirstPrinciples("5 kg/(m2.S) x 15e-6 m3 x 8e-4 S/m / 1250e-6 m2 x 1e6", References.SaltConductivityConversion),
            5 * 15e-6 * 8e-4 / 1250e-6 * 1e6, 1e-9, "mg/m2", static () => Salts(15, 1250, 3, 11));
        yield return Case("salt-limit", "most salts", Evidence.From(References.SaltLimit), 50, 0, "mg/m2", static () => Number(RuleIds.MaximumSalts, TradeUnit.MilligramPerSquareMeter));
        yield return Case("salt-limit-offshore", "most salts, as recalled of offshore rules", Evidence.From(Sources.OffshoreSalts), 20, 0, "mg/m2", static () => Number(RuleIds.MaximumSalts, TradeUnit.MilligramPerSquareMeter)) with
        {
            KnownDisagreement = "offshore rules are recalled to ask 20 mg/m2; the limit that was read is the rule, and a team sets its own",
        };
        yield return Case("dust-limit", "most dust", Evidence.From(References.DustLimit), 1, 0, "rating", static () => Number(RuleIds.MaximumDustQuantity, TradeUnit.One));
        yield return Case("application-high", "lowest temperature for laying: the upper of the range", Evidence.From(References.AdhesiveApplicationGuidance), 10, 0, "degC", static () => Number(RuleIds.MinimumApplicationTemperature, TradeUnit.DegreeCelsius));
        yield return Case("application-low", "lowest temperature for laying: the lower of the range", Evidence.From(References.AdhesiveApplicationGuidance), 4, 0, "degC", static () => Number(RuleIds.MinimumApplicationTemperature, TradeUnit.DegreeCelsius)) with
        {
            KnownDisagreement = "guidance runs from 4 to 10 degC and to 15 degC; the data sheet of the tape goes before",
        };
        foreach ((ProfileComparator comparator, double[] segments) in new (ProfileComparator, double[])[] { (ProfileComparator.Grit, [25, 60, 100, 150]), (ProfileComparator.Shot, [25, 40, 70, 100]) })
        {
            for (int segment = 1; segment <= 4; segment++)
            {
                int at = segment;
                yield return Case(
                    FormattableString.Invariant($"segment-{comparator}-{at}").ToLowerInvariant(), FormattableString.Invariant($"{comparator}, segment {at}"),
                    Evidence.From(References.ProfileComparators), segments[at - 1], 0, "um", () => SurfaceProfile.SegmentHeight(comparator, at).Micrometers);
            }
        }
    }

    private static double Salts(double ml, double mm2, double before, double after) => new SaltReading(
        Volume.FromMilliliters(ml), Area.FromSquareMillimeters(mm2), ElectricConductivity.FromMicrosiemensPerCentimeter(before),
        ElectricConductivity.FromMicrosiemensPerCentimeter(after)).Salts.MilligramsPerSquareMeter;

    private static double Number(string rule, TradeUnit unit) => RuleSet.Default[rule].Limit!.Value.In(unit);

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "surface/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
