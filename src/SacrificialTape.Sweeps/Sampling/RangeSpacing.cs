namespace SacrificialTape.Sweeps.Sampling;

/// <summary>How the values of a range lie.</summary>
public enum RangeSpacing
{
    /// <summary>At equal differences.</summary>
    Linear = 0,

    /// <summary>At equal ratios.</summary>
    Logarithmic,
}
