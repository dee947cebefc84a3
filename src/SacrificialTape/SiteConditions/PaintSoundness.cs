namespace SacrificialTape.SiteConditions;

/// <summary>What paint is left under the tape.</summary>
public enum PaintSoundness
{
    /// <summary>None: bare steel.</summary>
    Bare = 0,

    /// <summary>Sound paint, cleaned and roughened.</summary>
    SoundAndRoughened,

    /// <summary>Sound paint that is still smooth.</summary>
    SoundButSmooth,

    /// <summary>Paint that flakes, blisters or lifts.</summary>
    Loose,
}
