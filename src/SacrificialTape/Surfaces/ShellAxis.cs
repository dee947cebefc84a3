namespace SacrificialTape.Surfaces;

/// <summary>How the axis of a shell stands.</summary>
public enum ShellAxis
{
    /// <summary>A standing tank or vessel; its length is a height.</summary>
    Upright = 0,

    /// <summary>A lying vessel.</summary>
    Lying,
}
