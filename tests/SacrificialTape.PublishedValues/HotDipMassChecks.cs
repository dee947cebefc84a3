using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Pairs of thickness and mass of hot-dip coatings, which convert at 7.2 g/cm3.</summary>
internal static class HotDipMassChecks
{
    internal static CheckGroup Group => new(
        "ISO 1461:2009: thickness and mass of hot-dip coatings",
        "As quoted elsewhere. By convention at 7.2 g/cm3 and rounded to 5 g/m2, hence the tolerance. It checks the conversion with a density of the user's own, both for a loss and for a foil.",
        [.. Cases()]);

    private static readonly (double Um, double Grams)[] Pairs =
        [(35, 250), (45, 325), (55, 395), (60, 430), (70, 505), (80, 575), (85, 610)];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double um, double grams) in Pairs)
        {
            yield return Case(
                FormattableString.Invariant($"loss-{um}-um"), FormattableString.Invariant($"{um} um as a loss"), grams,
                () => CorrosionRate.FromMicrometersPerYear(um).ToMassLoss(Density.FromGramsPerCubicCentimeter(7.2)).GramsPerSquareMeterYear);
            yield return Case(
                FormattableString.Invariant($"foil-{um}-um"), FormattableString.Invariant($"{um} um as a foil, 1 m2"), grams,
                () => Ask.Stock(1000, um, 7.2).ZincMass(Length.FromMeters(1)).Kilograms * 1000);
        }
    }

    private static PublishedCase Case(string id, string what, double grams, Func<double> compute) => new()
    {
        Id = "hot-dip-mass/" + id,
        What = what,
        Evidence = Evidence.From(Sources.HotDipCoatings),
        Expected = grams,
        Tolerance = 2.5,
        Unit = "g/m2",
        Compute = compute,
    };
}
