namespace SacrificialTape.Exposure;

/// <summary>Class of pollution by chloride, from clean to heavily polluted. Bounds: <see cref="PollutionClasses"/>.</summary>
public enum ChlorideClass
{
    /// <summary>Clean.</summary>
    S0 = 0,

    /// <summary>Low.</summary>
    S1,

    /// <summary>Medium.</summary>
    S2,

    /// <summary>High.</summary>
    S3,
}
