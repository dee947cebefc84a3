namespace SacrificialTape.Quantities;

/// <summary>How much longer or shorter the edge of a flat strip must become to lie on a curved surface, as a part of one.</summary>
/// <remarks>
/// <para>Range: 0 to 1, without sign: that an edge puckers or stretches is said by what it belongs to. Equality: 15
/// significant digits of the canonical number. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct EdgeStrain
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0, 1, "").Noting("a fraction of 1; write 0.01 for 1 %");

    private readonly StoredNumber stored;

    private EdgeStrain(double value) => this.stored = new StoredNumber(value);

    /// <summary>The strain as a part of one.</summary>
    public double Fraction => this.stored.Read(nameof(EdgeStrain));

    /// <summary>States a strain.</summary>
    /// <param name="value">0 to 1; 1 % is written 0.01.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static EdgeStrain FromFraction(double value) => new(Accepted.Check(value));

    /// <summary>The strain as invariant text, in percent.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Fraction * 100, TradeUnit.Percent, 4) : "unset";
}
