namespace SacrificialTape.ServiceLife;

/// <summary>What is not known for certain of a life: rate, growth of loss, usable share, thickness of the foil.</summary>
/// <remarks>
/// The four have nothing to do with one another. All layers are of one roll at one place: one thickness, one rate, one
/// exponent for all of them, which is the safer reading where a high confidence is asked for.
/// </remarks>
public sealed record LifeUncertainty
{
    /// <summary>Describes what is uncertain.</summary>
    /// <param name="rate">First-year rate.</param>
    /// <param name="growth">How loss grows.</param>
    /// <param name="usable">Usable share of the foil.</param>
    /// <param name="tolerance">How the thickness lies within the tolerance of the foil.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such shape.</exception>
    public LifeUncertainty(UncertainRate rate, LossGrowth growth, UncertainUtilisation usable, ToleranceShape tolerance)
    {
        ArgumentNullException.ThrowIfNull(rate);
        ArgumentNullException.ThrowIfNull(growth);
        ArgumentNullException.ThrowIfNull(usable);
        if (!Enum.IsDefined(tolerance))
        {
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "A tolerance is uniform or triangular.");
        }

        this.Rate = rate;
        this.Growth = growth;
        this.Usable = usable;
        this.Tolerance = tolerance;
    }

    /// <summary>First-year rate.</summary>
    public UncertainRate Rate { get; }

    /// <summary>How loss grows.</summary>
    public LossGrowth Growth { get; }

    /// <summary>Usable share of the foil.</summary>
    public UncertainUtilisation Usable { get; }

    /// <summary>How the thickness lies within the tolerance of the foil.</summary>
    public ToleranceShape Tolerance { get; }
}
