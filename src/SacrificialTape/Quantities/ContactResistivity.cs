namespace SacrificialTape.Quantities;

/// <summary>Resistance of a joint times its area: what one square centimetre of adhesive puts between foil and steel.</summary>
/// <remarks>
/// <para>Range: finite, zero or more. Canonical unit: ohm.cm2. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct ContactResistivity
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AtLeast(0, "ohm.cm2");

    private readonly StoredNumber stored;

    private ContactResistivity(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in ohm square centimetres.</summary>
    public double OhmSquareCentimeters => this.stored.Read(nameof(ContactResistivity));

    /// <summary>States the number in ohm square centimetres.</summary>
    /// <param name="value">Accepted: finite, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static ContactResistivity FromOhmSquareCentimeters(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter, 6) : "unset";
}
