using System.Globalization;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>A time in which laying may go on.</summary>
public sealed record WorkWindow
{
    private readonly int hours;

    internal WorkWindow(DateTimeOffset start, int hours)
    {
        this.Start = start;
        this.hours = hours;
    }

    /// <summary>When it begins.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends: by then the last strip lies.</summary>
    public DateTimeOffset End => this.Start.AddHours(this.hours);

    /// <summary>How long it is, in whole hours.</summary>
    public Duration Length => Duration.FromHours(this.hours);

    internal int Hours => this.hours;

    /// <summary>From when to when, and how long.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Start:yyyy-MM-dd HH:mm zzz} to {this.End:yyyy-MM-dd HH:mm zzz}, {this.hours} h");
}
