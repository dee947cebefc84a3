namespace SacrificialTape.Wrapping;

/// <summary>How the strip is laid.</summary>
public enum ApplicationMethod
{
    /// <summary>By hand, from the roll.</summary>
    ByHand = 0,

    /// <summary>With a wrapping head that is set to the outside diameter and carries the roll round the pipe.</summary>
    WrappingHead,
}
