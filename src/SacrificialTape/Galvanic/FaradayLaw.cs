using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Current density and loss of metal are one thing by Faraday's law, both metals going as ions of charge 2.</summary>
/// <remarks>Densities, where they are not given: zinc 7140, carbon steel 7860 kg/m3 (recalled). A year is 365 d.</remarks>
public static class FaradayLaw
{
    /// <summary>How fast the surface recedes at a current density.</summary>
    /// <param name="current">Anodic current density, at least 0.</param>
    /// <param name="metal">The metal.</param>
    /// <param name="density">Its density, more than 0; may be left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.Recession))]
    public static CorrosionRate Recession(ElectricCurrentDensity current, Metal metal, Density? density = null)
    {
        (double molar, double usual) = GalvanicTables.Metal(metal);
        return CorrosionRate.FromMicrometersPerYear(GalvanicKernel.Recession(
            CheckCurrent(current), molar, CheckDensity(density, usual)));
    }

    /// <summary>The mass that goes at a current density.</summary>
    /// <param name="current">Anodic current density, at least 0.</param>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.MassLoss))]
    public static MassLossRate MassLoss(ElectricCurrentDensity current, Metal metal) => MassLossRate.FromGramsPerSquareMeterYear(
        GalvanicKernel.MassLoss(CheckCurrent(current), GalvanicTables.Metal(metal).GramPerMole));

    /// <summary>The anodic current density behind a rate of recession.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="metal">The metal.</param>
    /// <param name="density">Its density, more than 0; may be left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.CurrentOfRecession))]
    public static ElectricCurrentDensity CurrentOf(CorrosionRate rate, Metal metal, Density? density = null)
    {
        (double molar, double usual) = GalvanicTables.Metal(metal);
        return ElectricCurrentDensity.FromAmperesPerSquareMeter(GalvanicKernel.CurrentOfRecession(
            rate.MicrometersPerYear, molar, CheckDensity(density, usual)));
    }

    private static double CheckCurrent(ElectricCurrentDensity current) =>
        AcceptedRange.AtLeast(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(current), nameof(current));

    private static double CheckDensity(Density? density, double usual) =>
        density is { } stated ? MassLossRate.CheckDensity(stated) : usual;
}
