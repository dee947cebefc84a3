namespace SacrificialTape.Wrapping;

/// <summary>How strips run on a shell.</summary>
public enum ShellDirection
{
    /// <summary>Round the shell: courses that lap on their own ends.</summary>
    Round = 0,

    /// <summary>Along the axis, side by side round the shell.</summary>
    AlongAxis,
}
