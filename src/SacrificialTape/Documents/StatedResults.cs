using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>What a job came to, as an estimate that is kept in a file states it.</summary>
public sealed record StatedResults
{
    internal StatedResults(StatedTotals totals, ValueList<StatedLine> lines, ValueList<StatedStock> stocks, ValueList<StatedFinding> findings, Money? firstCost)
    {
        this.Totals = totals;
        this.Lines = lines;
        this.Stocks = stocks;
        this.Findings = findings;
        this.FirstCost = firstCost;
    }

    /// <summary>The whole job.</summary>
    public StatedTotals Totals { get; }

    /// <summary>Line by line, in the order of the job.</summary>
    public ValueList<StatedLine> Lines { get; }

    /// <summary>What to order.</summary>
    public ValueList<StatedStock> Stocks { get; }

    /// <summary>Findings that belong to no single line.</summary>
    public ValueList<StatedFinding> Findings { get; }

    /// <summary>What it costs at the start, where prices and work were given.</summary>
    public Money? FirstCost { get; }

    /// <summary>Lines, rolls and cost in a few words.</summary>
    public override string ToString() =>
        $"{this.Lines.Count} line(s), {string.Join("; ", this.Stocks)}{(this.FirstCost is { } cost ? $", {cost}" : string.Empty)}";

    internal static StatedResults Of(JobEstimate estimate, ValueList<NamedStock> stocks, CostEstimate? cost)
    {
        Dictionary<Tapes.StripStock, string> names = new(StockBits.Comparer);
        foreach (NamedStock stock in stocks)
        {
            _ = names.TryAdd(stock.Stock, stock.Name);
        }

        return new(
            StatedTotals.Of(estimate),
            new ValueList<StatedLine>(estimate.Lines.Select(StatedLine.Of)),
            new ValueList<StatedStock>(estimate.TakeOff.Stocks.Select(stock => StatedStock.Of(stock, names[stock.Stock]))),
            new ValueList<StatedFinding>(estimate.GeneralFindings.Select(StatedFinding.Of)),
            cost?.FirstCost);
    }
}
