namespace SacrificialTape.ServiceLife;

/// <summary>The life of zinc and paint together, as one source's factors have it.</summary>
public sealed record DuplexRange
{
    internal DuplexRange(DuplexFactor factor, Lifetime earliest, Lifetime latest)
    {
        this.Factor = factor;
        this.Earliest = earliest;
        this.Latest = latest;
    }

    /// <summary>The factors.</summary>
    public DuplexFactor Factor { get; }

    /// <summary>Lowest factor on the earliest ends.</summary>
    public Lifetime Earliest { get; }

    /// <summary>Highest factor on the latest ends.</summary>
    public Lifetime Latest { get; }

    /// <summary>The range with its factors.</summary>
    public override string ToString() => $"{this.Earliest} to {this.Latest} by {this.Factor}";
}
