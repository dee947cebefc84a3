using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>Indoor categories and the yearly loss of mass that bounds them (ISO 11844-1:2006, recalled, check before use).</summary>
/// <remarks>
/// They split C1 and C2 of the open air: IC3 ends where C1 ends and IC5 where C2 ends, for zinc and for steel. The standard
/// states mass; thickness follows at 7.14 g/cm3 for zinc and 7.86 for carbon steel.
/// </remarks>
public static class IndoorCorrosivity
{
    /// <summary>The yearly losses of a category; the lower bound itself belongs to the category below.</summary>
    /// <param name="category">IC1 to IC5.</param>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category, or not a metal.</exception>
    [BasisOf(typeof(ExposureSources), nameof(ExposureSources.Indoor))]
    public static RateRange RatesOf(IndoorCategory category, Metal metal)
    {
        ReadOnlySpan<double> upper = UpperMilligrams(metal);
        int index = category is >= IndoorCategory.IC1 and <= IndoorCategory.IC5
            ? (int)category - 1
            : throw new ArgumentOutOfRangeException(nameof(category), category, "Not an indoor category; IC1 to IC5 are.");
        return new RateRange(Rate(index == 0 ? 0 : upper[index - 1], metal), Rate(upper[index], metal));
    }

    /// <summary>The category of a yearly loss that was measured as mass; upper bounds are included.</summary>
    /// <param name="loss">Loss in a year.</param>
    /// <param name="metal">The metal it was measured on.</param>
    /// <returns>Null above IC5: the air is not of low corrosivity, take <see cref="Corrosivity.CategoryOf(MassLossRate, Metal)"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a metal.</exception>
    [BasisOf(typeof(ExposureSources), nameof(ExposureSources.Indoor))]
    public static IndoorCategory? CategoryOf(MassLossRate loss, Metal metal)
    {
        ReadOnlySpan<double> upper = UpperMilligrams(metal);
        for (int i = 0; i < upper.Length; i++)
        {
            if (WithAllowance.AtMost(loss.GramsPerSquareMeterYear * 1000, upper[i]))
            {
                return (IndoorCategory)(i + 1);
            }
        }

        return null;
    }

    /// <summary>The category of the open air that a standard gives for a kind of room, as an example.</summary>
    /// <param name="place">The kind of room.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such kind.</exception>
    public static CorrosivityCategory CategoryOf(IndoorPlace place) => place switch
    {
        IndoorPlace.HeatedAndClean => CorrosivityCategory.C1,
        IndoorPlace.UnheatedWithCondensation => CorrosivityCategory.C2,
        IndoorPlace.HumidProduction => CorrosivityCategory.C3,
        IndoorPlace.PoolOrChemicalPlant => CorrosivityCategory.C4,
        IndoorPlace.AlwaysCondensingAndPolluted => CorrosivityCategory.C5,
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Not a room that the examples name."),
    };

    // mg/(m2.a), recalled.
    private static ReadOnlySpan<double> UpperMilligrams(Metal metal) => metal switch
    {
        Metal.Zinc => [50, 250, 700, 2500, 5000],
        Metal.CarbonSteel => [70, 1000, 10_000, 70_000, 200_000],
        _ => throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here."),
    };

    private static CorrosionRate Rate(double milligrams, Metal metal) => MassLossRate.FromGramsPerSquareMeterYear(milligrams / 1000)
        .ToCorrosionRate(Density.FromKilogramsPerCubicMeter(
            metal == Metal.Zinc ? Tapes.Zinc.KilogramsPerCubicMeter : CorrosivityTable.SteelKilogramsPerCubicMeter));
}
