using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>Where the zinc stands: how fast it goes in its first year, as a range, and how that is known.</summary>
/// <remarks>Under tape only the outer face of the foil corrodes; rates are per face.</remarks>
public sealed record ZincExposure
{
    private ZincExposure(string name, RateRange firstYear, Basis basis, CorrosivityCategory? category)
    {
        this.Name = name;
        this.FirstYear = firstYear;
        this.Basis = basis;
        this.Category = category;
    }

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>First-year zinc rate, lowest and highest.</summary>
    public RateRange FirstYear { get; }

    /// <summary>How the rate is known.</summary>
    public Basis Basis { get; }

    /// <summary>The category, where the rate comes from one.</summary>
    public CorrosivityCategory? Category { get; }

    /// <summary>An atmosphere of which the corrosivity category is known; the rate is the whole range of the category.</summary>
    /// <param name="category">C1 to CX.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    public static ZincExposure FromCategory(CorrosivityCategory category) => new(
        category.ToString(), Corrosivity.RatesOf(category, Metal.Zinc), Corrosivity.BasisOf(category), category);

    /// <summary>A place where the first-year zinc rate was measured.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static ZincExposure FromMeasurement(CorrosionRate rate, string note) => FromMeasurement(rate, rate, note);

    /// <summary>A place where the first-year zinc rate was measured more than once.</summary>
    /// <param name="lowest">The lowest rate found.</param>
    /// <param name="highest">The highest rate found.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The highest rate is below the lowest.</exception>
    public static ZincExposure FromMeasurement(CorrosionRate lowest, CorrosionRate highest, string note) => new(
        "measured", new RateRange(lowest, highest), Basis.OwnExperience(note), null);
}
