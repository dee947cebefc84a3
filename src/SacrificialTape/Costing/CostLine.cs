using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Costing;

/// <summary>One line of an estimate: so much of something, at a price.</summary>
public sealed record CostLine
{
    internal CostLine(CostKind kind, string name, Measure quantity, Money unitPrice, CostTiming timing, StripStock? stock = null)
    {
        this.Kind = kind;
        this.Name = name;
        this.Quantity = quantity;
        this.UnitPrice = unitPrice;
        this.Timing = timing;
        this.Amount = unitPrice.Times(quantity.Number);
        this.Stock = stock;
    }

    /// <summary>What it is for.</summary>
    public CostKind Kind { get; }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>How much of it.</summary>
    public Measure Quantity { get; }

    /// <summary>The price of one.</summary>
    public Money UnitPrice { get; }

    /// <summary>Quantity times price, not rounded.</summary>
    public Money Amount { get; }

    /// <summary>The strip whose rolls or waste are paid; null for all else.</summary>
    public StripStock? Stock { get; }

    /// <summary>When it is paid; a recurring amount is that of one time.</summary>
    public CostTiming Timing { get; }

    /// <summary>The line in a few words.</summary>
    public override string ToString() => $"{this.Kind}, {this.Name}: {this.Quantity} at {this.UnitPrice} = {this.Amount}, {this.Timing}";
}
