using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>How the loss of thickness grows with time, given the rate of the first year.</summary>
/// <remarks>An implementation must make <see cref="TimeToLoss"/> the exact inverse of <see cref="Loss"/>.</remarks>
public interface ILossLaw
{
    /// <summary>A short name for tables.</summary>
    string Name { get; }

    /// <summary>On what the law rests.</summary>
    Basis Basis { get; }

    /// <summary>Thickness lost after a time.</summary>
    /// <param name="firstYear">Loss in the first year.</param>
    /// <param name="time">Time since the zinc was laid bare to the exposure, zero or more.</param>
    Length Loss(CorrosionRate firstYear, Duration time);

    /// <summary>Time until a thickness is lost; unlimited when nothing is lost.</summary>
    /// <param name="firstYear">Loss in the first year.</param>
    /// <param name="loss">The thickness, zero or more.</param>
    Lifetime TimeToLoss(CorrosionRate firstYear, Length loss);

    /// <summary>The rate at a time: the slope of the loss.</summary>
    /// <param name="firstYear">Loss in the first year.</param>
    /// <param name="time">Time since the zinc was laid bare to the exposure, zero or more.</param>
    CorrosionRate RateAt(CorrosionRate firstYear, Duration time);

    /// <summary>The steps from rate and thickness to the time.</summary>
    /// <param name="firstYear">Loss in the first year.</param>
    /// <param name="loss">The thickness, zero or more.</param>
    Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss);
}
