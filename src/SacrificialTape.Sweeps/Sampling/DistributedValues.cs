namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Values of a distribution.</summary>
public abstract record DistributedValues : InputValues
{
    private protected DistributedValues()
    {
    }

    /// <summary>The share of all draws at or below a value.</summary>
    /// <param name="value">The value.</param>
    public abstract double Below(double value);
}
