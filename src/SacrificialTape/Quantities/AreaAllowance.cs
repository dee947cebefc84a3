namespace SacrificialTape.Quantities;

/// <summary>What is added to a measured area for what was not seen or not measured, as a share of it.</summary>
/// <remarks>
/// <para>Range: 0 to 1; 15 % is written 0.15. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct AreaAllowance
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 1, "").Noting("a fraction of 1; write 0.15 for 15 %");

    private readonly StoredNumber stored;

    private AreaAllowance(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(AreaAllowance));

    /// <summary>States the number in parts of one.</summary>
    /// <param name="value">Accepted: 0 to 1; 15 % is written 0.15.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static AreaAllowance FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
