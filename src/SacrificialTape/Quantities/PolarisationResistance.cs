namespace SacrificialTape.Quantities;

/// <summary>How far a metal's potential moves for each ampere per square metre that it gives or takes, near its rest potential.</summary>
/// <remarks>
/// <para>Range: finite, more than zero. Canonical unit: ohm.m2. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct PolarisationResistance
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Above(0, "ohm.m2");

    private readonly StoredNumber stored;

    private PolarisationResistance(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in ohm square metres.</summary>
    public double OhmSquareMeters => this.stored.Read(nameof(PolarisationResistance));

    /// <summary>States the number in ohm square metres.</summary>
    /// <param name="value">Accepted: finite, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static PolarisationResistance FromOhmSquareMeters(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.OhmSquareMeters, TradeUnit.OhmSquareMeter, 6) : "unset";
}
