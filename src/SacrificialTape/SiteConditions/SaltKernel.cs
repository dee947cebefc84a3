using SacrificialTape.Provenance;

namespace SacrificialTape.SiteConditions;

/// <summary>Salts washed off a surface, in doubles.</summary>
internal static class SaltKernel
{
    /// <summary>s = c V/A (k2 - k1); with ml, mm2 and uS/cm, c = 5 kg/(m2.S) is 500 for mg/m2.</summary>
    internal static double MilligramsPerM2<TSteps>(double milliliters, double mm2, double afterMicroS, double beforeMicroS, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double salts = 500 * milliliters / mm2 * (afterMicroS - beforeMicroS);
        if (TSteps.Records)
        {
            steps.Add(SaltFormulas.Density, [milliliters, mm2, afterMicroS, beforeMicroS], salts);
        }

        return salts;
    }
}
