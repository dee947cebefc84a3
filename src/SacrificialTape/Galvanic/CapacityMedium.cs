namespace SacrificialTape.Galvanic;

/// <summary>What an anode lies in when its capacity is stated.</summary>
public enum CapacityMedium
{
    /// <summary>Not stated by the source.</summary>
    Any = 0,

    /// <summary>Open seawater.</summary>
    Seawater,

    /// <summary>Marine sediment, or buried.</summary>
    Sediment,
}
