namespace SacrificialTape.Quantities;

/// <summary>The anode metal that goes for each ampere over a year of 8760 h.</summary>
/// <remarks>
/// <para>Range: finite, more than zero. Canonical unit: kg/(A.a). Equality: 15 significant digits of the canonical number. <c>default</c> is
/// unset and says so when read.</para>
/// </remarks>
public readonly record struct AnodeConsumption
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Above(0, "kg/(A.a)");

    private readonly StoredNumber stored;

    private AnodeConsumption(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in kilograms per ampere and year.</summary>
    public double KilogramsPerAmpereYear => this.stored.Read(nameof(AnodeConsumption));

    /// <summary>States the number in kilograms per ampere and year.</summary>
    /// <param name="value">Accepted: finite, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static AnodeConsumption FromKilogramsPerAmpereYear(double value) => new(Accepted.Check(value));

    /// <summary>States the number in pounds per ampere and year; 1 lb = 0.45359237 kg exactly.</summary>
    /// <param name="value">Accepted: finite, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static AnodeConsumption FromPoundsPerAmpereYear(double value) =>
        new(AcceptedRange.Above(0, "lb/(A.a)").Check(value) * UnitConversions.KilogramsPerPound);

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.KilogramsPerAmpereYear, TradeUnit.KilogramPerAmpereYear, 6) : "unset";
}
