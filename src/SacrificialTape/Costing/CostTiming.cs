using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>When an amount is paid, counted from the day the tape is laid.</summary>
/// <remarks>Time later: more than 0 and at most 10 000 a. Interval: at least 0.01 a and at most 10 000 a.</remarks>
public sealed record CostTiming
{
    private readonly StoredNumber years;

    private CostTiming(double years, bool recurs, bool alsoAtTheEnd)
    {
        this.years = new StoredNumber(years);
        this.Recurs = recurs;
        this.AlsoAtTheEnd = alsoAtTheEnd;
    }

    /// <summary>At the start, with the tape.</summary>
    public static CostTiming AtStart { get; } = new(0, false, true);

    /// <summary>At the end of each year, the last one included.</summary>
    public static CostTiming Yearly { get; } = new(1, true, true);

    /// <summary>Whether it is paid again and again.</summary>
    public bool Recurs { get; }

    /// <summary>Whether it is paid at the start, once.</summary>
    public bool IsAtStart => !this.Recurs && this.Years == 0;

    /// <summary>Whether a payment that falls on the end of the study period is made too; a single payment is.</summary>
    public bool AlsoAtTheEnd { get; }

    /// <summary>The time from the start to the payment, or from one payment to the next.</summary>
    public Duration Time => UnitConversions.FromYears(this.Years);

    internal double Years => this.years.Bare;

    /// <summary>Once, later.</summary>
    /// <param name="time">From the start, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    public static CostTiming After(Duration time) => new(
        AcceptedRange.AboveUpTo(0, TimeValue.MostYears, "a").Check(UnitConversions.Years(time), nameof(time)), false, true);

    /// <summary>Again and again, first when the first interval is over.</summary>
    /// <param name="interval">From one to the next.</param>
    /// <param name="alsoAtTheEnd">
    /// Whether a payment that falls on the end of the study period is made: yes for upkeep that is paid in arrears, no
    /// for work that nobody does on the last day.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The interval is outside its range.</exception>
    public static CostTiming Every(Duration interval, bool alsoAtTheEnd) => new(
        AcceptedRange.Between(0.01, TimeValue.MostYears, "a").Check(UnitConversions.Years(interval), nameof(interval)),
        true,
        alsoAtTheEnd);

    /// <summary>The time in a few words.</summary>
    public override string ToString()
    {
        string text = MeasureText.Write(this.Years, TradeUnit.Year, 6);
        return this.IsAtStart ? "at the start" : this.Recurs ? $"every {text}" : $"after {text}";
    }

    /// <summary>Whether a single payment falls within a study, its last day included.</summary>
    internal bool Counts(double studyYears) => WithAllowance.AtMost(this.Years, studyYears);
}
