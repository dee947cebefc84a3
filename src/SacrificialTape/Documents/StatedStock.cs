using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;

namespace SacrificialTape.Documents;

/// <summary>What to order of one stock, as an estimate that is kept in a file states it.</summary>
public sealed record StatedStock
{
    internal StatedStock(string name, int rolls, int leastRolls, int splices, Measure bought, Measure zincBought, Measure zincLaid)
    {
        this.Name = name;
        this.Rolls = rolls;
        this.LeastRolls = leastRolls;
        this.Splices = splices;
        this.Bought = bought;
        this.ZincBought = zincBought;
        this.ZincLaid = zincLaid;
    }

    /// <summary>Its name among the stocks of the job.</summary>
    public string Name { get; }

    /// <summary>Rolls to order.</summary>
    public int Rolls { get; }

    /// <summary>A number that no plan of cutting can beat.</summary>
    public int LeastRolls { get; }

    /// <summary>Places where a new roll begins within a strip.</summary>
    public int Splices { get; }

    /// <summary>Strip in all rolls.</summary>
    public Measure Bought { get; }

    /// <summary>Zinc in all rolls.</summary>
    public Measure ZincBought { get; }

    /// <summary>Zinc that ends up on the steel.</summary>
    public Measure ZincLaid { get; }

    /// <summary>Rolls and name.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Rolls} roll(s) of {this.Name}");

    internal static StatedStock Of(StockTakeOff stock, string name) => new(
        name,
        checked((int)stock.Rolls),
        checked((int)stock.LeastRolls),
        checked((int)stock.Splices),
        Measure.Of(stock.Ledger.Bought),
        new Measure(UnitConversions.Kilograms(stock.ZincBought), TradeUnit.Kilogram),
        new Measure(UnitConversions.Kilograms(stock.ZincLaid), TradeUnit.Kilogram));
}
