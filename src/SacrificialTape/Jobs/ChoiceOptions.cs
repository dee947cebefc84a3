using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What a choice is made among, at what prices, by what rules.</summary>
/// <remarks>
/// Stocks, laps, passes and kinds of lay: at least one of each, together at most 1 000 000 combinations; what is stated
/// twice is tried once, and the order does not matter. Laps: zero or more. Passes: 1 to 20.
/// </remarks>
public sealed record ChoiceOptions
{
    private const double MostTried = 1_000_000;

    private readonly ValueList<StoredNumber> lapsMm;

    /// <summary>Describes the options.</summary>
    /// <param name="stocks">The strips that can be had.</param>
    /// <param name="leastLaps">The laps to try.</param>
    /// <param name="passes">The numbers of passes to try.</param>
    /// <param name="makers">The kinds of lay to try, all on one surface, each under a name of its own.</param>
    /// <param name="prices">The user's own prices and norms: for every stock and every kind of lay.</param>
    /// <param name="takeOff">How strips are cut and how much spare is bought.</param>
    /// <param name="layChoices">End lap and wander; passes and method are taken from what is tried. Left out: those of the default rule set.</param>
    /// <param name="rollCounting">How rolls are paid.</param>
    /// <param name="rejectFrom">
    /// Findings of this severity and above reject, but for warnings that the first-year rate rests on recalled numbers, which are the
    /// same for every tape.
    /// </param>
    /// <param name="acceptedRules">Rules whose findings never reject: somebody has decided on them. Left out: none.</param>
    /// <param name="rules">The rule set; left out: the library's own.</param>
    /// <param name="ownRules">The code for rules of the set that the library does not know; left out: none.</param>
    /// <exception cref="ArgumentException">
    /// A list is empty, kinds of lay share a name or are on different surfaces, a price or a norm is missing, an accepted
    /// rule is not in the set, or a rule of the host's own is not in it, stands twice or is one of the library's.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there is too much to try.</exception>
    public ChoiceOptions(
        IEnumerable<StripStock> stocks,
        IEnumerable<Length> leastLaps,
        IEnumerable<int> passes,
        IEnumerable<ILayMaker> makers,
        CostPrices prices,
        TakeOffChoices takeOff,
        LayChoices? layChoices = null,
        RollCounting rollCounting = RollCounting.Whole,
        Severity rejectFrom = Severity.Warning,
        IEnumerable<string>? acceptedRules = null,
        RuleSet? rules = null,
        IEnumerable<IOwnRule>? ownRules = null)
    {
        ArgumentNullException.ThrowIfNull(prices);
        ArgumentNullException.ThrowIfNull(takeOff);
        this.Stocks = Several(stocks, nameof(stocks));
        this.lapsMm = new ValueList<StoredNumber>(Several(leastLaps, nameof(leastLaps))
            .Select(static lap => AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(lap), nameof(leastLaps)))
            .Order()
            .Select(static mm => new StoredNumber(mm))
            .Distinct());
        this.Passes = new ValueList<int>(Several(passes, nameof(passes))
            .Select(static count => (int)AcceptedRange.Between(1, 20, "passes").Check(count, nameof(passes)))
            .Order());
        this.Makers = Several(makers, nameof(makers));
        AcceptedRange.Between(1, MostTried, "combinations")
            .Check((double)this.Stocks.Count * this.lapsMm.Count * this.Passes.Count * this.Makers.Count, nameof(stocks));
        this.Prices = prices;
        this.TakeOff = takeOff;
        this.LayChoices = layChoices ?? LayChoices.Default;
        this.RollCounting = Enum.IsDefined(rollCounting) ? rollCounting : throw new ArgumentOutOfRangeException(nameof(rollCounting), rollCounting, "State Whole or ByShare.");
        this.RejectFrom = Enum.IsDefined(rejectFrom)
            ? rejectFrom
            : throw new ArgumentOutOfRangeException(nameof(rejectFrom), rejectFrom, "Not a severity known here.");
        this.AcceptedRules = new ValueList<string>((acceptedRules ?? []).Order(StringComparer.Ordinal).Distinct());
        this.JudgedBy = new LineRules(rules ?? RuleSet.Default, ownRules?.Listed(), nameof(ownRules));
        this.CheckMakers();
        this.CheckPrices();
        if (this.AcceptedRules.FirstOrDefault(id => !this.Rules.TryGet(id, out _)) is { } unknown)
        {
            throw new ArgumentException($"The rule set has no rule '{unknown}' that could be accepted.", nameof(acceptedRules));
        }
    }

    /// <summary>The strips that can be had, each once.</summary>
    public ValueList<StripStock> Stocks { get; }

    /// <summary>The laps to try, each once, small before large.</summary>
    public ValueList<Length> LeastLaps => new(this.lapsMm.Select(static lap => Length.FromMillimeters(lap.Bare)));

    /// <summary>The numbers of passes to try, each once, few before many.</summary>
    public ValueList<int> Passes { get; }

    /// <summary>The kinds of lay to try.</summary>
    public ValueList<ILayMaker> Makers { get; }

    /// <summary>The user's own prices and norms.</summary>
    public CostPrices Prices { get; }

    /// <summary>How strips are cut and how much spare is bought.</summary>
    public TakeOffChoices TakeOff { get; }

    /// <summary>End lap and wander.</summary>
    public LayChoices LayChoices { get; }

    /// <summary>How rolls are paid.</summary>
    public RollCounting RollCounting { get; }

    /// <summary>Findings of this severity and above reject.</summary>
    public Severity RejectFrom { get; }

    /// <summary>Rules whose findings never reject.</summary>
    public ValueList<string> AcceptedRules { get; }

    /// <summary>The rule set.</summary>
    public RuleSet Rules => this.JudgedBy.Set;

    /// <summary>The code for rules of the set that the library does not know.</summary>
    public ValueList<IOwnRule> OwnRules => this.JudgedBy.Own;

    /// <summary>What all kinds of lay are on.</summary>
    public Surface Surface => this.Makers[0].Surface;

    /// <summary>The options counted in a few words.</summary>
    public override string ToString() => $"{this.Stocks.Count} stock(s), {this.lapsMm.Count} lap(s), {this.Passes.Count} number(s) of passes, {this.Makers.Count} kind(s) of lay on {this.Surface}; rolls {this.RollCounting}, rejected from {this.RejectFrom}";

    internal LineRules JudgedBy { get; }

    /// <summary>
    /// Whether a finding speaks against a lay. A warning of what the numbers of a rate rest on does not: it is the same for every tape,
    /// so that it would reject all and choose none; it stays among the findings of those that are accepted. A rule set that makes a
    /// stop of it rejects.
    /// </summary>
    internal bool Rejects(Finding finding) =>
        finding.Severity >= this.RejectFrom
        && !(finding.Severity < Severity.Stop && finding.Rule.Id is (RuleIds.RecalledRate or RuleIds.RecalledCategory))
        && !this.AcceptedRules.Contains(finding.Rule.Id, StringComparer.Ordinal);

    private static ValueList<T> Several<T>(IEnumerable<T> given, string parameter)
    {
        ValueList<T> all = given.Listed(parameter);
        return all.Count > 0
            ? new ValueList<T>(all.Distinct())
            : throw new ArgumentException("There is nothing to choose from: state at least one.", parameter);
    }

    private void CheckMakers()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (ILayMaker maker in this.Makers)
        {
            if (!names.Add(maker.Name))
            {
                throw new ArgumentException($"Two kinds of lay are named '{maker.Name}'.", "makers");
            }

            if (!maker.Surface.Equals(this.Surface))
            {
                throw new ArgumentException($"Kinds of lay are compared on one surface, but '{maker.Name}' is on {maker.Surface} and '{this.Makers[0].Name}' on {this.Surface}.", "makers");
            }

            if (!this.Prices.Norms.Any(norm => norm.Kind == maker.Labour))
            {
                throw new ArgumentException($"No norm says how long this work takes: {maker.Labour}.", "prices");
            }
        }
    }

    private void CheckPrices()
    {
        var priced = new HashSet<StripStock>(this.Prices.Rolls.Select(static price => price.Stock));
        if (this.Stocks.FirstOrDefault(stock => !priced.Contains(stock)) is { } unpriced)
        {
            throw new ArgumentException($"No price is given for a roll of {unpriced}.", "prices");
        }
    }
}
