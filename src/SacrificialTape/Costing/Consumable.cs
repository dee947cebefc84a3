namespace SacrificialTape.Costing;

/// <summary>What is used up by the area: solvent, abrasive, rollers, edge seal. The user's own data.</summary>
public sealed record Consumable
{
    /// <summary>States a price.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="perSquareMeter">Price for 1 m2 of steel covered, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative.</exception>
    public Consumable(string name, Money perSquareMeter)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        this.Name = name;
        this.PerSquareMeter = perSquareMeter.Price(nameof(perSquareMeter));
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Price for 1 m2 of steel covered.</summary>
    public Money PerSquareMeter { get; }

    /// <summary>The price in a few words.</summary>
    public override string ToString() => $"{this.Name}: {this.PerSquareMeter} per m2";
}
