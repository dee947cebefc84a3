namespace SacrificialTape.Wrapping;

/// <summary>Which way a spiral turns. A right-hand spiral is one from whichever end it is begun.</summary>
public enum SpiralHand
{
    /// <summary>Turning clockwise as one looks along the way one works, like a common screw.</summary>
    Right = 0,

    /// <summary>Turning anticlockwise as one looks along the way one works.</summary>
    Left,
}
