using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>Every year takes as much as the first: D = r t.</summary>
/// <remarks>
/// The model behind the life tables for zinc coatings, and the shorter of the two for all lives over a year.
/// Range: rate, time and loss zero or more; a rate of zero never uses anything up.
/// </remarks>
public sealed record LinearLoss : ILossLaw
{
    private LinearLoss()
    {
    }

    /// <summary>The law.</summary>
    public static LinearLoss Law { get; } = new();

    /// <inheritdoc/>
    public string Name => "linear";

    /// <inheritdoc/>
    public Basis Basis => LossFormulas.Linear;

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.LinearLoss))]
    public Length Loss(CorrosionRate firstYear, Duration time) => Length.FromMicrometers(
        LossKernel.LinearLossUm(firstYear.MicrometersPerYear, LossArguments.Years(time)));

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.LinearTime))]
    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => Lifetime.OfYears(
        LossKernel.LinearYears(LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.LinearRate))]
    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time)
    {
        _ = LossArguments.Years(time);
        return firstYear;
    }

    /// <inheritdoc/>
    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss)
    {
        var steps = new StepList();
        _ = LossKernel.LinearYears(LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, steps);
        return steps.Under("Time to a loss, linear");
    }
}
