using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>What was done on a line: who, when, with which batch, and what was read at its hold points.</summary>
public sealed record AsBuiltLine
{
    /// <summary>Describes a line as built.</summary>
    /// <param name="tag">Its tag in the plan.</param>
    /// <param name="laidBy">Who laid it.</param>
    /// <param name="laidAt">When.</param>
    /// <param name="batches">The batches laid, at least one; <see cref="TapeBatch.Unknown"/> where it was not noted.</param>
    /// <param name="readings">What was read at its hold points; the conditions stand in that of cleaning.</param>
    /// <exception cref="ArgumentException">A text is empty, or there is no batch.</exception>
    public AsBuiltLine(string tag, string laidBy, DateTimeOffset laidAt, IEnumerable<TapeBatch> batches, IEnumerable<HoldPointReading> readings)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        ArgumentException.ThrowIfNullOrWhiteSpace(laidBy);
        this.Tag = tag;
        this.LaidBy = laidBy;
        this.LaidAt = laidAt;
        this.Batches = new ValueList<TapeBatch>(batches);
        this.Readings = new ValueList<HoldPointReading>(readings);
        if (this.Batches.Count == 0)
        {
            throw new ArgumentException("A line has at least one batch; take TapeBatch.Unknown where none was noted.", nameof(batches));
        }
    }

    /// <summary>Its tag in the plan.</summary>
    public string Tag { get; }

    /// <summary>Who laid it.</summary>
    public string LaidBy { get; }

    /// <summary>When.</summary>
    public DateTimeOffset LaidAt { get; }

    /// <summary>The batches laid.</summary>
    public ValueList<TapeBatch> Batches { get; }

    /// <summary>What was read at its hold points.</summary>
    public ValueList<HoldPointReading> Readings { get; }

    /// <summary>Name, who and when.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Tag}, laid by {this.LaidBy}, {this.LaidAt:yyyy-MM-dd HH:mm zzz}");

    internal IEnumerable<Finding> Judge(InspectionPlan plan, RuleSet rules)
    {
        DateOnly day = DateOnly.FromDateTime(this.LaidAt.DateTime);
        IEnumerable<Finding> batches = this.Batches.SelectMany(batch => batch.Judge(day, rules, this.Tag));
        IEnumerable<Finding> readings = this.Readings.SelectMany(reading => reading.Judge(rules, this.Tag));

        // A trial patch stands for all lines of its kind of surface; the record asks for it there.
        IEnumerable<Finding> missing = plan.HoldPoints
            .Where(point => point.Place == this.Tag && this.Readings.All(reading => reading.Kind != point.Kind))
            .Select(point => rules[RuleIds.NotInspected].State($"{this.Tag}, {HoldPointTexts.NameOf(point.Kind)}"));
        return batches.Concat(readings).Concat(missing);
    }
}
