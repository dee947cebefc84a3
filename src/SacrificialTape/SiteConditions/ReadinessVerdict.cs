namespace SacrificialTape.SiteConditions;

/// <summary>Whether a surface may be taped.</summary>
public enum ReadinessVerdict
{
    /// <summary>Something that was wanted was not measured, and nothing that was measured is bad.</summary>
    CannotBeSaid = 0,

    /// <summary>Something that was measured breaks a rule.</summary>
    NotReady,

    /// <summary>Everything that was wanted was measured and holds.</summary>
    Ready,
}
