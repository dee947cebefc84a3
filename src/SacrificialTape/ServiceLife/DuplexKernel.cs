using SacrificialTape.Provenance;

namespace SacrificialTape.ServiceLife;

/// <summary>Paint over zinc, in years.</summary>
internal static class DuplexKernel
{
    /// <summary>k (t_z + t_p); endless where one of the two is.</summary>
    internal static double Years<TSteps>(double factor, double zinc, double paint, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double years = factor * (zinc + paint);
        if (TSteps.Records && double.IsFinite(years))
        {
            steps.Add(DuplexFormulas.Duplex, [factor, zinc, paint], years);
        }

        return years;
    }
}
