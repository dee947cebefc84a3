namespace SacrificialTape.Exposure;

/// <summary>Class of pollution by sulfur dioxide, from clean to heavily polluted. Bounds: <see cref="PollutionClasses"/>.</summary>
public enum SulfurDioxideClass
{
    /// <summary>Clean.</summary>
    P0 = 0,

    /// <summary>Low.</summary>
    P1,

    /// <summary>Medium.</summary>
    P2,

    /// <summary>High.</summary>
    P3,
}
