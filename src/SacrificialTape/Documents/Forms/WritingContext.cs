using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>What the writers of one document share: the kinds that are known, the names of stocks, units as given.</summary>
internal sealed class WritingContext
{
    private readonly Dictionary<string, Measure> given;
    private readonly Dictionary<StripStock, string> stocks;

    internal WritingContext(DocumentForms forms, IEnumerable<NamedStock> stocks, IEnumerable<GivenMeasure> given)
    {
        this.Forms = forms;
        this.stocks = new Dictionary<StripStock, string>(StockBits.Comparer);
        foreach (NamedStock stock in stocks)
        {
            this.stocks.TryAdd(stock.Stock, stock.Name);
        }

        this.given = new Dictionary<string, Measure>(StringComparer.Ordinal);
        foreach (GivenMeasure one in given)
        {
            this.given[one.Path] = one.Measure;
        }
    }

    internal DocumentForms Forms { get; }

    internal string? NameOf(StripStock stock) => this.stocks.GetValueOrDefault(stock);

    /// <summary>A number at a place, or at a member of it, as its author gave it where that still means the very same, otherwise in the library's choice of unit.</summary>
    internal Measure AsGiven(string place, string? name, double number, TradeUnit canonical) =>
        this.given.Count > 0 && this.given.TryGetValue(name is null ? place : DocumentTree.Member(place, name), out Measure measure) && MeasureDefaults.Means(measure, number, canonical)
            ? measure
            : MeasureDefaults.Of(number, canonical);
}
