namespace SacrificialTape.Surfaces;

/// <summary>The standard that gives a nominal pipe size its outside diameter.</summary>
public enum PipeStandard
{
    /// <summary>ASME B36.10M.</summary>
    AsmeB3610M = 0,

    /// <summary>ISO 4200 series 1, as EN 10220.</summary>
    Iso4200Series1,
}
