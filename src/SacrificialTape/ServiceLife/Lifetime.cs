using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A life in years of 365 d, or a life without end.</summary>
/// <remarks>
/// Range: zero or more, or <see cref="Unlimited"/> (zinc that loses nothing). Order: by length, unlimited last.
/// Equality: 15 significant digits. <c>default</c> is unset and says so when read.
/// </remarks>
public readonly record struct Lifetime : IComparable<Lifetime>, IComparable
{
    private readonly StoredNumber years;

    private Lifetime(double years) => this.years = new StoredNumber(years);

    /// <summary>A life without end.</summary>
    public static Lifetime Unlimited { get; } = new(double.PositiveInfinity);

    /// <summary>Whether it has no end.</summary>
    public bool IsUnlimited => double.IsPositiveInfinity(this.Years);

    /// <summary>The life as a duration.</summary>
    /// <exception cref="InvalidOperationException">The life is unlimited: ask <see cref="IsUnlimited"/> first.</exception>
    public Duration Duration => this.IsUnlimited
        ? throw new InvalidOperationException("An unlimited life has no duration. Ask IsUnlimited first.")
        : UnitConversions.FromYears(this.Years);

    internal double Years => this.years.Read(nameof(Lifetime));

    /// <summary>Whether one life is shorter than another.</summary>
    public static bool operator <(Lifetime left, Lifetime right) => left.CompareTo(right) < 0;

    /// <summary>Whether one life is longer than another.</summary>
    public static bool operator >(Lifetime left, Lifetime right) => left.CompareTo(right) > 0;

    /// <summary>Whether one life is shorter than or as long as another.</summary>
    public static bool operator <=(Lifetime left, Lifetime right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one life is longer than or as long as another.</summary>
    public static bool operator >=(Lifetime left, Lifetime right) => left.CompareTo(right) >= 0;

    /// <summary>A life of a duration.</summary>
    /// <param name="duration">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duration is negative.</exception>
    public static Lifetime Of(Duration duration) =>
        new(AcceptedRange.AtLeast(0, "a").Check(UnitConversions.Years(duration), nameof(duration)));

    /// <inheritdoc/>
    public int CompareTo(Lifetime other) => this.Years.CompareTo(other.Years);

    /// <summary>The same order for callers that know no type; null comes first.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    int IComparable.CompareTo(object? obj) => UntypedOrder.Of(this, obj);

    /// <summary>The life as invariant text.</summary>
    public override string ToString() => !this.years.IsSet
        ? "unset"
        : this.IsUnlimited ? "unlimited" : MeasureText.Write(this.Years, TradeUnit.Year, 4);

    internal static Lifetime OfYears(double years) => new(years);
}
