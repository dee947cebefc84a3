namespace SacrificialTape.Inspection;

/// <summary>How a Gumbel distribution is fitted to greatest losses.</summary>
public enum GumbelMethod
{
    /// <summary>By mean and standard deviation: simple, and the least sure of the two.</summary>
    Moments = 0,

    /// <summary>By maximum likelihood.</summary>
    MaximumLikelihood,
}
