namespace SacrificialTape.Jobs;

/// <summary>How the rolls of a choice are paid.</summary>
public enum RollCounting
{
    /// <summary>Whole rolls: what is left over is paid all the same.</summary>
    Whole = 0,

    /// <summary>
    /// By the share that is used up: offcuts that are at least the shortest piece go back to the store and are not paid,
    /// shorter ones are scrap and are.
    /// </summary>
    ByShare,
}
