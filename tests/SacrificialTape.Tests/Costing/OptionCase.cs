namespace SacrificialTape.Tests.Costing;

/// <summary>An option with a range of lives, something paid later, and a study.</summary>
public sealed record OptionCase(double Rate, int StudyYears, double Earliest, double Latest, decimal FirstCost, double AreaM2, decimal Later, int Interval)
{
    internal DiscountRate Discount => DiscountRate.FromFractionPerYear(this.Rate);

    internal Duration Study => Duration.FromYears365(this.StudyYears);

    internal CostOption Make(string name = "tape", decimal factor = 1, params ICostItem[] later) => new(
        name,
        Area.FromSquareMeters(this.AreaM2),
        new Money(this.FirstCost * factor, "EUR"),
        Lifetime.Of(Duration.FromYears365(this.Earliest)),
        Lifetime.Of(Duration.FromYears365(this.Latest)),
        [.. later]);

    internal ICostItem[] Upkeep(decimal factor = 1) =>
    [
        new CostItem("inspection", new Money(this.Later * factor, "EUR"), CostTiming.Every(Duration.FromYears365(this.Interval), false)),
        new CostItem("upkeep", new Money(this.Later * factor / 4, "EUR"), CostTiming.Yearly),
        new CostItem("repair", new Money(this.Later * factor / 2, "EUR"), CostTiming.After(Duration.FromYears365(this.Interval))),
    ];

    internal RankedOption Priced(CostOption option) => new CostComparison([option], this.Study, this.Discount).Ranking[0];
}
