namespace SacrificialTape.Quantities;

/// <summary>A share of the zinc that may be used up: all of it at first, none when the life ends.</summary>
/// <remarks>
/// Range: at least 0, at most 1; 30 % is written 0.3. Equality: 15 significant digits. <c>default</c> is unset and says so
/// when read.
/// </remarks>
public readonly record struct ZincShare
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 1, string.Empty).Noting("a fraction of 1; write 0.3 for 30 %");

    private readonly StoredNumber stored;

    private ZincShare(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(ZincShare));

    /// <summary>States a share in parts of one.</summary>
    /// <param name="value">At least 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static ZincShare FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
