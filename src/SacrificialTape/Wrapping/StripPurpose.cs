namespace SacrificialTape.Wrapping;

/// <summary>What a strip is laid for.</summary>
public enum StripPurpose
{
    /// <summary>The spiral of the main lay.</summary>
    Spiral = 0,

    /// <summary>A level turn at an end of a spiral.</summary>
    LevelTurn,

    /// <summary>A ring of the main lay.</summary>
    Ring,

    /// <summary>A strip along the pipe.</summary>
    AlongPipe,

    /// <summary>A strip along a weld, before the main lay.</summary>
    Weld,

    /// <summary>A strip of another lay.</summary>
    Other,

    /// <summary>A strip along a structural section.</summary>
    AlongSection,

    /// <summary>A strip folded over the edge of a sheet.</summary>
    Edge,

    /// <summary>A patch in an inside corner of an edge.</summary>
    CornerPatch,

    /// <summary>A strip on a face of a strap.</summary>
    Strap,

    /// <summary>A strip that washers are cut from.</summary>
    Washer,

    /// <summary>A piece that a patch is cut from.</summary>
    Patch,
}
