namespace SacrificialTape.ServiceLife;

/// <summary>The life under one loss law, from the highest rate of the exposure to the lowest.</summary>
public sealed record LawLife
{
    internal LawLife(ILossLaw law, Lifetime earliest, Lifetime latest)
    {
        this.Law = law;
        this.Earliest = earliest;
        this.Latest = latest;
    }

    /// <summary>The law.</summary>
    public ILossLaw Law { get; }

    /// <summary>Least foil at the highest rate.</summary>
    public Lifetime Earliest { get; }

    /// <summary>Nominal foil at the lowest rate.</summary>
    public Lifetime Latest { get; }
}
