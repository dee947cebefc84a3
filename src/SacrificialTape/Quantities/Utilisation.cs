namespace SacrificialTape.Quantities;

/// <summary>The share of the foil that may be used up before its life counts as ended: perforation ends it, not the last gram.</summary>
/// <remarks>
/// <para>Range: more than 0 and at most 1; 80 % is written 0.8. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct Utilisation
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AboveUpTo(0, 1, "").Noting("a fraction of 1; write 0.8 for 80 %");

    private readonly StoredNumber stored;

    private Utilisation(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(Utilisation));

    /// <summary>States the number in parts of one.</summary>
    /// <param name="value">Accepted: more than 0 and at most 1; 80 % is written 0.8.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static Utilisation FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
