using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>How many readings, in doubles.</summary>
internal static class SamplingKernel
{
    /// <summary>ISO 19840: 5, 10, 15, 20, 30 up to 1, 3, 10, 30, 100 m2; 10 more for each further 100 m2.</summary>
    internal static double Iso19840<TSteps>(double m2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double table = Within(m2, 1) ? 5 : Within(m2, 3) ? 10 : Within(m2, 10) ? 15 : Within(m2, 30) ? 20 : 30;
        double readings = table + (10 * Further(m2));
        if (TSteps.Records)
        {
            steps.Add(SamplingFormulas.Iso19840, [table, m2], readings);
        }

        return readings;
    }

    /// <summary>SSPC-PA 2: every 10 m2 up to 30 m2, three areas up to 100 m2, one more for each further 100 m2; five spots each.</summary>
    internal static double SspcPa2<TSteps>(double m2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double areas = Math.Min(3, WithAllowance.Ceiling(m2 / 10));
        double spots = 5 * (areas + Further(m2));
        if (TSteps.Records)
        {
            steps.Add(SamplingFormulas.SspcPa2, [areas, m2], spots);
        }

        return spots;
    }

    /// <summary>AS 3894.3 from 10 m2: 10 up to 20 m2, 15 up to 100 m2, 5 more for each further 100 m2.</summary>
    internal static double As38943<TSteps>(double m2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double table = Within(m2, 20) ? 10 : 15;
        double readings = table + (5 * Further(m2));
        if (TSteps.Records)
        {
            steps.Add(SamplingFormulas.As38943, [table, m2], readings);
        }

        return readings;
    }

    /// <summary>IMO PSPC: one for each 5 m2.</summary>
    internal static double ImoPspc<TSteps>(double m2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double readings = WithAllowance.Ceiling(m2 / 5);
        if (TSteps.Records)
        {
            steps.Add(SamplingFormulas.ImoPspc, [m2], readings);
        }

        return readings;
    }

    /// <summary>(ceil(L/s) + 1) k.</summary>
    internal static double Stations<TSteps>(double lengthMm, double spacingMm, int round, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double readings = (WithAllowance.Ceiling(lengthMm / spacingMm) + 1) * round;
        if (TSteps.Records)
        {
            steps.Add(SamplingFormulas.Stations, [lengthMm, spacingMm, round], readings);
        }

        return readings;
    }

    private static bool Within(double m2, double most) => WithAllowance.AtMost(m2, most);

    private static double Further(double m2) => WithAllowance.Ceiling(Math.Max(0, m2 - 100) / 100);
}
