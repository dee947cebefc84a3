namespace SacrificialTape.ServiceLife;

/// <summary>How a power law goes on beyond 20 years.</summary>
public enum AfterTwentyYears
{
    /// <summary>Straight on along the tangent of the curve there: the shorter life.</summary>
    Tangent = 0,

    /// <summary>Along the power itself, which lasts longer and has closed forms.</summary>
    Power,
}
