namespace SacrificialTape.Galvanic;

/// <summary>The shape of an anode, which says how much of it can be used.</summary>
public enum AnodeShape
{
    /// <summary>Long and slender on stand-offs: length at least four radii.</summary>
    LongStandOff = 0,

    /// <summary>Short and slender on stand-offs.</summary>
    ShortStandOff,

    /// <summary>Long and flush: length at least four widths and four thicknesses.</summary>
    LongFlush,

    /// <summary>Short and flush, bracelets, and others.</summary>
    ShortFlushBraceletOrOther,
}
