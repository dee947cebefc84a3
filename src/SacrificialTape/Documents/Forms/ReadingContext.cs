using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>What the readers of one document share: its faults, the kinds that are known, named stocks, units as given, and the work left.</summary>
internal sealed class ReadingContext
{
    private readonly List<GivenMeasure> given = [];
    private readonly Dictionary<string, StripStock> stocks = new(StringComparer.Ordinal);
    private readonly long most;
    private double steps;
    private readonly string root;
    private string itemPath;
    private string itemKey = "$";

    internal ReadingContext(FaultList faults, DocumentForms forms, long steps, string root = "$")
    {
        this.root = root;
        this.itemPath = root;
        this.Faults = faults;
        this.Forms = forms;
        this.most = steps;
    }

    internal FaultList Faults { get; }

    internal DocumentForms Forms { get; }

    internal IReadOnlyList<GivenMeasure> Given => this.given;

    internal IReadOnlyCollection<string> StockNames => this.stocks.Keys;

    /// <summary>The item of a list that is being read: its measures are kept under its name, which survives where its number does not.</summary>
    internal void Enter(DocumentNode item, string list, string name)
    {
        this.itemPath = item.Path;
        this.itemKey = Key(list, name);
    }

    internal void Leave()
    {
        this.itemPath = this.root;
        this.itemKey = "$";
    }

    internal static string Key(string list, string name) => $"$.{list}['{name}']";

    internal void Keep(DocumentNode node, Measure measure, double number, TradeUnit canonical)
    {
        Measure plain = MeasureDefaults.Of(number, canonical);
        if (plain.Unit != measure.Unit || !plain.Number.Equals(measure.Number))
        {
            this.given.Add(new GivenMeasure(string.Concat(this.itemKey, node.Path.AsSpan(this.itemPath.Length)), measure));
        }
    }

    /// <summary>Names a stock; false when the name is taken.</summary>
    internal bool Name(string name, StripStock stock) => this.stocks.TryAdd(name, stock);

    internal StripStock? StockOf(string name) => this.stocks.GetValueOrDefault(name);

    /// <summary>
    /// Counts work before it is done: a short file may state a long row of strips or openings. Where it comes to more
    /// than is allowed, reading ends.
    /// </summary>
    internal void Charge(DocumentNode node, double steps)
    {
        this.steps += Math.Max(0, steps);
        if (!(this.steps <= this.most))
        {
            this.Faults.Add(node, FormattableString.Invariant(
                $"Up to here the document asks for about {this.steps:0} steps of counting; at most {this.most} are made. Divide it, or raise the limit if you trust it."));
            throw this.Faults.Exception();
        }
    }
}
