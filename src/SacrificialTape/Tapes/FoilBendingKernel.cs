using SacrificialTape.Provenance;

namespace SacrificialTape.Tapes;

/// <summary>Foil bent round a radius, in doubles (mm, parts of one).</summary>
internal static class FoilBendingKernel
{
    /// <summary>The outside lies at r + t, the middle at r + t/2: their ratio less one is t / (2 r + t).</summary>
    internal static double Strain<TSteps>(double thicknessMm, double radiusMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strain = thicknessMm / ((2 * radiusMm) + thicknessMm);
        if (TSteps.Records)
        {
            steps.Add(FoilBendingFormulas.Strain, [thicknessMm, radiusMm], strain);
        }

        return strain;
    }

    /// <summary>The same relation solved for r.</summary>
    internal static double SmallestRadiusMm(double thicknessMm, double strain) => thicknessMm * (1 - strain) / (2 * strain);
}
