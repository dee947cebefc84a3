namespace SacrificialTape.Costing;

/// <summary>A cost of the user's own, stated as it is.</summary>
public sealed record CostItem : ICostItem
{
    /// <summary>States a cost.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="amount">How much each time; negative for a credit.</param>
    /// <param name="timing">When it is paid.</param>
    public CostItem(string name, Money amount, CostTiming timing)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(timing);
        _ = amount.Amount;
        this.Name = name;
        this.Amount = amount;
        this.Timing = timing;
    }

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Money Amount { get; }

    /// <inheritdoc/>
    public CostTiming Timing { get; }

    /// <summary>The cost in a few words.</summary>
    public override string ToString() => $"{this.Name}: {this.Amount} {this.Timing}";
}
