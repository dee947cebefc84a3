using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>Counts of strips that touch bare steel.</summary>
internal static class JoinKernel
{
    internal static double Untouched<TSteps>(int strips, int touching, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double without = strips - touching;
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.Untouched, [strips, touching], without);
        }

        return without;
    }
}
