namespace SacrificialTape.CutPlans;

/// <summary>
/// Prices of the pieces at which no pattern is worth more than a roll. They prove a bound, and they show which patterns
/// a plan of so many rolls can hold at all.
/// </summary>
internal sealed record PriceList(long[] Prices, long RollWorth, Int128 PiecesWorth)
{
    /// <summary>All the pieces are worth at most a roll for each roll of any plan.</summary>
    internal long LeastRolls => (long)((this.PiecesWorth + this.RollWorth - 1) / this.RollWorth);

    /// <summary>The price list of lengths: a piece costs its length, a roll its own.</summary>
    internal static PriceList ByLength(Demand demand) => Of(demand, demand.Lengths, demand.Roll);

    internal static PriceList Of(Demand demand, long[] prices, long rollWorth)
    {
        Int128 worth = 0;
        for (int i = 0; i < prices.Length; i++)
        {
            worth += (Int128)prices[i] * demand.Counts[i];
        }

        return new(prices, rollWorth, worth);
    }

    /// <summary>
    /// What a plan of so many rolls can lose in all: rolls less pieces. No pattern of it loses more, since none gains.
    /// </summary>
    internal Int128 Slack(long rolls) => ((Int128)rolls * this.RollWorth) - this.PiecesWorth;
}
