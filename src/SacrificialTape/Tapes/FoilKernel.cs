using SacrificialTape.Provenance;

namespace SacrificialTape.Tapes;

/// <summary>Mass of foil and length of rolls, in doubles.</summary>
internal static class FoilKernel
{
    /// <summary>m = L w t rho, in kg from mm, mm, mm and kg/m3.</summary>
    internal static double Kilograms<TSteps>(
        double lengthMm, double widthMm, double thicknessMm, double kilogramsPerCubicMeter, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double mass = lengthMm * widthMm * thicknessMm * kilogramsPerCubicMeter / 1e9;
        if (TSteps.Records)
        {
            steps.Add(FoilFormulas.Mass, [lengthMm, widthMm, thicknessMm, kilogramsPerCubicMeter], mass);
        }

        return mass;
    }

    /// <summary>L = pi (D + d)(D - d) / (4 t): area of the roll's face over the thickness of a layer.</summary>
    internal static double RollLengthMm<TSteps>(double outsideMm, double coreMm, double layerMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = Math.PI * (outsideMm + coreMm) * (outsideMm - coreMm) / (4 * layerMm);
        if (TSteps.Records)
        {
            steps.Add(FoilFormulas.RollLength, [outsideMm, coreMm, layerMm], length);
        }

        return length;
    }

    /// <summary>The same relation solved for t: a layer's thickness is best taken from a roll of known length.</summary>
    internal static double RollLayerMm(double outsideMm, double coreMm, double lengthMm) =>
        Math.PI * (outsideMm + coreMm) * (outsideMm - coreMm) / (4 * lengthMm);
}
