using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>A strip centred on a weld, in doubles (mm).</summary>
internal static class WeldStripKernel
{
    internal static double ReachMm<TSteps>(double widthMm, double faceMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double reach = (widthMm - faceMm) / 2;
        if (TSteps.Records)
        {
            steps.Add(WeldStripFormulas.Reach, [widthMm, faceMm], reach);
        }

        return reach;
    }
}
