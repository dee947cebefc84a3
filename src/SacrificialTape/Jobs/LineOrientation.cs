namespace SacrificialTape.Jobs;

/// <summary>How a line runs: it decides where the crew begins and where the last edge faces.</summary>
public enum LineOrientation
{
    /// <summary>Level or nearly so.</summary>
    Horizontal = 0,

    /// <summary>Upright or steeply sloping.</summary>
    Vertical,
}
