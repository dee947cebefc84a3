namespace SacrificialTape.Exposure;

/// <summary>Class of wetness by the hours in a year that a surface is wet. Bounds: <see cref="PollutionClasses"/>.</summary>
public enum WetnessClass
{
    /// <summary>Up to 10 h.</summary>
    Tau1 = 1,

    /// <summary>Up to 250 h.</summary>
    Tau2,

    /// <summary>Up to 2500 h.</summary>
    Tau3,

    /// <summary>Up to 5500 h.</summary>
    Tau4,

    /// <summary>More.</summary>
    Tau5,
}
