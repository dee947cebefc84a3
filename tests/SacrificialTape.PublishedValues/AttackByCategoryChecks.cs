using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>Attack at the upper bound of each category, from category through rate and law to micrometres.</summary>
internal static class AttackByCategoryChecks
{
    internal static CheckGroup Group => new(
        "ISO 9224:2012, Annex A: attack at the upper bound of a category",
        "One row for steel at 25 um/a is recalled from the annex. The rest is arithmetic on recalled exponents: the bound times exp(b ln t) in 50-digit decimal arithmetic of another language.",
        [.. Cases()]);

    // Attack in um after 2, 5, 10, 15 and 20 years.
    private static readonly (string Category, double[] Um)[] ZincMean =
    [
        ("C1", [0.17568609, 0.37005188, 0.65012969, 0.90398702, 1.14218746]),
        ("C2", [1.22980266, 2.59036315, 4.55090783, 6.32790912, 7.99531220]),
        ("C3", [3.68940797, 7.77108945, 13.65272350, 18.98372737, 23.98593659]),
        ("C4", [7.37881593, 15.54217891, 27.30544699, 37.96745475, 47.97187318]),
        ("C5", [14.75763187, 31.08435782, 54.61089399, 75.93490950, 95.94374636]),
        ("CX", [43.92152341, 92.51296970, 162.53242259, 225.99675446, 285.54686415]),
    ];

    private static readonly (string Category, double[] Um)[] ZincUpper =
    [
        ("C3", [3.84608148, 8.55894250, 15.67542393, 22.33299475, 28.70902748]),
        ("C4", [7.69216297, 17.11788499, 31.35084785, 44.66598951, 57.41805495]),
        ("C5", [15.38432593, 34.23576998, 62.70169571, 89.33197901, 114.83610991]),
        ("CX", [45.78668432, 101.89217257, 186.61218960, 265.86898515, 341.77413663]),
    ];

    private static readonly (string Category, double[] Um)[] SteelMean =
    [
        ("C1", [1.86802223, 3.01650927, 4.33454337, 5.35844874, 6.22847951]),
        ("C2", [35.92350441, 58.00979369, 83.35660319, 103.04709122, 119.77845211]),
        ("C3", [71.84700883, 116.01958739, 166.71320638, 206.09418244, 239.55690421]),
        ("C4", [114.95521412, 185.63133982, 266.74113021, 329.75069190, 383.29104674]),
        ("C5", [287.38803531, 464.07834955, 666.85282553, 824.37672975, 958.22761684]),
        ("CX", [1005.85812358, 1624.27422341, 2333.98488934, 2885.31855412, 3353.79665894]),
    ];

    private static readonly int[] Years = [2, 5, 10, 15, 20];

    private static readonly PowerLawLoss Steel = new(TimeExponent.FromValue(0.523));

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. RecalledSteel(),
        .. Table("zinc, mean exponent", "zinc-mean", Metal.Zinc, PowerLawLoss.ZincMean, ZincMean),
        .. Table("zinc, upper exponent", "zinc-upper", Metal.Zinc, PowerLawLoss.ZincUpper, ZincUpper),
        .. Table("steel, mean exponent", "steel-mean", Metal.CarbonSteel, Steel, SteelMean),
    ];

    private static IEnumerable<PublishedCase> RecalledSteel()
    {
        foreach ((int years, double um) in new[] { (1, 25.0), (2, 36), (5, 58), (10, 83), (15, 103), (20, 120) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"attack/steel-25-um/t{years}"),
                What = FormattableString.Invariant($"steel at 25 um/a, {years} year(s), b = 0.523"),
                Evidence = Evidence.From(Sources.MaximumAttackOfSteel),
                Expected = um,
                Tolerance = 0.5,
                Unit = "um",
                Compute = () => Ask.LossUm(Steel, 25, years),
            };
        }
    }

    private static IEnumerable<PublishedCase> Table(
        string what, string id, Metal metal, PowerLawLoss law, (string Category, double[] Um)[] rows)
    {
        foreach ((string name, double[] um) in rows)
        {
            for (int i = 0; i < Years.Length; i++)
            {
                int years = Years[i];
                yield return new PublishedCase
                {
                    Id = FormattableString.Invariant($"attack/{id}-{name}/t{years}").ToLowerInvariant(),
                    What = FormattableString.Invariant($"{what}, upper bound of {name}, {years} years"),
                    Evidence = Evidence.ComputedElsewhere("bound x exp(b ln t), decimal, 50 digits", References.PowerLawExponents),
                    Expected = um[i],
                    Tolerance = 1e-8,
                    Unit = "um",
                    Compute = () => Ask.LossUm(
                        law,
                        Corrosivity.RatesOf(Enum.Parse<CorrosivityCategory>(name), metal).Highest.MicrometersPerYear,
                        years),
                };
            }
        }
    }
}
