using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Lives with their uncertainty at the ends where the life tables speak, and hot-dip coatings by steel.</summary>
internal static class LifeSpreadChecks
{
    private const double Tail = 0.05;

    internal static CheckGroup Group => new(
        "Lives with their uncertainty: where they meet the life tables",
        "With a category's bounds read as quantiles 0.05 and 0.95, the linear law and all zinc usable, the life reached with 95 % confidence is the least of the table and that with 5 % the most. It checks percentile, closed form and category together, not the reading of the bounds, which is a choice. The table is recalled but for 85 um in C4. Hot-dip thicknesses by steel are as quoted elsewhere, held against the masses printed beside them at 7.2 g/cm3.",
        [
            .. Life(85, CorrosivityCategory.C4, 20, 40, Evidence.From(References.LifeToFirstMaintenance)),
            .. Life(140, CorrosivityCategory.C4, 33, 67, Evidence.From(Sources.LifeTable)),
            .. Life(85, CorrosivityCategory.C5, 10, 20, Evidence.From(Sources.LifeTable)),
            .. Life(200, CorrosivityCategory.C5, 24, 48, Evidence.From(Sources.LifeTable)),
            .. Life(42, CorrosivityCategory.C3, 20, 60, Evidence.From(Sources.LifeTable)),
            .. Life(200, CorrosivityCategory.CX, 8, 24, Evidence.From(Sources.LifeTable)),
            Coating(8, HotDipValue.Mean, 610), Coating(8, HotDipValue.Local, 505), Coating(4, HotDipValue.Mean, 505),
            Coating(4, HotDipValue.Local, 395), Coating(2, HotDipValue.Mean, 395), Coating(2, HotDipValue.Local, 325),
            Coating(1, HotDipValue.Mean, 325), Coating(1, HotDipValue.Local, 250),
        ]);

    private static IEnumerable<PublishedCase> Life(double um, CorrosivityCategory category, double least, double most, Evidence evidence)
    {
        foreach ((string end, double confidence, double years) in new[] { ("least", 1 - Tail, least), ("most", Tail, most) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"life-spread/{um}-um-{category}/{end}").ToLowerInvariant(),
                What = string.Create(CultureInfo.InvariantCulture, $"{um} um in {category}, reached with {100 * confidence:0} %"),
                Evidence = evidence,
                Expected = years,
                Tolerance = 0.5,
                Unit = "a",
                Compute = () => new LifeDistribution(
                    new Foil(Length.FromMicrometers(um)),
                    1,
                    new LifeUncertainty(
                        UncertainRate.FromCategory(category, Probability.FromFraction(Tail)),
                        LossGrowth.Linear,
                        UncertainUtilisation.Exactly(Utilisation.FromFraction(1)),
                        ToleranceShape.Uniform)).ReachedWith(Probability.FromFraction(confidence)).Duration.Years365,
            };
        }
    }

    private static PublishedCase Coating(double steelMm, HotDipValue value, double grams) => new()
    {
        Id = FormattableString.Invariant($"hot-dip-by-steel/{steelMm}-mm-{value}").ToLowerInvariant(),
        What = FormattableString.Invariant($"mass of the least coating ({value}) on {steelMm} mm of steel").ToLowerInvariant(),
        Evidence = Evidence.From(References.HotDipThickness, "masses of the same table"),
        Expected = grams,
        Tolerance = 2.5,
        Unit = "g/m2",
        Compute = () => 7.2 * HotDipCoating.Iso1461(Length.FromMillimeters(steelMm), value).Thickness.Micrometers,
    };
}
