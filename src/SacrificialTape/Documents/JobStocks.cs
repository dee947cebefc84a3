using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>The strips of a job, each with a name: those that were named, then the others by number.</summary>
internal static class JobStocks
{
    internal static ValueList<NamedStock> Of(Job job, CostPrices? prices, ValueList<NamedStock> named)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        var known = new HashSet<StripStock>(StockBits.Comparer);
        foreach (NamedStock one in named)
        {
            _ = known.Add(one.Stock);
            if (!names.Add(one.Name))
            {
                throw new ArgumentException($"Two stocks are named '{one.Name}'.", nameof(named));
            }
        }

        var all = new List<NamedStock>(named);
        int number = 0;
        foreach (StripStock stock in Used(job, prices))
        {
            if (known.Add(stock))
            {
                string name;
                do
                {
                    name = FormattableString.Invariant($"stock {++number}");
                }
                while (!names.Add(name));
                all.Add(new NamedStock(name, stock));
            }
        }

        return new ValueList<NamedStock>(all);
    }

    /// <summary>Stocks that a line uses and nothing prices, each once, with the first line that uses it.</summary>
    internal static IEnumerable<UnpricedStock> Unpriced(Job job, CostPrices prices)
    {
        var priced = new HashSet<StripStock>(prices.Rolls.Select(static price => price.Stock));
        foreach (SurveyLine line in job.Lines)
        {
            foreach (StripStock stock in line.Welds is { } welds ? Of(line.Lay).Append(welds.Stock) : Of(line.Lay))
            {
                if (priced.Add(stock))
                {
                    yield return new UnpricedStock(line.Tag, stock);
                }
            }
        }
    }

    private static IEnumerable<StripStock> Used(Job job, CostPrices? prices) =>
    [
        .. job.Lines.SelectMany(static line => line.Welds is { } welds ? Of(line.Lay).Append(welds.Stock) : Of(line.Lay)),
        .. prices?.Rolls.Select(static price => price.Stock) ?? [],
    ];

    private static IEnumerable<StripStock> Of(ILay lay) => lay switch
    {
        SpiralPairLay pair => [pair.First.Stock, pair.Second.Stock],
        InterruptedLay interrupted => interrupted.Spans.Select(static span => span.Stock),
        _ => [lay.Stock],
    };
}
