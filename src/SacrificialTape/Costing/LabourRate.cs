namespace SacrificialTape.Costing;

/// <summary>What an hour of one worker costs, with all that is charged on it. The user's own data.</summary>
public sealed record LabourRate
{
    /// <summary>States a rate.</summary>
    /// <param name="perHour">Price of an hour, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative.</exception>
    public LabourRate(Money perHour) => this.PerHour = perHour.Price(nameof(perHour));

    /// <summary>Price of an hour.</summary>
    public Money PerHour { get; }

    /// <summary>The rate in a few words.</summary>
    public override string ToString() => $"{this.PerHour} an hour";
}
