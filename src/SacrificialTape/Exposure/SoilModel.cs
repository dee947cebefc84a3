namespace SacrificialTape.Exposure;

/// <summary>By which numbers a rate in soil goes on after its first year.</summary>
public enum SoilModel
{
    /// <summary>Design losses in the selected fill of reinforced-soil walls.</summary>
    ReinforcedFill = 0,

    /// <summary>The power law x = K t^n with the constants that were recalled for natural and selected soil.</summary>
    PowerLaw,
}
