namespace SacrificialTape.Costing;

/// <summary>A line of an estimate with its amount rounded to what can be paid.</summary>
public sealed record CostLedgerLine
{
    internal CostLedgerLine(CostLine line, Money amount)
    {
        this.Line = line;
        this.Amount = amount;
    }

    /// <summary>The line of the estimate.</summary>
    public CostLine Line { get; }

    /// <summary>Its amount, rounded.</summary>
    public Money Amount { get; }

    /// <summary>The line in a few words.</summary>
    public override string ToString() => $"{this.Line.Kind}, {this.Line.Name}: {this.Amount}";
}
