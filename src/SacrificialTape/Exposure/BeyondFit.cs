namespace SacrificialTape.Exposure;

/// <summary>What to do when an input lies outside the data that a function was fitted to.</summary>
public enum BeyondFit
{
    /// <summary>Refuse with an error that names the interval.</summary>
    Refuse = 0,

    /// <summary>Work it out all the same, and leave a finding for each such input.</summary>
    AcceptWithFinding,
}
