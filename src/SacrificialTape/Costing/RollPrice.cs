using SacrificialTape.Tapes;

namespace SacrificialTape.Costing;

/// <summary>What a roll of a stocked strip costs. The user's own data.</summary>
public sealed record RollPrice
{
    /// <summary>States a price.</summary>
    /// <param name="stock">The stocked strip.</param>
    /// <param name="perRoll">Price of one roll, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative.</exception>
    public RollPrice(StripStock stock, Money perRoll)
    {
        ArgumentNullException.ThrowIfNull(stock);
        this.Stock = stock;
        this.PerRoll = perRoll.Price(nameof(perRoll));
    }

    /// <summary>The stocked strip.</summary>
    public StripStock Stock { get; }

    /// <summary>Price of one roll.</summary>
    public Money PerRoll { get; }

    /// <summary>Price and stock in a few words.</summary>
    public override string ToString() => $"{this.PerRoll} for a roll of {this.Stock}";
}
