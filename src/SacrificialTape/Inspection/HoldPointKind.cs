namespace SacrificialTape.Inspection;

/// <summary>Points at which the crew waits for a look, in the order of the work.</summary>
public enum HoldPointKind
{
    /// <summary>A trial patch on the real surface: before anything else.</summary>
    TrialPatch = 0,

    /// <summary>The surface is clean, dry and within the limits of the site.</summary>
    Cleaning,

    /// <summary>Bare steel under the tape, where paint stays.</summary>
    Contact,

    /// <summary>Strips along the welds, before the main lay.</summary>
    Welds,

    /// <summary>Laps of the main lay.</summary>
    Laps,

    /// <summary>Everything is rolled down.</summary>
    RollDown,

    /// <summary>Creases are pressed flat.</summary>
    Creases,

    /// <summary>Bubbles are pricked and pressed down.</summary>
    Bubbles,

    /// <summary>The last edges face down.</summary>
    EndDirection,

    /// <summary>Thickness readings, where a sampling scheme was chosen.</summary>
    Thickness,
}
