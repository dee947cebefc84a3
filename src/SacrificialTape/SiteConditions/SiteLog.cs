using System.Globalization;
using SacrificialTape.Quantities;

namespace SacrificialTape.SiteConditions;

/// <summary>Hours of a log or a forecast in order of time.</summary>
/// <remarks>
/// An hour that begins before the one above it ended is refused: it is out of order, stands twice, or comes of a clock that
/// was set back while its offset was written as before. An hour that is missing is a gap, kept as such and never bridged.
/// </remarks>
public sealed record SiteLog
{
    /// <summary>Describes a log.</summary>
    /// <param name="hours">Its hours in order, at least one.</param>
    /// <exception cref="ArgumentException">No hours, or an hour begins before the one above it ended.</exception>
    public SiteLog(IEnumerable<SiteHour> hours)
    {
        this.Hours = new ValueList<SiteHour>(hours);
        if (this.Hours.Count == 0)
        {
            throw new ArgumentException("A log has at least one hour.", nameof(hours));
        }

        for (int i = 1; i < this.Hours.Count; i++)
        {
            if (this.Hours[i].Start < this.Hours[i - 1].End)
            {
                throw new ArgumentException(Overlap(i, this.Hours[i - 1].Start, this.Hours[i].Start), nameof(hours));
            }
        }
    }

    /// <summary>Its hours in order.</summary>
    public ValueList<SiteHour> Hours { get; }

    /// <summary>This log and a later one as one; what lies between them is a gap.</summary>
    /// <param name="later">A log that begins when this one ends, or after.</param>
    /// <exception cref="ArgumentException">It begins before this one ends.</exception>
    public SiteLog Then(SiteLog later)
    {
        ArgumentNullException.ThrowIfNull(later);
        return new(this.Hours.Concat(later.Hours));
    }

    /// <summary>How many hours, from when to when.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Hours.Count} hour(s), {this.Hours[0].Start:yyyy-MM-dd HH:mm zzz} to {this.Hours[^1].End:yyyy-MM-dd HH:mm zzz}");

    private static string Overlap(int index, DateTimeOffset before, DateTimeOffset at)
    {
        string why = at == before ? "stands twice" : at < before ? "lies before it: sort the log, or look for a clock set back with its offset unchanged" : "begins before it ended";
        return string.Create(
            CultureInfo.InvariantCulture, $"Hour {index} of the log ({at:yyyy-MM-dd HH:mm zzz}), after {before:yyyy-MM-dd HH:mm zzz}, {why}. Each hour begins at least an hour after the one above it.");
    }
}
