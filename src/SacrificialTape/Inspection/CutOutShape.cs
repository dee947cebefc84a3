namespace SacrificialTape.Inspection;

/// <summary>The shape of a cut-out.</summary>
public enum CutOutShape
{
    /// <summary>A rectangle with sharp corners.</summary>
    Rectangle = 0,

    /// <summary>An ellipse, or a circle.</summary>
    Ellipse,
}
