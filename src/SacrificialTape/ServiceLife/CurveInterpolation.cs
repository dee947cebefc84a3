namespace SacrificialTape.ServiceLife;

/// <summary>How a measured curve of loss runs between its points.</summary>
public enum CurveInterpolation
{
    /// <summary>Straight from point to point.</summary>
    Linear = 0,

    /// <summary>A smooth cubic that rises wherever the points do, with no overshoot (PCHIP).</summary>
    MonotoneCubic,
}
