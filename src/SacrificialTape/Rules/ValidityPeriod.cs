using System.Globalization;

namespace SacrificialTape.Rules;

/// <summary>From which day to which a rule may be used; both days belong to it, and either may be open.</summary>
/// <remarks>Range: at least one day is stated, and the first is not after the last.</remarks>
public sealed record ValidityPeriod
{
    /// <summary>Describes a period.</summary>
    /// <param name="from">First day; null when it has no beginning.</param>
    /// <param name="until">Last day; null when it has no end.</param>
    /// <exception cref="ArgumentException">Neither day is stated, or the first comes after the last.</exception>
    public ValidityPeriod(DateOnly? from, DateOnly? until)
    {
        if (from is null && until is null)
        {
            throw new ArgumentException("A period of validity needs a first day, a last day or both.", nameof(from));
        }

        if (from > until)
        {
            throw new ArgumentException($"The first day, {Day(from.Value)}, is after the last, {Day(until.Value)}.", nameof(from));
        }

        this.From = from;
        this.Until = until;
    }

    /// <summary>First day; null when it has no beginning.</summary>
    public DateOnly? From { get; }

    /// <summary>Last day; null when it has no end.</summary>
    public DateOnly? Until { get; }

    /// <summary>Whether a day lies within the period.</summary>
    /// <param name="day">The day.</param>
    public bool Includes(DateOnly day) => !(day < this.From) && !(day > this.Until);

    /// <summary>The period in a few words, days as year-month-day.</summary>
    public override string ToString() => (this.From, this.Until) switch
    {
        ({ } from, { } until) => $"from {Day(from)} until {Day(until)}",
        ({ } from, null) => $"from {Day(from)}",
        (_, { } until) => $"until {Day(until)}",
        _ => string.Empty,
    };

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
