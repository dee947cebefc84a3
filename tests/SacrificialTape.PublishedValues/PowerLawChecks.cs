using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>The power law of ISO 9224 with its tangent, against decimal arithmetic.</summary>
internal static class PowerLawChecks
{
    internal static CheckGroup Group => new(
        "ISO 9224:2012: power law and tangent after 20 years",
        "Exponents (means and upper values of steel, copper, aluminium and zinc) and the tangent are recalled; the numbers are exp(b ln t) and its tangent at 20 years in 50-digit decimal arithmetic of another language, typed in with ten decimals. They check the arithmetic, not the standard. The form C = A t^n was read in Feliu, Morcillo and Feliu, 1993.",
        [.. Cases()]);

    private static readonly int[] Years = [2, 5, 10, 15, 20, 0, 30, 50, 100];

    // Loss over first-year loss after 2, 5, 10, 15, 20 years; gain in a year after 20; after 30, 50, 100 years.
    private static readonly (double Exponent, double[] Values)[] Rows =
    [
        (0.523, [1.4369401765, 2.3203917477, 3.3342641276, 4.1218836487, 4.7911380842, 0.1252882609, 6.0440206932, 8.5497859113, 14.8141989564]),
        (0.575, [1.4896774631, 2.5229448226, 3.7583740429, 4.7451776256, 5.5987651097, 0.1609644969, 7.2084100787, 10.4277000168, 18.4759248619]),
        (0.667, [1.5877678619, 2.9255868341, 4.6451527522, 6.0876947771, 7.3754242534, 0.2459703989, 9.8351282420, 14.7545362190, 27.0530561616]),
        (0.726, [1.6540467369, 3.2170086093, 5.3210825927, 7.1423685141, 8.8013192991, 0.3194878906, 11.9961982047, 18.3859560158, 34.3603505437]),
        (0.728, [1.6563413227, 3.2273804444, 5.3456435940, 7.1811572460, 8.8542103810, 0.3222932579, 12.0771429596, 18.5230081170, 34.6376710103]),
        (0.807, [1.7495695298, 3.6649562401, 6.4120957659, 8.8941745038, 11.2184073742, 0.4526627375, 15.7450347496, 24.7982895006, 47.4314263780]),
        (0.813, [1.7568609365, 3.7005187881, 6.5012969034, 9.0398701783, 11.4218745661, 0.4642992011, 16.0648665772, 25.3508505994, 48.5658106550]),
        (0.873, [1.8314673728, 4.0756869027, 7.4644875841, 10.6347594062, 13.6709654652, 0.5967376426, 19.6383418908, 31.5730947419, 61.4099768698]),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        yield return Exponent("mean", 0.813, static () => PowerLawLoss.ZincMean.Exponent.Value);
        yield return Exponent("upper", 0.873, static () => PowerLawLoss.ZincUpper.Exponent.Value);
        yield return Form(3, 0.5, 16, 12, "3 x sqrt(16)");
        yield return Form(2, 0.75, 16, 16, "2 x 2^3, since 16 = 2^4");
        yield return Form(5, 1, 17, 85, "5 x 17: an exponent of 1 is no slowing");

        Evidence evidence = Evidence.ComputedElsewhere("exp(b ln t), decimal, 50 digits", References.PowerLawExponents);
        foreach ((double exponent, double[] values) in Rows)
        {
            var law = new PowerLawLoss(TimeExponent.FromValue(exponent));
            for (int i = 0; i < Years.Length; i++)
            {
                int years = Years[i];
                bool slope = years == 0;
                yield return new PublishedCase
                {
                    Id = FormattableString.Invariant($"power-law/b{exponent}/{(slope ? "slope" : $"t{years}")}"),
                    What = slope
                        ? FormattableString.Invariant($"gain of a year after 20 years, b = {exponent}")
                        : FormattableString.Invariant($"loss after {years} years over that of the first, b = {exponent}"),
                    Evidence = evidence,
                    Expected = values[i],
                    Tolerance = 1e-10,
                    Unit = "1",
                    Compute = slope
                        ? () => Ask.LossUm(law, 1, 41) - Ask.LossUm(law, 1, 40)
                        : () => Ask.LossUm(law, 1, years),
                };
            }
        }
    }

    private static PublishedCase Exponent(string name, double value, Func<double> compute) => new()
    {
        Id = "power-law/zinc-" + name,
        What = $"exponent of zinc, {name}",
        Evidence = Evidence.From(References.PowerLawExponents),
        Expected = value,
        Tolerance = 0,
        Unit = "1",
        Compute = compute,
    };

    private static PublishedCase Form(double first, double exponent, double years, double expected, string arithmetic) => new()
    {
        Id = FormattableString.Invariant($"power-law/form-a{first}-n{exponent}-t{years}"),
        What = FormattableString.Invariant($"C = A t^n with A = {first} um, n = {exponent}, t = {years} years"),
        Evidence = Evidence.FromFormula(References.PowerLawForm, arithmetic),
        Expected = expected,
        Tolerance = 1e-9,
        Unit = "um",
        Compute = () => Ask.LossUm(new PowerLawLoss(TimeExponent.FromValue(exponent)), first, years),
    };
}
