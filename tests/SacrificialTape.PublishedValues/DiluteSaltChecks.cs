using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Conductivity of dilute sodium chloride.</summary>
internal static class DiluteSaltChecks
{
    internal static CheckGroup Group => new(
        "Dilute sodium chloride: conductivity",
        "Molar conductivities as recalled, and beside them the limiting law of Onsager for a salt of two single charges at 25 degC, Lambda = Lambda0 - (60.2 + 0.229 Lambda0) sqrt(c) with Lambda0 = 126.45 S.cm2/mol (recalled too): it holds ever better as the strength falls, and lies below the table by about 1 % at 0.01 mol/l.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence recalled = Evidence.From(References.SodiumChlorideMolar);
        foreach ((double strength, double molar, double conductivity) in new[] { (0.001, 123.7, 0.0124), (0.01, 118.5, 0.1185), (0.1, 106.7, 1.067) })
        {
            yield return Case(FormattableString.Invariant($"molar-{strength}"), FormattableString.Invariant($"molar conductivity at {strength} mol/l"), molar, 0.051, "S.cm2/mol", recalled, () => Conductivity(strength) * 10 / strength);
            yield return Case(FormattableString.Invariant($"conductivity-{strength}"), FormattableString.Invariant($"conductivity at {strength} mol/l"), conductivity, conductivity * 5e-3, "S/m", recalled, () => Conductivity(strength));
        }

        foreach ((double strength, double off) in new[] { (0.0005, 0.1), (0.001, 0.1), (0.003, 0.5), (0.01, 1.5) })
        {
            double law = 126.45 - ((60.2 + (0.229 * 126.45)) * Math.Sqrt(strength));
            yield return Case(
                FormattableString.Invariant($"onsager-{strength}"), FormattableString.Invariant($"molar conductivity at {strength} mol/l by the limiting law"), Math.Round(law, 2), off, "S.cm2/mol",
                Evidence.FirstPrinciples(FormattableString.Invariant($"126.45 - 89.16 sqrt({strength}) (Onsager's slope, recalled)")), () => Conductivity(strength) * 10 / strength);
        }
    }

    private static double Conductivity(double strength) => SaltSolution.DiluteSodiumChloride(Molarity.FromMolesPerLiter(strength)).SiemensPerMeter;

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
    {
        Id = "dilute-salt/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
