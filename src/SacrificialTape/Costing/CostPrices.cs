using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Costing;

/// <summary>All prices and norms of an estimate: the user's own data, in one currency. There are no defaults.</summary>
public sealed record CostPrices
{
    /// <summary>Gathers prices.</summary>
    /// <param name="rolls">A price for each stock that is bought, one for each stock.</param>
    /// <param name="labour">The price of an hour.</param>
    /// <param name="norms">How long the work takes; of one kind and measure one at most.</param>
    /// <param name="access">What it costs to reach the steel; may be left out.</param>
    /// <param name="consumables">What is used up by the area; may be left out.</param>
    /// <param name="waste">What it costs to be rid of trim and offcuts; left out: not counted.</param>
    /// <param name="own">Costs of the user's own; may be left out.</param>
    /// <exception cref="ArgumentException">Two currencies are mixed, or something is priced twice.</exception>
    public CostPrices(
        IEnumerable<RollPrice> rolls,
        LabourRate labour,
        IEnumerable<LabourNorm> norms,
        IEnumerable<AccessItem>? access = null,
        IEnumerable<Consumable>? consumables = null,
        WasteDisposal? waste = null,
        IEnumerable<ICostItem>? own = null)
    {
        ValueList<RollPrice> allRolls = rolls.Listed();
        ValueList<LabourNorm> allNorms = norms.Listed();
        ArgumentNullException.ThrowIfNull(labour);
        this.Rolls = allRolls;
        this.Labour = labour;
        this.Norms = allNorms;
        this.Access = access?.Listed() ?? ValueList<AccessItem>.Empty;
        this.Consumables = consumables?.Listed() ?? ValueList<Consumable>.Empty;
        this.Waste = waste;
        this.Own = own?.Listed() ?? ValueList<ICostItem>.Empty;
        Once(allRolls.Select(static price => price.Stock.ToString()), allRolls.Select(static price => price.Stock), nameof(rolls));
        Once(allNorms.Select(static norm => norm.ToString()), allNorms.Select(static norm => (norm.Kind, norm.Measure)), nameof(norms));
        foreach (Money price in this.All)
        {
            _ = labour.PerHour.Same(price);
        }
    }

    /// <summary>A price for each stock.</summary>
    public ValueList<RollPrice> Rolls { get; }

    /// <summary>The price of an hour.</summary>
    public LabourRate Labour { get; }

    /// <summary>How long the work takes.</summary>
    public ValueList<LabourNorm> Norms { get; }

    /// <summary>What it costs to reach the steel.</summary>
    public ValueList<AccessItem> Access { get; }

    /// <summary>What is used up by the area.</summary>
    public ValueList<Consumable> Consumables { get; }

    /// <summary>What it costs to be rid of trim and offcuts; null: not counted.</summary>
    public WasteDisposal? Waste { get; }

    /// <summary>Costs of the user's own.</summary>
    public ValueList<ICostItem> Own { get; }

    /// <summary>The currency of all of them.</summary>
    public string Currency => this.Labour.PerHour.Currency;

    private IEnumerable<Money> All =>
    [
        .. this.Rolls.Select(static price => price.PerRoll),
        .. this.Access.Select(static item => item.Price),
        .. this.Consumables.Select(static item => item.PerSquareMeter),
        .. this.Own.Select(static item => item.Amount),
        .. this.Waste is { } waste ? [waste.PerKilogram] : Array.Empty<Money>(),
    ];

    /// <summary>The prices counted in a few words.</summary>
    public override string ToString() => $"prices in {this.Currency}: {this.Rolls.Count} stock(s), {this.Labour}, {this.Norms.Count} norm(s), {this.Access.Count} of access, {this.Consumables.Count} consumable(s), {this.Own.Count} own";

    internal RollPrice? PriceOf(StripStock stock) => this.Rolls.FirstOrDefault(price => price.Stock == stock);

    private static void Once<T>(IEnumerable<string> names, IEnumerable<T> keys, string parameter)
    {
        var seen = new HashSet<T>();
        foreach ((string name, T key) in names.Zip(keys))
        {
            if (!seen.Add(key))
            {
                throw new ArgumentException($"Priced twice: {name}.", parameter);
            }
        }
    }
}
