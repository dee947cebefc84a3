namespace SacrificialTape.ServiceLife;

/// <summary>Which of the least thicknesses of a hot-dip coating is meant.</summary>
public enum HotDipValue
{
    /// <summary>The least at any one place.</summary>
    Local = 0,

    /// <summary>The least mean over a part.</summary>
    Mean,
}
