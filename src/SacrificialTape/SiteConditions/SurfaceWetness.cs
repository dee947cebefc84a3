namespace SacrificialTape.SiteConditions;

/// <summary>Whether a surface is dry.</summary>
public enum SurfaceWetness
{
    /// <summary>Completely dry: blotting paper or a wiping test shows nothing.</summary>
    Dry = 0,

    /// <summary>A trace of moisture.</summary>
    Damp,

    /// <summary>Visibly wet, or ice on it.</summary>
    Wet,
}
