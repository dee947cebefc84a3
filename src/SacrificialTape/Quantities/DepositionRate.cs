namespace SacrificialTape.Quantities;

/// <summary>How much of a pollutant (sulfur dioxide, chloride) settles on each square metre in a day.</summary>
/// <remarks>
/// <para>Range: finite, zero or more. Canonical unit: mg/(m2.d). Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct DepositionRate
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AtLeast(0, "mg/(m2.d)");

    private readonly StoredNumber stored;

    private DepositionRate(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in milligrams per square metre and day.</summary>
    public double MilligramsPerSquareMeterDay => this.stored.Read(nameof(DepositionRate));

    /// <summary>States the number in milligrams per square metre and day.</summary>
    /// <param name="value">Accepted: finite, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static DepositionRate FromMilligramsPerSquareMeterDay(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.MilligramsPerSquareMeterDay, TradeUnit.MilligramPerSquareMeterDay, 6) : "unset";
}
