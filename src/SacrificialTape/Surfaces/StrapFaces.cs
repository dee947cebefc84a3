namespace SacrificialTape.Surfaces;

/// <summary>Which faces of a strap are covered.</summary>
public enum StrapFaces
{
    /// <summary>The face away from the pipe.</summary>
    Outer = 0,

    /// <summary>Both faces: the strap is taken off, or not yet fitted.</summary>
    Both,
}
