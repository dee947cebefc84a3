using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The exponent of a power law with a normal error.</summary>
/// <remarks>Range: standard error zero or more, and less than an eighth of the mean, so that no exponent counted falls below zero.</remarks>
public sealed record UncertainExponent : IHasWorkings
{
    private readonly StoredNumber error;
    private readonly StoredNumber upper;

    /// <summary>Describes an exponent by mean and standard error.</summary>
    /// <param name="mean">Its mean.</param>
    /// <param name="standardError">One standard deviation of its error.</param>
    /// <param name="basis">On what both rest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard error is outside its range.</exception>
    public UncertainExponent(TimeExponent mean, double standardError, Basis basis)
        : this(mean, standardError, default, basis)
    {
    }

    private UncertainExponent(TimeExponent mean, double standardError, StoredNumber upper, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        this.Mean = mean;
        this.error = new StoredNumber(AcceptedRange.FromBelow(0, mean.Value / 8, string.Empty).Check(standardError));
        this.upper = upper;
        this.Basis = basis;
    }

    /// <summary>Zinc by the standard's two exponents, 0.813 and 0.873: a standard error of 0.030 (recalled, check before use).</summary>
    public static UncertainExponent Zinc { get; } =
        FromMeanAndUpper(TimeExponent.FromValue(0.813), TimeExponent.FromValue(0.873), LossFormulas.Power);

    /// <summary>Its mean.</summary>
    public TimeExponent Mean { get; }

    /// <summary>One standard deviation of its error.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.StandardError))]
    public double StandardError => this.error.Bare;

    /// <summary>On what it rests.</summary>
    public Basis Basis { get; }

    /// <summary>An exponent known by its mean and an upper value two standard errors above it, as the standard prints them.</summary>
    /// <param name="mean">B1.</param>
    /// <param name="upper">B2, at least B1.</param>
    /// <param name="basis">On what both rest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The upper is below the mean, or more than a quarter above it.</exception>
    public static UncertainExponent FromMeanAndUpper(TimeExponent mean, TimeExponent upper, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        AcceptedRange.FromBelow(mean.Value, 1.25 * mean.Value, string.Empty).Noting("from the mean to a quarter above it").Check(upper.Value, nameof(upper));
        return new(mean, SpreadKernel.StandardError(mean.Value, upper.Value, default(NoSteps)), new StoredNumber(upper.Value), basis);
    }

    /// <summary>An exponent without error.</summary>
    /// <param name="exponent">The exponent.</param>
    /// <param name="basis">On what it rests.</param>
    public static UncertainExponent Exactly(TimeExponent exponent, Basis basis) => new(exponent, 0, basis);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        if (this.upper.IsSet)
        {
            _ = SpreadKernel.StandardError(this.Mean.Value, this.upper.Bare, steps);
        }

        return steps.Under("Standard error of an exponent").RestingOn(this.Basis);
    }

    /// <summary>Mean and standard error in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Mean} with a standard error of {this.StandardError:0.####}");
}
