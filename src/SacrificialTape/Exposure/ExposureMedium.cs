namespace SacrificialTape.Exposure;

/// <summary>What surrounds the metal.</summary>
public enum ExposureMedium
{
    /// <summary>Air, out of doors or in: the case that tape and loss laws are made for.</summary>
    Air = 0,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Soil.</summary>
    Soil,
}
