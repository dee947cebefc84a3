using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.SiteConditions;

/// <summary>An hour, or a gap of any length, in which no work may go on, and why.</summary>
public sealed record OutsideHour
{
    internal OutsideHour(DateTimeOffset start, DateTimeOffset end, HourState state, ValueList<Finding> reasons)
    {
        this.Start = start;
        this.End = end;
        this.State = state;
        this.Reasons = reasons;
    }

    /// <summary>When it begins.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends.</summary>
    public DateTimeOffset End { get; }

    /// <summary>Unfit, or not known.</summary>
    public HourState State { get; }

    /// <summary>Every reason.</summary>
    public ValueList<Finding> Reasons { get; }

    /// <summary>When, and the rules that speak.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Start:yyyy-MM-dd HH:mm zzz} to {this.End:HH:mm}: {(this.State == HourState.Unfit ? "unfit" : "not known")}, {string.Join(", ", this.Reasons.Select(static one => one.Rule.Id).Distinct())}");
}
