namespace SacrificialTape.Quantities;

/// <summary>Bare steel under the tape per area covered: the measure of contact over paint.</summary>
/// <remarks>
/// <para>Range: 0 to 10 000 cm2/m2 (all bare). Canonical unit: cm2/m2. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct BareRatio
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 10000, "cm2/m2");

    private readonly StoredNumber stored;

    private BareRatio(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in square centimetres of bare steel per square metre covered.</summary>
    public double SquareCentimetersPerSquareMeter => this.stored.Read(nameof(BareRatio));

    /// <summary>States the number in square centimetres of bare steel per square metre covered.</summary>
    /// <param name="value">Accepted: 0 to 10 000 cm2/m2 (all bare).</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static BareRatio FromSquareCentimetersPerSquareMeter(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.SquareCentimetersPerSquareMeter, TradeUnit.SquareCentimeterPerSquareMeter, 6) : "unset";
}
