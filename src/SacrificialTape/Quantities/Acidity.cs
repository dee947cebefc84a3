namespace SacrificialTape.Quantities;

/// <summary>How acid or alkaline a water is, as its pH.</summary>
/// <remarks>
/// <para>Range: 0 to 14. Equality: 15 significant digits. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct Acidity
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 14, "").Noting("pH");

    private readonly StoredNumber stored;

    private Acidity(double value) => this.stored = new StoredNumber(value);

    /// <summary>The pH.</summary>
    public double Ph => this.stored.Read(nameof(Acidity));

    /// <summary>States a pH.</summary>
    /// <param name="value">Accepted: 0 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static Acidity FromPh(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? "pH " + MeasureText.Write(this.Ph, TradeUnit.One, 6) : "unset";
}
