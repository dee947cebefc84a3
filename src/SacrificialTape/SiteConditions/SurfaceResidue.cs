namespace SacrificialTape.SiteConditions;

/// <summary>What an adhesive does not hold on.</summary>
public enum SurfaceResidue
{
    /// <summary>Oil or grease.</summary>
    Oil = 0,

    /// <summary>Wax or petrolatum.</summary>
    Wax,

    /// <summary>Silicone.</summary>
    Silicone,

    /// <summary>Bitumen or coal tar.</summary>
    Bitumen,
}
