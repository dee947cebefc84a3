using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>What is the same for all zinc.</summary>
public static class Zinc
{
    internal const double KilogramsPerCubicMeter = 7140;

    /// <summary>Density used to turn thickness into mass: 7.14 g/cm3, so that 1 um weighs 7.14 g/m2.</summary>
    /// <remarks>Hot-dip standards convert with 7.2 g/cm3 by convention; the metal itself is listed at 7.133.</remarks>
    public static Density Density => Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMeter);

    /// <summary>On what the density rests.</summary>
    public static Basis DensityBasis { get; } = Basis.From(References.ZincSheetConversion);
}
