namespace SacrificialTape.TakeOff;

/// <summary>What spare strip is for.</summary>
public enum SparePart
{
    /// <summary>One share for everything, not divided.</summary>
    Undivided = 0,

    /// <summary>Strip that is spoilt while it is laid.</summary>
    Spoilage,

    /// <summary>Trial wraps before the work begins.</summary>
    TrialWraps,

    /// <summary>Stock kept for repairs later.</summary>
    RepairStock,
}
