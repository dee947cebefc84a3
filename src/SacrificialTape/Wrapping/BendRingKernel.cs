using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Rings side by side on a bend, in doubles (mm).</summary>
internal static class BendRingKernel
{
    /// <summary>n rings between two tapes they both lap on: n = ceil((W + o) / (w - o)).</summary>
    internal static double Count<TSteps>(double outsideArcMm, double lapMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double count = WithAllowance.Ceiling((outsideArcMm + lapMm) / (widthMm - lapMm));
        if (TSteps.Records)
        {
            steps.Add(BendRingFormulas.Rings, [outsideArcMm, lapMm, widthMm], count);
        }

        return count;
    }

    /// <summary>n + 1 equal laps on the outside: (n w - W) / (n + 1).</summary>
    internal static double OutsideLapMm<TSteps>(double count, double widthMm, double outsideArcMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = ((count * widthMm) - outsideArcMm) / (count + 1);
        if (TSteps.Records)
        {
            steps.Add(BendRingFormulas.OutsideLap, [count, widthMm, outsideArcMm], lap);
        }

        return lap;
    }

    internal static double InsideLapMm<TSteps>(double widthMm, double outsideLapMm, double bendMm, double tubeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = widthMm - ((widthMm - outsideLapMm) * (bendMm - tubeMm) / (bendMm + tubeMm));
        if (TSteps.Records)
        {
            steps.Add(BendRingFormulas.InsideLap, [widthMm, outsideLapMm, bendMm, tubeMm], lap);
        }

        return lap;
    }
}
