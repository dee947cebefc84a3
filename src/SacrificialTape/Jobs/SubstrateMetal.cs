namespace SacrificialTape.Jobs;

/// <summary>The metal under the tape.</summary>
public enum SubstrateMetal
{
    /// <summary>Carbon steel or iron.</summary>
    CarbonSteel = 0,

    /// <summary>Steel above 1100 MPa tensile strength.</summary>
    HighStrengthSteel,

    /// <summary>Stainless steel.</summary>
    StainlessSteel,

    /// <summary>Aluminium or its alloys.</summary>
    Aluminium,

    /// <summary>Magnesium or its alloys.</summary>
    Magnesium,
}
