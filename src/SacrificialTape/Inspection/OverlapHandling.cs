namespace SacrificialTape.Inspection;

/// <summary>What becomes of patches that would lie over each other.</summary>
public enum OverlapHandling
{
    /// <summary>They stay as they are, and each pair leaves a finding.</summary>
    Flag = 0,

    /// <summary>On steel of one kind their cut-outs are joined into one rectangle along the line, again and again until none overlap.</summary>
    Merge,
}
