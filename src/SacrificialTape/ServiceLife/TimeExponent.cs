using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The exponent b of the power law D = r t^b: how much a metal's own corrosion products slow it down.</summary>
/// <remarks>Range: more than 0, at most 1 (1 is no slowing). Equality: 15 significant digits. <c>default</c> is unset.</remarks>
public readonly record struct TimeExponent
{
    private readonly StoredNumber stored;

    private TimeExponent(double value) => this.stored = new StoredNumber(value);

    /// <summary>The exponent.</summary>
    public double Value => this.stored.Read(nameof(TimeExponent));

    /// <summary>States an exponent.</summary>
    /// <param name="value">More than 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range.</exception>
    public static TimeExponent FromValue(double value) => new(AcceptedRange.AboveUpTo(0, 1, string.Empty).Check(value));

    /// <summary>The exponent as invariant text.</summary>
    public override string ToString() => this.stored.IsSet ? MeasureText.Write(this.Value, TradeUnit.One, 6) : "unset";
}
