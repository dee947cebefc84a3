namespace SacrificialTape.Rules;

/// <summary>How much a broken rule matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; the work can go on.</summary>
    Note = 0,

    /// <summary>Somebody has to decide before the work goes on.</summary>
    Warning,

    /// <summary>Do not go on as planned.</summary>
    Stop,
}
