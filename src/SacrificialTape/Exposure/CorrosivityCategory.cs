namespace SacrificialTape.Exposure;

/// <summary>Corrosivity category of an atmosphere, by the first-year corrosion of a metal.</summary>
public enum CorrosivityCategory
{
    /// <summary>Very low.</summary>
    C1 = 1,

    /// <summary>Low.</summary>
    C2,

    /// <summary>Medium.</summary>
    C3,

    /// <summary>High.</summary>
    C4,

    /// <summary>Very high.</summary>
    C5,

    /// <summary>Extreme.</summary>
    CX,
}
