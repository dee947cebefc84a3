using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>How strips are cut from rolls and how much spare is bought.</summary>
/// <remarks>Splice lap: zero or more. Shortest piece: more than the splice lap. Contingency: 0 up to but not 1.</remarks>
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
    {
        double lap = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(spliceLap), nameof(spliceLap));
        double shortest = AcceptedRange.Above(lap, "mm (the splice lap)")
            .Check(UnitConversions.Millimeters(shortestPiece), nameof(shortestPiece));
        _ = contingency.Fraction;
        this.spliceLapMm = new StoredNumber(lap);
        this.shortestMm = new StoredNumber(shortest);
        this.Contingency = contingency;
    }

    /// <summary>Lap of a new roll on the end of the old.</summary>
    public Length SpliceLap => Length.FromMillimeters(this.spliceLapMm.Bare);

    /// <summary>The shortest piece worth splicing in.</summary>
    public Length ShortestPiece => Length.FromMillimeters(this.shortestMm.Bare);

    /// <summary>Spare, as a share of the strip that the lays need.</summary>
    public Contingency Contingency { get; }

    internal long SpliceLapUm => (long)Math.Round(this.spliceLapMm.Bare * 1e3);

    internal long ShortestUm => (long)Math.Round(this.shortestMm.Bare * 1e3);

    /// <summary>Takes splice lap and shortest piece from a rule set.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="contingency">Spare, as a share of the strip that the lays need; it has no default.</param>
    public static TakeOffChoices FromRules(RuleSet rules, Contingency contingency)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(
            Length.FromMillimeters(rules.Number(RuleIds.MinimumEndLap, TradeUnit.Millimeter)),
            Length.FromMillimeters(rules.Number(RuleIds.ShortestPiece, TradeUnit.Millimeter)),
            contingency);
    }

    /// <summary>The choices in a few words.</summary>
    public override string ToString() => $"splice lap {MeasureText.Write(this.spliceLapMm.Bare, TradeUnit.Millimeter, 6)}, shortest piece {MeasureText.Write(this.shortestMm.Bare, TradeUnit.Millimeter, 6)}, contingency {this.Contingency}";
}
