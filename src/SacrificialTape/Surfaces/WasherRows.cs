namespace SacrificialTape.Surfaces;

/// <summary>How washers lie on the strip they are cut from.</summary>
public enum WasherRows
{
    /// <summary>Side by side across the strip.</summary>
    Straight = 0,

    /// <summary>Every other row moved on by half a step, so that the rows lie closer.</summary>
    Staggered,
}
