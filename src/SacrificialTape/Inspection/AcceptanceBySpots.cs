using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Spots of one area of 10 m2 held against a least and a most thickness, by SSPC-PA 2.</summary>
/// <remarks>
/// The mean of the area lies between least and most; no spot is below 80 % of the least or above 120 % of the most; single
/// readings are not judged. Five spots an area. A paint document, used by choice.
/// </remarks>
public sealed record AcceptanceBySpots
{
    private readonly StoredNumber least;
    private readonly StoredNumber most;

    /// <summary>Holds spots against the rule.</summary>
    /// <param name="spots">The spots of the area, at least one.</param>
    /// <param name="least">Least thickness, more than 0.</param>
    /// <param name="most">Most thickness, at least the least, at most 20 mm.</param>
    /// <param name="rules">The rule set: its shares.</param>
    /// <param name="subject">How findings name the area.</param>
    /// <exception cref="ArgumentException">There is no spot, or the subject is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A thickness is outside its range.</exception>
    public AcceptanceBySpots(IEnumerable<AcceptanceSpot> spots, Length least, Length most, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        this.Spots = new ValueList<AcceptanceSpot>(spots);
        if (this.Spots.Count == 0)
        {
            throw new ArgumentException("There is no spot.", nameof(spots));
        }

        double low = AcceptedRange.AboveUpTo(0, 20_000, "um").Check(UnitConversions.Micrometers(least), nameof(least));
        double high = AcceptedRange.Between(low, 20_000, "um").Noting("at least the least").Check(UnitConversions.Micrometers(most), nameof(most));
        this.least = new StoredNumber(low);
        this.most = new StoredNumber(high);
        this.Findings = new ValueList<Finding>(AcceptanceChecks.Spots(this.Spots, low, high, rules, subject).OfType<Finding>());
    }

    /// <summary>The spots.</summary>
    public ValueList<AcceptanceSpot> Spots { get; }

    /// <summary>Least thickness.</summary>
    public Length Least => Length.FromMicrometers(this.least.Bare);

    /// <summary>Most thickness.</summary>
    public Length Most => Length.FromMicrometers(this.most.Bare);

    /// <summary>Why it is not accepted.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Whether nothing speaks against it.</summary>
    public bool IsAccepted => this.Findings.All(static one => one.Severity == Severity.Note);

    /// <summary>Count and verdict.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Spots.Count} spot(s), {this.least.Bare:0.##} to {this.most.Bare:0.##} um: {(this.IsAccepted ? "accepted" : "not accepted")}");
}
