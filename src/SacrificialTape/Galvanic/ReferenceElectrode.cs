namespace SacrificialTape.Galvanic;

/// <summary>The electrode against which a potential was measured.</summary>
public enum ReferenceElectrode
{
    /// <summary>Saturated copper/copper sulfate (CSE): soil and fresh water.</summary>
    CopperSulfate = 0,

    /// <summary>Silver/silver chloride in seawater (SSC).</summary>
    SilverChlorideSeawater,

    /// <summary>Saturated calomel (SCE): the laboratory.</summary>
    Calomel,
}
