using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Exposure;

/// <content>Rates indoors, and in soil by its power law.</content>
public sealed partial record FirstYearRate
{
    /// <summary>A room of a known indoor category (recalled, check before use).</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="category">IC1 to IC5, found for this metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category, or not a metal.</exception>
    public static FirstYearRate Indoors(Metal metal, IndoorCategory category) => new(
        metal,
        "indoors " + category,
        ExposureMedium.Air,
        IndoorCorrosivity.RatesOf(category, metal),
        ExposureSources.Indoor,
        concerns: [new RateConcern(RuleIds.IndoorRate)]);

    /// <summary>A room like one of a standard's examples: the whole range of the category that the example stands for.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="place">The kind of room.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such kind, or not a metal.</exception>
    public static FirstYearRate Indoors(Metal metal, IndoorPlace place)
    {
        CorrosivityCategory category = IndoorCorrosivity.CategoryOf(place);
        return new(
            metal,
            "indoors " + category,
            ExposureMedium.Air,
            Corrosivity.RatesOf(category, metal),
            ExposureSources.IndoorPlaces,
            category,
            concerns: [new RateConcern(RuleIds.IndoorExample)]);
    }

    /// <summary>
    /// The first year's loss K of the power law in soil x = K t^n: 25 um of zinc, 45 um of carbon steel. The constants are
    /// weakly recalled: they stand for an order of size. The years after are in <c>PowerLawLoss.ZincInSoil</c>.
    /// </summary>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a metal.</exception>
    public static FirstYearRate InSoilByPowerLaw(Metal metal)
    {
        CorrosionRate rate = Known(metal) == Metal.Zinc ? SoilDesign.PowerZinc : SoilDesign.PowerSteel;
        return new(
            metal,
            "soil, power law",
            ExposureMedium.Soil,
            new RateRange(rate, rate),
            ExposureSources.SoilPowerConstants,
            concerns: [new RateConcern(RuleIds.BuriedMetal), new RateConcern(RuleIds.SoilConstants), new RateConcern(RuleIds.SoilKind)],
            soil: SoilModel.PowerLaw);
    }
}
