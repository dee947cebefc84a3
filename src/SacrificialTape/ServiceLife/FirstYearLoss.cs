using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>The first-year rate behind a loss that was measured after another time than a year.</summary>
public static class FirstYearLoss
{
    /// <summary>The first-year rate that under a law makes a loss in a time: r = D / g, with g the law's loss at 1 um/a.</summary>
    /// <remarks>Range: loss zero or more, time more than zero. The answer is no better than the law.</remarks>
    /// <param name="law">The law.</param>
    /// <param name="loss">Thickness lost from one face.</param>
    /// <param name="time">The time it took.</param>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative or the time not positive.</exception>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.FirstYearRate))]
    public static CorrosionRate Under(ILossLaw law, Length loss, Duration time)
    {
        ArgumentNullException.ThrowIfNull(law);
        AcceptedRange.Above(0, "a").Check(UnitConversions.Years(time), nameof(time));
        double shape = UnitConversions.Micrometers(law.Loss(CorrosionRate.FromMicrometersPerYear(1), time));
        return CorrosionRate.FromMicrometersPerYear(LossArguments.Micrometers(loss) / shape);
    }
}
