using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>Corrosivity categories and the first-year rates that bound them.</summary>
public static class Corrosivity
{
    /// <summary>The first-year rates of a category; the lower bound itself belongs to the category below.</summary>
    /// <param name="category">C1 to CX.</param>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    [BasisOf(typeof(ExposureSources), nameof(ExposureSources.Categories))]
    public static RateRange RatesOf(CorrosivityCategory category, Metal metal)
    {
        ReadOnlySpan<double> upper = CorrosivityTable.UpperMicrometersPerYear(metal);
        int index = IndexOf(category);
        return new RateRange(
            CorrosionRate.FromMicrometersPerYear(index == 0 ? 0 : upper[index - 1]),
            CorrosionRate.FromMicrometersPerYear(upper[index]));
    }

    /// <summary>The category of a rate that was measured as thickness; upper bounds are included.</summary>
    /// <param name="firstYear">The first-year rate.</param>
    /// <param name="metal">The metal it was measured on.</param>
    /// <returns>Null above CX: the scheme ends there, though such rates occur.</returns>
    [BasisOf(typeof(ExposureSources), nameof(ExposureSources.Categories))]
    public static CorrosivityCategory? CategoryOf(CorrosionRate firstYear, Metal metal) =>
        Find(CorrosivityTable.UpperMicrometersPerYear(metal), firstYear.MicrometersPerYear);

    /// <summary>The category of a rate that was measured as mass; upper bounds are included.</summary>
    /// <remarks>The standard rounds its two columns apart: near a bound the unit of the measurement decides.</remarks>
    /// <param name="firstYear">The first-year rate.</param>
    /// <param name="metal">The metal it was measured on.</param>
    /// <returns>Null above CX: the scheme ends there, though such rates occur.</returns>
    [BasisOf(typeof(ExposureSources), nameof(ExposureSources.Categories))]
    public static CorrosivityCategory? CategoryOf(MassLossRate firstYear, Metal metal) =>
        Find(CorrosivityTable.UpperGramsPerSquareMeterYear(metal), firstYear.GramsPerSquareMeterYear);

    /// <summary>On what the bounds of a category rest.</summary>
    /// <param name="category">C1 to CX.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    public static Basis BasisOf(CorrosivityCategory category) =>
        IndexOf(category) == 5 ? ExposureSources.Extreme : ExposureSources.Categories;

    /// <summary>On what the bounds of a category in um/a rest, metal by metal.</summary>
    /// <param name="category">C1 to CX.</param>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    public static Basis BasisOf(CorrosivityCategory category, Metal metal) =>
        IndexOf(category) == 5 && metal == Metal.CarbonSteel ? ExposureSources.ExtremeSteel : BasisOf(category);

    private static CorrosivityCategory? Find(ReadOnlySpan<double> upper, double rate)
    {
        for (int i = 0; i < upper.Length; i++)
        {
            if (WithAllowance.AtMost(rate, upper[i]))
            {
                return (CorrosivityCategory)(i + 1);
            }
        }

        return null;
    }

    private static int IndexOf(CorrosivityCategory category) => category is >= CorrosivityCategory.C1 and <= CorrosivityCategory.CX
        ? (int)category - 1
        : throw new ArgumentOutOfRangeException(nameof(category), category, "Not a corrosivity category; C1 to C5 and CX are.");
}
