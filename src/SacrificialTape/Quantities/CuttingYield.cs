namespace SacrificialTape.Quantities;

/// <summary>Area of the pieces over area of the strip they are cut from.</summary>
/// <remarks>
/// <para>Range: 0 to 1. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct CuttingYield
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 1, "");

    private readonly StoredNumber stored;

    private CuttingYield(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in parts of one.</summary>
    public double Fraction => this.stored.Read(nameof(CuttingYield));

    /// <summary>States the number in parts of one.</summary>
    /// <param name="value">Accepted: 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static CuttingYield FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction, TradeUnit.One, 6) : "unset";
}
