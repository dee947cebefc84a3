namespace SacrificialTape.Costing;

/// <summary>An option in its place: what it costs if it lasts shortest and longest, and whether that decides.</summary>
public sealed record RankedOption
{
    internal RankedOption(int rank, OptionCost earliest, OptionCost latest, bool tied, bool overlapsBest)
    {
        this.Rank = rank;
        this.AtEarliestLife = earliest;
        this.AtLatestLife = latest;
        this.IsTied = tied;
        this.OverlapsBest = overlapsBest;
    }

    /// <summary>Its place by the cost at the earliest life, 1 the cheapest; tied options share a place, and the next is skipped.</summary>
    public int Rank { get; }

    /// <summary>The option.</summary>
    public CostOption Option => this.AtEarliestLife.Option;

    /// <summary>What it costs if it lasts shortest: the dear end of the range, by which it is ranked.</summary>
    public OptionCost AtEarliestLife { get; }

    /// <summary>What it costs if it lasts longest: the cheap end of the range.</summary>
    public OptionCost AtLatestLife { get; }

    /// <summary>Whether another option has the same place: the costs agree to 1e-9.</summary>
    public bool IsTied { get; }

    /// <summary>Whether its range of cost meets that of a cheapest option; if so, the ranking between the two is not decided by what is known.</summary>
    public bool OverlapsBest { get; }

    /// <summary>Place, name, range and reason in a few words.</summary>
    public override string ToString() =>
        $"{this.Rank}. {this.Option.Name}: {this.AtEarliestLife}; {this.AtLatestLife}{(this.IsTied ? "; tied" : string.Empty)}{(this.OverlapsBest && this.Rank > 1 ? "; range overlaps that of the best" : string.Empty)}";
}
