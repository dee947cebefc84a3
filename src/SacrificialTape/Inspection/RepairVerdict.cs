namespace SacrificialTape.Inspection;

/// <summary>What a comparison of patching and rewrapping comes to.</summary>
public enum RepairVerdict
{
    /// <summary>Nothing speaks clearly for either.</summary>
    Undecided = 0,

    /// <summary>Patch.</summary>
    Patch,

    /// <summary>Rewrap.</summary>
    Rewrap,
}
