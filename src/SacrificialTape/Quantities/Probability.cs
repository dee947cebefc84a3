namespace SacrificialTape.Quantities;

/// <summary>How likely something is, from 0 (never) to 1 (always).</summary>
/// <remarks>
/// Range: at least 0, at most 1; 90 % is written 0.9. Order: by size. Equality: 15 significant digits. <c>default</c> is
/// unset and says so when read.
/// </remarks>
public readonly record struct Probability : IComparable<Probability>, IComparable
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 1, string.Empty).Noting("a fraction of 1; write 0.9 for 90 %");

    private readonly StoredNumber stored;

    private Probability(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(Probability));

    /// <summary>Whether one is less likely than another.</summary>
    public static bool operator <(Probability left, Probability right) => left.CompareTo(right) < 0;

    /// <summary>Whether one is likelier than another.</summary>
    public static bool operator >(Probability left, Probability right) => left.CompareTo(right) > 0;

    /// <summary>Whether one is at most as likely as another.</summary>
    public static bool operator <=(Probability left, Probability right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one is at least as likely as another.</summary>
    public static bool operator >=(Probability left, Probability right) => left.CompareTo(right) >= 0;

    /// <summary>States a probability in parts of one.</summary>
    /// <param name="value">At least 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static Probability FromFraction(double value) => new(Accepted.Check(value));

    /// <inheritdoc/>
    public int CompareTo(Probability other) => this.Fraction.CompareTo(other.Fraction);

    /// <summary>The same order for callers that know no type; null comes first.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    int IComparable.CompareTo(object? obj) => UntypedOrder.Of(this, obj);

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
