using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along the generators of an eccentric reducer, in doubles (mm, mm2).</summary>
internal static class EccentricReducerKernel
{
    internal static double SmallEndLapMm<TSteps>(double widthMm, double smallMm, double count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = widthMm - (Math.PI * smallMm / count);
        if (TSteps.Records)
        {
            steps.Add(EccentricReducerFormulas.SmallEndLap, [widthMm, smallMm, count], lap);
        }

        return lap;
    }

    internal static double StripMm<TSteps>(double generatorMm, double overMm, double endLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = generatorMm + overMm + (2 * endLapMm);
        if (TSteps.Records)
        {
            steps.Add(EccentricReducerFormulas.Strip, [generatorMm, overMm, endLapMm], strip);
        }

        return strip;
    }

    internal static double AllStripsMm<TSteps>(int passes, double sumMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double all = passes * sumMm;
        if (TSteps.Records)
        {
            steps.Add(EccentricReducerFormulas.AllStrips, [passes, sumMm], all);
        }

        return all;
    }

    internal static double TrimMm<TSteps>(
        double allMm, int passes, double count, double endLapMm, double keptMm2, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double trim = allMm - (passes * ((2 * count * endLapMm) + (keptMm2 / widthMm)));
        if (TSteps.Records)
        {
            steps.Add(EccentricReducerFormulas.Trim, [allMm, passes, count, endLapMm, keptMm2 / 1e6, widthMm], trim);
        }

        return trim;
    }
}
