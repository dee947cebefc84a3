using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>What it costs to reach the steel: scaffold, rope, lift. A lump sum or so much a day.</summary>
/// <remarks>Price: zero or more. Days: more than 0.</remarks>
public sealed record AccessItem
{
    private readonly StoredNumber days;

    private AccessItem(string name, Money price, double days, bool perDay)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        this.Name = name;
        this.Price = price;
        this.days = new StoredNumber(days);
        this.IsPerDay = perDay;
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>The lump sum, or the price of a day.</summary>
    public Money Price { get; }

    /// <summary>Whether it is priced by the day.</summary>
    public bool IsPerDay { get; }

    /// <summary>How many days it is needed; 1 for a lump sum.</summary>
    public double Days => this.days.Bare;

    /// <summary>Access for a lump sum.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="price">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative.</exception>
    public static AccessItem Lump(string name, Money price) => new(name, price.Price(nameof(price)), 1, false);

    /// <summary>Access by the day.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="perDay">Price of a day, zero or more.</param>
    /// <param name="days">How many days, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static AccessItem PerDay(string name, Money perDay, double days) =>
        new(name, perDay.Price(nameof(perDay)), AcceptedRange.Above(0, "days").Check(days), true);

    /// <summary>The item in a few words.</summary>
    public override string ToString() => this.IsPerDay
        ? $"{this.Name}: {this.Price} a day, {MeasureText.Write(this.Days, TradeUnit.One, 6)} day(s)"
        : $"{this.Name}: {this.Price}";
}
