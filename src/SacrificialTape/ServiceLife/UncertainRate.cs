using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The first-year rate of a place with a log-normal error, and how the error was read.</summary>
/// <remarks>
/// Median more than zero; s from 0.01 to 3. A rate known to better than 1 % has no place here: give it to
/// <see cref="LifeEstimate"/>.
/// </remarks>
public sealed record UncertainRate : IHasWorkings
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;
    private readonly StoredNumber below;

    private UncertainRate(string name, LogNormalRate rate, Basis basis, StoredNumber lowest = default, StoredNumber highest = default, StoredNumber below = default)
    {
        AcceptedRange.Above(0, "um/a").Check(rate.Median.MicrometersPerYear, nameof(rate));
        AcceptedRange.Between(0.01, 3, string.Empty).Noting("s of ln r").Check(rate.Spread.Value, nameof(rate));
        this.Name = name;
        this.LogNormal = rate;
        this.Basis = basis;
        this.lowest = lowest;
        this.highest = highest;
        this.below = below;
    }

    /// <summary>Where it comes from and how it was read, for tables.</summary>
    public string Name { get; }

    /// <summary>Median, and s as one standard deviation of ln r.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.MedianFromBounds))]
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.SpreadFromBounds))]
    public LogNormalRate LogNormal { get; }

    /// <summary>How the rate is known.</summary>
    public Basis Basis { get; }

    internal double Median => this.LogNormal.Median.MicrometersPerYear;

    internal double Sigma => this.LogNormal.Spread.Value;

    /// <summary>A rate by its median and s, s taken as one standard deviation of ln r (a judgement: no text that was read says so).</summary>
    /// <param name="rate">Median and s.</param>
    /// <param name="basis">How they are known.</param>
    /// <exception cref="ArgumentOutOfRangeException">Median or s is outside its range.</exception>
    public static UncertainRate Of(LogNormalRate rate, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return new("median and s", rate, basis);
    }

    /// <summary>The error that comes with an exposure, for instance by dose-response.</summary>
    /// <param name="exposure">An exposure that states median and s.</param>
    /// <exception cref="ArgumentException">The exposure states no error: say how its range is to be read, with <see cref="FromBounds"/>.</exception>
    public static UncertainRate From(ZincExposure exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        return exposure.LogNormal is { } rate
            ? new(exposure.Name, rate, exposure.Basis)
            : throw new ArgumentException("This exposure states no log-normal error. Say how its range is to be read: UncertainRate.FromBounds.", nameof(exposure));
    }

    /// <summary>
    /// A rate known by two bounds, taken as quantiles: the stated share of places lies below the lower, and as large a share
    /// above the upper. That is a choice: a category says only that the rate lies between its bounds.
    /// </summary>
    /// <param name="bounds">Lower and upper; the lower more than zero.</param>
    /// <param name="below">The share below the lower bound, more than 0 and less than 0.5.</param>
    /// <param name="basis">How the bounds are known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lower bound is zero, the share is outside its range, or s comes out outside its range.</exception>
    public static UncertainRate FromBounds(RateRange bounds, Probability below, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return Between("bounds", bounds, below, basis);
    }

    /// <summary>The whole range of a category, its bounds taken as quantiles: see <see cref="FromBounds"/>.</summary>
    /// <param name="category">C2 to CX; C1 has no lower bound.</param>
    /// <param name="below">The share below the lower bound, more than 0 and less than 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The category is C1 or none, or the share is outside its range.</exception>
    public static UncertainRate FromCategory(CorrosivityCategory category, Probability below) => Between(
        category.ToString(), Corrosivity.RatesOf(category, Metal.Zinc), below, Corrosivity.BasisOf(category, Metal.Zinc));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        if (this.below.IsSet)
        {
            _ = SpreadKernel.FromBounds(this.lowest.Bare, this.highest.Bare, this.below.Bare, steps);
        }

        return steps.Under("Rate with its error, " + this.Name);
    }

    /// <summary>Name, median and s.</summary>
    public override string ToString() => $"{this.Name}: {this.LogNormal}";

    private static UncertainRate Between(string name, RateRange bounds, Probability below, Basis basis)
    {
        double low = AcceptedRange.Above(0, "um/a").Noting("the lower bound as a quantile").Check(bounds.Lowest.MicrometersPerYear, nameof(bounds));
        double high = bounds.Highest.MicrometersPerYear;
        double share = AcceptedRange.Inside(0, 0.5, string.Empty).Check(below.Fraction, nameof(below));
        LogNormalRate rate = SpreadKernel.FromBounds(low, high, share, default(NoSteps));
        string read = FormattableString.Invariant($"{name}, bounds read as quantiles {share:0.####} and {1 - share:0.####}");
        return new(read, rate, basis, new StoredNumber(low), new StoredNumber(high), new StoredNumber(share));
    }
}
