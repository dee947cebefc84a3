namespace SacrificialTape.Quantities;

/// <summary>The hardness of a metal by the Vickers method, HV.</summary>
/// <remarks>
/// <para>Range: more than 0, at most 3000. Equality: 15 significant digits. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct VickersHardness
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AboveUpTo(0, 3000, "HV");

    private readonly StoredNumber stored;

    private VickersHardness(double value) => this.stored = new StoredNumber(value);

    /// <summary>The number in HV.</summary>
    public double Hv => this.stored.Read(nameof(VickersHardness));

    /// <summary>States a hardness in HV.</summary>
    /// <param name="value">Accepted: more than 0, at most 3000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range or not finite.</exception>
    public static VickersHardness FromHv(double value) => new(Accepted.Check(value));

    /// <summary>The value as invariant text.</summary>
    public override string ToString() =>
        this.stored.IsSet ? MeasureText.Write(this.Hv, TradeUnit.VickersHardness, 6) : "unset";
}
