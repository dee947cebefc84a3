using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>When to look again: after half the remaining life, and never later than the longest interval of the class.</summary>
/// <remarks>
/// The share and the longest interval are rules. An undetermined life gives no reason to wait: the longest interval holds,
/// and the finding on the life stays.
/// </remarks>
public sealed record NextInspection : IHasWorkings
{
    private readonly StoredNumber remaining;
    private readonly StoredNumber share;
    private readonly StoredNumber most;

    /// <summary>Works out the interval.</summary>
    /// <param name="remaining">The remaining life, zero or more; null when it is undetermined. Take that of the thin spots to be safe.</param>
    /// <param name="rules">The rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The life is negative.</exception>
    public NextInspection(Duration? remaining, RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        this.remaining = remaining is { } known
            ? new StoredNumber(AcceptedRange.AtLeast(0, "a").Check(UnitConversions.Years(known), nameof(remaining)))
            : default;
        this.share = new StoredNumber(rules.Number(RuleIds.InspectionLifeShare, TradeUnit.One));
        this.most = new StoredNumber(rules.Number(RuleIds.LongestInspectionInterval, TradeUnit.Year));
    }

    /// <summary>Time to the next inspection.</summary>
    public Duration Interval => UnitConversions.FromYears(this.Years(default(NoSteps)));

    /// <summary>The day by which to look again, rounded down to a whole day.</summary>
    /// <param name="inspected">The day of the readings.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day would lie beyond the calendar.</exception>
    public DateOnly After(DateOnly inspected) => inspected.AddDays((int)WithAllowance.Floor(this.Years(default(NoSteps)) * 365));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Years(steps);
        return steps.Under("Next inspection");
    }

    /// <summary>The interval in a few words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"within {this.Years(default(NoSteps)):0.##} a");

    private double Years<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.remaining.IsSet
        ? RemainingLifeKernel.NextInspection(this.share.Bare, this.remaining.Bare, this.most.Bare, steps)
        : this.most.Bare;
}
