namespace SacrificialTape.Surfaces;

/// <summary>The parts of a flange that are covered. The raised face, which seats the gasket, is never one of them.</summary>
[Flags]
public enum FlangeParts
{
    /// <summary>Nothing; refused by <see cref="Flange"/>.</summary>
    None = 0,

    /// <summary>The rim.</summary>
    Rim = 1,

    /// <summary>The back, from the rim to the hub, less the bolt holes.</summary>
    Back = 2,

    /// <summary>The front outside the raised face, less the bolt holes: to be reached only with the joint open.</summary>
    Front = 4,
}
