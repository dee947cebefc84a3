namespace SacrificialTape.Quantities;

/// <summary>Tape laid on a surface over the surface itself: the number of layers on average.</summary>
/// <remarks>
/// <para>Range: finite, zero or more. Canonical unit: one. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct AreaRatio
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AtLeast(0, "");

    private readonly StoredNumber stored;

    private AreaRatio(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in square metres of tape per square metre of surface.</summary>
    public double Ratio => this.stored.Read(nameof(AreaRatio));

    /// <summary>States the number in square metres of tape per square metre of surface.</summary>
    /// <param name="value">Accepted: finite, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static AreaRatio FromRatio(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Ratio, TradeUnit.One, 6) : "unset";
}
