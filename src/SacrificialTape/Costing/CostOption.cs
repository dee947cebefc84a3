using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>One way to protect the steel: what it costs, how long it lasts, and what is paid later.</summary>
/// <remarks>
/// Area: more than 0. First cost: zero or more. Earliest life: at least 0.01 a, at most the latest; either may be
/// unlimited. Later costs count from the start of the study and are not repeated with a replacement.
/// </remarks>
public sealed record CostOption
{
    private readonly StoredNumber squareMeters;

    /// <summary>Describes an option.</summary>
    /// <param name="name">How reports name it.</param>
    /// <param name="area">Area of steel covered.</param>
    /// <param name="firstCost">What it costs each time it is bought.</param>
    /// <param name="earliestLife">The earliest end that is plausible.</param>
    /// <param name="latestLife">The latest end that is plausible.</param>
    /// <param name="later">What is paid in later years; may be left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">Two currencies are mixed.</exception>
    public CostOption(
        string name, Area area, Money firstCost, Lifetime earliestLife, Lifetime latestLife, IEnumerable<ICostItem>? later = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        this.Name = name;
        this.squareMeters = new StoredNumber(
            AcceptedRange.Above(0, "m2").Check(UnitConversions.SquareMeters(area), nameof(area)));
        this.FirstCost = firstCost.Price(nameof(firstCost));
        if (!earliestLife.IsUnlimited)
        {
            AcceptedRange.AtLeast(0.01, "a (a life that can be priced)").Check(earliestLife.Years, nameof(earliestLife));
        }

        if (latestLife < earliestLife)
        {
            throw new ArgumentOutOfRangeException(nameof(latestLife), $"{latestLife} is shorter than the earliest life, {earliestLife}.");
        }

        this.EarliestLife = earliestLife;
        this.LatestLife = latestLife;
        this.Later = later?.Listed() ?? ValueList<ICostItem>.Empty;
        foreach (ICostItem item in this.Later)
        {
            _ = firstCost.Same(item.Amount);
        }
    }

    /// <summary>An option from an estimate of cost and one of life.</summary>
    /// <param name="name">How reports name it.</param>
    /// <param name="cost">What it costs, and what is paid later.</param>
    /// <param name="life">How long it lasts.</param>
    /// <exception cref="ArgumentOutOfRangeException">The life is too short to be priced.</exception>
    public CostOption(string name, CostEstimate cost, LifeEstimate life)
        : this(
            name,
            (cost ?? throw new ArgumentNullException(nameof(cost))).Area,
            cost.FirstCost,
            (life ?? throw new ArgumentNullException(nameof(life))).Earliest,
            life.Latest,
            cost.Later)
    {
    }

    /// <summary>How reports name it.</summary>
    public string Name { get; }

    /// <summary>Area of steel covered.</summary>
    public Area Area => Area.FromSquareMeters(this.SquareMeters);

    /// <summary>What it costs each time it is bought.</summary>
    public Money FirstCost { get; }

    /// <summary>The earliest end that is plausible.</summary>
    public Lifetime EarliestLife { get; }

    /// <summary>The latest end that is plausible.</summary>
    public Lifetime LatestLife { get; }

    /// <summary>What is paid in later years.</summary>
    public ValueList<ICostItem> Later { get; }

    internal double SquareMeters => this.squareMeters.Bare;

    /// <summary>Name, cost and life in a few words.</summary>
    public override string ToString() => $"{this.Name}: {this.FirstCost} for {MeasureText.Write(this.SquareMeters, TradeUnit.SquareMeter, 6)}, lasts {this.EarliestLife} to {this.LatestLife}";
}
