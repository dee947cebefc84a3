using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>The spare of a take-off, part by part, or as one share that is not divided.</summary>
/// <remarks>
/// Shares are of the strip that the lays need; together less than 1. Trial wraps: 0 to 1000 km of strip, on each stock
/// that is bought. Every part is counted in whole micrometres; nothing here has a default.
/// </remarks>
public sealed record Spare
{
    private readonly StoredNumber trialMm;

    /// <summary>Describes spare part by part.</summary>
    /// <param name="spoilage">Strip that is spoilt while it is laid, as a share of what the lays need.</param>
    /// <param name="trialWraps">Strip for trial wraps, on each stock that is bought.</param>
    /// <param name="repairStock">Stock kept for repairs, as a share of what the lays need.</param>
    /// <exception cref="ArgumentOutOfRangeException">The shares come to 1 or more, or the length is outside its range.</exception>
    public Spare(Contingency spoilage, Length trialWraps, Contingency repairStock)
    {
        this.Share = Contingency.FromFraction(spoilage.Fraction + repairStock.Fraction);
        this.trialMm = new StoredNumber(
            AcceptedRange.Between(0, 1e9, "mm").Check(UnitConversions.Millimeters(trialWraps), nameof(trialWraps)));
        this.Spoilage = spoilage;
        this.RepairStock = repairStock;
    }

    private Spare(Contingency share)
    {
        _ = share.Fraction;
        this.Share = share;
        this.trialMm = new StoredNumber(0);
    }

    /// <summary>Whether the parts are stated one by one.</summary>
    public bool IsDivided => this.Spoilage is not null;

    /// <summary>All that is a share of the strip that the lays need; trial wraps come on top.</summary>
    public Contingency Share { get; }

    /// <summary>Strip that is spoilt while it is laid; null where the spare is one share.</summary>
    public Contingency? Spoilage { get; }

    /// <summary>Strip for trial wraps, on each stock that is bought.</summary>
    public Length TrialWraps => Length.FromMillimeters(this.trialMm.Bare);

    /// <summary>Stock kept for repairs; null where the spare is one share.</summary>
    public Contingency? RepairStock { get; }

    /// <summary>One share for everything.</summary>
    /// <param name="share">Of the strip that the lays need.</param>
    public static Spare Undivided(Contingency share) => new(share);

    /// <summary>The parts in a few words.</summary>
    public override string ToString() => this.IsDivided
        ? $"spoilage {this.Spoilage}, trial wraps {MeasureText.Write(this.trialMm.Bare, TradeUnit.Millimeter, 6)} of each stock, repair stock {this.RepairStock}"
        : $"contingency {this.Share}";

    internal SpareLengths Of(long neededUm) => this.Spoilage is { } spoilage && this.RepairStock is { } repairs
        ? new(0, Um(neededUm, spoilage), (long)Math.Round(this.trialMm.Bare * 1e3), Um(neededUm, repairs))
        : new(Um(neededUm, this.Share), 0, 0, 0);

    private static long Um(long neededUm, Contingency share) => (long)Math.Round(neededUm * share.Fraction);
}
