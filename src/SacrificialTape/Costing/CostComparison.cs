using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>Options held side by side: equivalent annual cost per square metre over one study period, at one rate.</summary>
/// <remarks>
/// Study period: more than 0 and at most 10 000 a. Ranked by the cost at the earliest life, the safer reading. An option
/// whose life does not divide the study period leaves something unused at the end; no worth is counted for it unless a
/// later cost of the option says so, hence a study period that all lives divide compares fairest.
/// </remarks>
/// <example><code source="CostPage.cs" region="compare" /></example>
public sealed record CostComparison : IHasWorkings
{
    private readonly StoredNumber studyYears;

    /// <summary>Compares options.</summary>
    /// <param name="options">At least one, in one currency, each with a name of its own.</param>
    /// <param name="studyPeriod">How long the steel is to be protected.</param>
    /// <param name="rate">The discount rate.</param>
    /// <exception cref="ArgumentException">There is no option, a name comes twice, or two currencies are mixed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The study period is outside its range.</exception>
    public CostComparison(IEnumerable<CostOption> options, Duration studyPeriod, DiscountRate rate)
    {
        ValueList<CostOption> allOptions = options.Listed();
        double years = AcceptedRange.AboveUpTo(0, TimeValue.MostYears, "a").Check(UnitConversions.Years(studyPeriod), nameof(studyPeriod));
        _ = rate.FractionPerYear;
        if (allOptions.Count == 0)
        {
            throw new ArgumentException("A comparison needs at least one option.", nameof(options));
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (CostOption option in allOptions)
        {
            _ = allOptions[0].FirstCost.Same(option.FirstCost);
            if (!names.Add(option.Name))
            {
                throw new ArgumentException($"Two options are named '{option.Name}'.", nameof(options));
            }
        }

        this.studyYears = new StoredNumber(years);
        this.Rate = rate;
        this.Ranking = Rank([.. allOptions.Select(option => (
            new OptionCost(option, option.EarliestLife, years, rate), new OptionCost(option, option.LatestLife, years, rate)))]);
    }

    /// <summary>How long the steel is to be protected.</summary>
    public Duration StudyPeriod => UnitConversions.FromYears(this.studyYears.Bare);

    /// <summary>The discount rate.</summary>
    public DiscountRate Rate { get; }

    /// <summary>The options, cheapest first; tied ones by name.</summary>
    public ValueList<RankedOption> Ranking { get; }

    /// <summary>Whether one option is cheapest whatever the lives turn out to be within their ranges.</summary>
    public bool IsDecided => this.Ranking.Count(static one => one.OverlapsBest) == 1;

    /// <summary>The workings of every option in its place, each at its earliest life, by which it is ranked.</summary>
    public Workings ShowWorkings() => new(
        $"Equivalent annual cost of a square metre of {string.Join(", ", this.Ranking.Select(static one => one.Option.Name))}",
        new ValueList<WorkingStep>(this.Ranking.SelectMany(static one => one.AtEarliestLife.ShowWorkings().Steps)));

    /// <summary>The ranking as plain text, a line for each option.</summary>
    public override string ToString() => string.Join('\n', this.Ranking);

    private static ValueList<RankedOption> Rank((OptionCost Earliest, OptionCost Latest)[] costs)
    {
        (OptionCost Earliest, OptionCost Latest)[] sorted =
        [
            .. costs.OrderBy(static cost => cost.Earliest.PerSquareMeterAndYear).ThenBy(static cost => cost.Earliest.Option.Name, StringComparer.Ordinal),
        ];

        // Places first: each group of ties is held against its cheapest member.
        var places = new int[sorted.Length];
        for (int i = 0; i < sorted.Length; i++)
        {
            int first = i == 0 ? 0 : places[i - 1] - 1;
            places[i] = Tie(sorted[first].Earliest, sorted[i].Earliest) ? first + 1 : i + 1;
        }

        double best = sorted.Where((_, i) => places[i] == 1).Max(static cost => Number(cost.Earliest));
        return new(sorted
            .Select((cost, i) => new RankedOption(
                places[i],
                cost.Earliest,
                cost.Latest,
                places.Count(place => place == places[i]) > 1,
                places[i] == 1 || WithAllowance.AtMost(Math.Min(Number(cost.Latest), Number(cost.Earliest)), best)))
            .OrderBy(static one => one.Rank)
            .ThenBy(static one => one.Option.Name, StringComparer.Ordinal));
    }

    private static bool Tie(OptionCost one, OptionCost other) =>
        WithAllowance.AtMost(Number(one), Number(other)) && WithAllowance.AtLeast(Number(one), Number(other));

    private static double Number(OptionCost cost) => (double)cost.PerSquareMeterAndYear.Amount;
}
