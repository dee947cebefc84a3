using SacrificialTape.Exposure;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>Which loss laws go with which exposure.</summary>
public static class LawsByMedium
{
    /// <summary>
    /// The laws that a life is worked out under where the user names none: in air the linear law and the power law with the
    /// mean exponent; under water the linear law alone; in soil the law that belongs to its rate.
    /// </summary>
    /// <param name="exposure">Where the zinc stands.</param>
    public static ValueList<ILossLaw> For(ZincExposure exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        return exposure.Rate.Medium switch
        {
            ExposureMedium.Water => [LinearLoss.Law],
            ExposureMedium.Soil => exposure.Rate.Soil == SoilModel.ReinforcedFill ? [PiecewiseLoss.ZincInReinforcedSoil] : [PowerLawLoss.ZincInSoil],
            _ => [LinearLoss.Law, PowerLawLoss.ZincMean],
        };
    }
}
