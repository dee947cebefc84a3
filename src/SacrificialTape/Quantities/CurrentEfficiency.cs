namespace SacrificialTape.Quantities;

/// <summary>The share of the charge an anode holds that reaches the steel; the rest goes into its own corrosion.</summary>
/// <remarks>
/// <para>Range: more than 0 and at most 1; 80 % is written 0.8. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct CurrentEfficiency
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AboveUpTo(0, 1, "").Noting("a fraction of 1; write 0.8 for 80 %");

    private readonly StoredNumber stored;

    private CurrentEfficiency(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(CurrentEfficiency));

    /// <summary>States the number in parts of one.</summary>
    /// <param name="value">Accepted: more than 0 and at most 1; 80 % is written 0.8.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static CurrentEfficiency FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
