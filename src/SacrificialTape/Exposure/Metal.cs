namespace SacrificialTape.Exposure;

/// <summary>The metal whose corrosion a rate describes: a site can be of one category for zinc and of another for steel.</summary>
public enum Metal
{
    /// <summary>Zinc.</summary>
    Zinc = 0,

    /// <summary>Carbon steel.</summary>
    CarbonSteel,
}
