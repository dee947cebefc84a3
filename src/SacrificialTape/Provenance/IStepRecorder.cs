namespace SacrificialTape.Provenance;

/// <summary>
/// Where a kernel notes its steps. It is a type parameter, so that the empty recorder leaves no trace in the machine
/// code and the recording one runs through the very same lines: workings cannot drift from results.
/// </summary>
internal interface IStepRecorder
{
    /// <summary>Whether steps are kept; a constant of the type, so that the compiler drops what is not needed.</summary>
    static abstract bool Records { get; }

    void Add(Formula formula, ReadOnlySpan<double> inputs, double result);
}
