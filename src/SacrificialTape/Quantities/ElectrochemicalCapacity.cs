namespace SacrificialTape.Quantities;

/// <summary>The charge that a kilogram of anode metal delivers before it is used up.</summary>
/// <remarks>
/// <para>Range: finite, more than zero. Canonical unit: A.h/kg. Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct ElectrochemicalCapacity
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Above(0, "A.h/kg");

    private readonly StoredNumber stored;

    private ElectrochemicalCapacity(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in ampere hours per kilogram.</summary>
    public double AmpereHoursPerKilogram => this.stored.Read(nameof(ElectrochemicalCapacity));

    /// <summary>States the number in ampere hours per kilogram.</summary>
    /// <param name="value">Accepted: finite, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static ElectrochemicalCapacity FromAmpereHoursPerKilogram(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.AmpereHoursPerKilogram, TradeUnit.AmpereHourPerKilogram, 6) : "unset";
}
