using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>How many worker hours a unit of work takes. The user's own data: no published norm for this work was found, so there is no default.</summary>
/// <remarks>Hours per unit: zero or more. Two norms of one kind by different measures add up, for instance by area and by piece.</remarks>
public sealed record LabourNorm
{
    private readonly StoredNumber hours;

    /// <summary>States a norm.</summary>
    /// <param name="kind">The kind of work.</param>
    /// <param name="measure">By what it is counted.</param>
    /// <param name="timePerUnit">Working time of one worker for 1 m2, 1 m of strip or one piece; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or the measure is not defined.</exception>
    public LabourNorm(LabourKind kind, LabourMeasure measure, Duration timePerUnit)
    {
        ArgumentNullException.ThrowIfNull(kind);
        this.Kind = kind;
        this.Measure = Enum.IsDefined(measure)
            ? measure
            : throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of work known here.");
        this.hours = new StoredNumber(
            AcceptedRange.AtLeast(0, "h").Check(UnitConversions.Hours(timePerUnit), nameof(timePerUnit)));
    }

    /// <summary>The kind of work.</summary>
    public LabourKind Kind { get; }

    /// <summary>By what it is counted.</summary>
    public LabourMeasure Measure { get; }

    /// <summary>Working time of one worker for one unit.</summary>
    public Duration TimePerUnit => Duration.FromHours(this.HoursPerUnit);

    internal double HoursPerUnit => this.hours.Bare;

    /// <summary>The norm in a few words.</summary>
    public override string ToString() => $"{this.Kind}: {MeasureText.Write(this.HoursPerUnit, TradeUnit.Hour, 6)} {PerUnit(this.Measure)}";

    internal static string PerUnit(LabourMeasure measure) => measure switch
    {
        LabourMeasure.Area => "per m2",
        LabourMeasure.StripLength => "per m of strip",
        _ => "per piece",
    };
}
