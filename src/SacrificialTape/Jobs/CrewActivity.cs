namespace SacrificialTape.Jobs;

/// <summary>What a crew does on a line, in working order.</summary>
public enum CrewActivity
{
    /// <summary>Do not begin: a finding stops the line.</summary>
    Stop = 0,

    /// <summary>What to heed on this line before anything else.</summary>
    Cautions,

    /// <summary>Degrease, brush, wipe, dry.</summary>
    Clean,

    /// <summary>Mark and mask what stays clear of tape.</summary>
    MarkClear,

    /// <summary>Bare the contact windows in the paint.</summary>
    Windows,

    /// <summary>Lay the strips along the welds.</summary>
    Welds,

    /// <summary>Lay the main strips.</summary>
    Lay,

    /// <summary>Roll everything down.</summary>
    RollDown,

    /// <summary>Look for creases, bubbles and open edges.</summary>
    Look,

    /// <summary>Paint over the tape.</summary>
    Paint,
}
