using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>
/// How widely a rate is known, as s of a log-normal error: the rate lies between r exp(-s) and r exp(+s). It is not
/// symmetric: 0.405 is a third less to a half more.
/// </summary>
/// <remarks>
/// <para>Range: finite, zero or more. Equality: 15 significant digits. <c>default</c> is unset and says so when read.</para>
/// <para>The text that was read does not say what share of sites the interval holds. Taking s as one standard deviation
/// of ln r (some 68 %) is a judgement.</para>
/// </remarks>
public readonly record struct LogSpread
{
    private readonly StoredNumber stored;

    private LogSpread(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number s.</summary>
    public double Value => this.stored.Read(nameof(LogSpread));

    /// <summary>States s.</summary>
    /// <param name="value">Finite, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static LogSpread FromValue(double value) => new(AcceptedRange.AtLeast(0, string.Empty).Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() => this.stored.IsSet ? MeasureText.Write(this.Value, TradeUnit.One, 6) : "unset";
}
