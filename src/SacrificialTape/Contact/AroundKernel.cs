using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>A place around as an angle.</summary>
internal static class AroundKernel
{
    internal static double Degrees<TSteps>(double aroundMm, double girthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double degrees = aroundMm / girthMm * 360;
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.Turned, [aroundMm, girthMm], degrees);
        }

        return degrees;
    }
}
