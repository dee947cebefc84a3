using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>What a year's waiting is worth: the share by which an amount grows in a year, compounded yearly.</summary>
/// <remarks>
/// Range: more than -1 and less than 1; 5 % is written 0.05; 0 is allowed and means that time costs nothing. It has no
/// default. With prices of today use a rate above inflation. Equality: 15 significant digits. <c>default</c> is unset
/// and says so when read.
/// </remarks>
public readonly record struct DiscountRate
{
    private static readonly AcceptedRange Accepted =
        AcceptedRange.Inside(-1, 1, string.Empty).Noting("a fraction of 1 per year; write 0.05 for 5 %");

    private readonly StoredNumber stored;

    private DiscountRate(double value) => this.stored = new StoredNumber(value);

    /// <summary>The rate as a fraction per year.</summary>
    public double FractionPerYear => this.stored.Read(nameof(DiscountRate));

    /// <summary>States a rate as a fraction per year.</summary>
    /// <param name="value">More than -1 and less than 1; 5 % is written 0.05.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static DiscountRate FromFractionPerYear(double value) => new(Accepted.Check(value));

    /// <summary>The rate as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.FractionPerYear, TradeUnit.One, 6) + " per year" : "unset";
}
