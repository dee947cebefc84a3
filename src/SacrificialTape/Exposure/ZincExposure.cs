using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Exposure;

/// <summary>Where the zinc stands: how fast it goes in its first year, as a range, and how that is known.</summary>
/// <remarks>Under tape only the outer face of the foil corrodes; rates are per face.</remarks>
public sealed record ZincExposure
{
    private ZincExposure(FirstYearRate rate) => this.Rate = rate;

    /// <summary>The first-year rate with all that is known of it.</summary>
    public FirstYearRate Rate { get; }

    /// <summary>A short name for tables.</summary>
    public string Name => this.Rate.Name;

    /// <summary>First-year zinc rate, lowest and highest.</summary>
    public RateRange FirstYear => this.Rate.Range;

    /// <summary>How the rate is known.</summary>
    public Basis Basis => this.Rate.Basis;

    /// <summary>The category, where the rate comes from one.</summary>
    public CorrosivityCategory? Category => this.Rate.Category;

    /// <summary>Middle and s of a log-normal error, where the source gives them.</summary>
    public LogNormalRate? LogNormal => this.Rate.LogNormal;

    /// <summary>An exposure whose first-year rate comes from anywhere: the air of the site, a coupon, water, soil.</summary>
    /// <param name="rate">A rate of zinc.</param>
    /// <exception cref="ArgumentException">The rate is that of another metal.</exception>
    public static ZincExposure From(FirstYearRate rate)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return rate.Metal == Metal.Zinc
            ? new(rate)
            : throw new ArgumentException("An exposure of zinc needs a rate of zinc; this one is of carbon steel.", nameof(rate));
    }

    /// <summary>An atmosphere of which the corrosivity category is known; the rate is the whole range of the category.</summary>
    /// <param name="category">C1 to CX.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    public static ZincExposure FromCategory(CorrosivityCategory category) => new(FirstYearRate.FromCategory(Metal.Zinc, category));

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
    public static ZincExposure FromMeasurement(CorrosionRate lowest, CorrosionRate highest, string note) =>
        new(FirstYearRate.FromMeasurement(Metal.Zinc, lowest, highest, note));

    /// <summary>What must be said of the rate wherever it is used.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject) => this.Rate.Judge(rules, subject);
}
