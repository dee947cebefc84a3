namespace SacrificialTape.Wrapping;

/// <summary>How strips are shared out over the faces of a section.</summary>
public enum SectionPattern
{
    /// <summary>One after the other round the outline, as few as can be.</summary>
    RoundOutline = 0,

    /// <summary>Each wide face for itself, turned over the folds beside it, so that every fold has two strips over it.</summary>
    FaceByFace,
}
