namespace SacrificialTape.Quantities;

/// <summary>Extra tape on top of what the lays need: spoilage, trial wraps, stock for repairs.</summary>
/// <remarks>
/// <para>Range: 0 up to but not 1; 5 % is written 0.05. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct Contingency
{
    private static readonly AcceptedRange Accepted = AcceptedRange.FromBelow(0, 1, "").Noting("a fraction of 1; write 0.05 for 5 %");

    private readonly StoredNumber stored;

    private Contingency(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(Contingency));

    /// <summary>States the number in parts of one.</summary>
    /// <param name="value">Accepted: 0 up to but not 1; 5 % is written 0.05.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static Contingency FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
