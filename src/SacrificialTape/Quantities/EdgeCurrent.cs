namespace SacrificialTape.Quantities;

/// <summary>Current over each metre of an edge; positive where metal gives it to the water (anode).</summary>
/// <remarks>
/// <para>Range: any finite number. Canonical unit: mA/m. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct EdgeCurrent
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(double.MinValue, double.MaxValue, "mA/m");

    private readonly StoredNumber stored;

    private EdgeCurrent(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in milliamperes per metre.</summary>
    public double MilliamperesPerMeter => this.stored.Read(nameof(EdgeCurrent));

    /// <summary>States the number in milliamperes per metre.</summary>
    /// <param name="value">Accepted: any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static EdgeCurrent FromMilliamperesPerMeter(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.MilliamperesPerMeter, TradeUnit.MilliamperePerMeter, 6) : "unset";
}
