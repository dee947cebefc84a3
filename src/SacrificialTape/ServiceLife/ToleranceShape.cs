namespace SacrificialTape.ServiceLife;

/// <summary>How the thickness of a foil lies within its tolerance, nominal less tolerance to nominal plus tolerance.</summary>
/// <remarks>No source says it for thin zinc foil: the choice is the user's judgement.</remarks>
public enum ToleranceShape
{
    /// <summary>Every thickness within the tolerance is as likely as any other.</summary>
    Uniform = 0,

    /// <summary>The nominal is likeliest, and the likelihood falls straight to nothing at both ends.</summary>
    Triangular,
}
