using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The thickness below which a foil counts as used up.</summary>
public static class PerforationLimit
{
    /// <summary>What of the nominal thickness may not be used.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="usable">The share that may be used up.</param>
    [BasisOf(typeof(RemainingLifeFormulas), nameof(RemainingLifeFormulas.PerforationLimit))]
    public static Length Of(Foil foil, Utilisation usable)
    {
        ArgumentNullException.ThrowIfNull(foil);
        return Length.FromMicrometers(RemainingLifeKernel.PerforationLimitUm(usable.Fraction, foil.ThicknessMm * 1000));
    }
}
