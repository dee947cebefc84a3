using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Contact;

/// <summary>Bare steel under tape over paint, in doubles.</summary>
internal static class BareContactKernel
{
    /// <summary>q = n a / A, in cm2/m2 from m2.</summary>
    internal static double RatioCm2PerM2<TSteps>(int windows, double windowM2, double coveredM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        // Windows are never larger than the surface; only rounding could make a surface that is all window more than that.
        double ratio = Math.Min(1, windows * windowM2 / coveredM2) * 10_000;
        if (TSteps.Records)
        {
            steps.Add(BareContactFormulas.Ratio, [windows, windowM2, coveredM2], ratio);
        }

        return ratio;
    }

    /// <summary>n = ceil(q A / a).</summary>
    internal static double WindowsNeeded(double ratioCm2PerM2, double coveredM2, double windowM2) =>
        WithAllowance.Ceiling(ratioCm2PerM2 * coveredM2 / (windowM2 * 10_000));
}
