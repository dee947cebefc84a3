namespace SacrificialTape.Provenance;

/// <summary>The recorder that keeps nothing and costs nothing.</summary>
internal readonly struct NoSteps : IStepRecorder
{
    public static bool Records => false;

    public void Add(Formula formula, ReadOnlySpan<double> inputs, double result)
    {
        // Never reached: kernels ask Records first.
    }
}
