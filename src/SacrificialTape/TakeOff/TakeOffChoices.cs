using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>How strips are cut from rolls and how much spare is bought.</summary>
/// <remarks>Splice lap: zero or more. Shortest piece: more than the splice lap, in whole micrometres. Contingency: 0 up to but not 1.</remarks>
public sealed record TakeOffChoices
{
    private readonly StoredNumber spliceLapMm;
    private readonly StoredNumber shortestMm;

    /// <summary>Describes the choices.</summary>
    /// <param name="spliceLap">Lap of a new roll on the end of the old.</param>
    /// <param name="shortestPiece">The shortest piece worth splicing in; shorter remnants are offcuts.</param>
    /// <param name="contingency">Spare for spoilage, trial wraps and repairs, as a share of the strip that the lays need.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TakeOffChoices(Length spliceLap, Length shortestPiece, Contingency contingency)
        : this(spliceLap, shortestPiece, Spare.Undivided(contingency))
    {
    }

    /// <summary>Describes the choices, spare part by part.</summary>
    /// <param name="spliceLap">Lap of a new roll on the end of the old.</param>
    /// <param name="shortestPiece">The shortest piece worth splicing in; shorter remnants are offcuts.</param>
    /// <param name="spare">Spare for spoilage, trial wraps and repairs.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TakeOffChoices(Length spliceLap, Length shortestPiece, Spare spare)
    {
        ArgumentNullException.ThrowIfNull(spare);
        double lap = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(spliceLap), nameof(spliceLap));
        double shortest = UnitConversions.Millimeters(shortestPiece);

        // Pieces are cut in whole micrometres: a splice must gain at least one.
        AcceptedRange.Above(WholeMicrometers(lap) / 1e3, "mm").Noting("the splice lap")
            .Check(WholeMicrometers(shortest) / 1e3, nameof(shortestPiece));
        this.spliceLapMm = new StoredNumber(lap);
        this.shortestMm = new StoredNumber(shortest);
        this.Spare = spare;
    }

    /// <summary>Lap of a new roll on the end of the old.</summary>
    public Length SpliceLap => Length.FromMillimeters(this.spliceLapMm.Bare);

    /// <summary>The shortest piece worth splicing in.</summary>
    public Length ShortestPiece => Length.FromMillimeters(this.shortestMm.Bare);

    /// <summary>Spare, as a share of the strip that the lays need; trial wraps come on top.</summary>
    public Contingency Contingency => this.Spare.Share;

    /// <summary>Spare, part by part.</summary>
    public Spare Spare { get; }

    internal long SpliceLapUm => WholeMicrometers(this.spliceLapMm.Bare);

    internal long ShortestUm => WholeMicrometers(this.shortestMm.Bare);

    /// <summary>Takes splice lap and shortest piece from a rule set.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="contingency">Spare, as a share of the strip that the lays need; it has no default.</param>
    public static TakeOffChoices FromRules(RuleSet rules, Contingency contingency) => FromRules(rules, Spare.Undivided(contingency));

    /// <summary>Takes splice lap and shortest piece from a rule set.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="spare">Spare for spoilage, trial wraps and repairs; it has no default.</param>
    public static TakeOffChoices FromRules(RuleSet rules, Spare spare)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(
            Length.FromMillimeters(rules.Number(RuleIds.MinimumEndLap, TradeUnit.Millimeter)),
            Length.FromMillimeters(rules.Number(RuleIds.ShortestPiece, TradeUnit.Millimeter)),
            spare);
    }

    /// <summary>The choices in a few words.</summary>
    public override string ToString() => $"splice lap {MeasureText.Write(this.spliceLapMm.Bare, TradeUnit.Millimeter, 6)}, shortest piece {MeasureText.Write(this.shortestMm.Bare, TradeUnit.Millimeter, 6)}, {this.Spare}";

    private static long WholeMicrometers(double mm) => (long)Math.Round(mm * 1e3);
}
