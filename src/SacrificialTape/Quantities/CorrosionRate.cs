using UnitsNet;

namespace SacrificialTape.Quantities;

/// <summary>How fast a metal surface recedes: thickness lost per year of 365 d.</summary>
/// <remarks>
/// <para>Range: finite, zero or more. Canonical unit: um/a. Equality: 15 significant digits of the canonical number;
/// order by size. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct CorrosionRate : IComparable<CorrosionRate>, IComparable
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AtLeast(0, "um/a");

    private readonly StoredNumber stored;

    private CorrosionRate(double value) => this.stored = new StoredNumber(value);

    /// <summary>The rate in micrometres per year.</summary>
    public double MicrometersPerYear => this.stored.Read(nameof(CorrosionRate));

    /// <summary>Whether one rate is below another.</summary>
    public static bool operator <(CorrosionRate left, CorrosionRate right) => left.CompareTo(right) < 0;

    /// <summary>Whether one rate is above another.</summary>
    public static bool operator >(CorrosionRate left, CorrosionRate right) => left.CompareTo(right) > 0;

    /// <summary>Whether one rate is below or equal to another.</summary>
    public static bool operator <=(CorrosionRate left, CorrosionRate right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one rate is above or equal to another.</summary>
    public static bool operator >=(CorrosionRate left, CorrosionRate right) => left.CompareTo(right) >= 0;

    /// <summary>States a rate in micrometres per year.</summary>
    /// <param name="rate">Finite, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public static CorrosionRate FromMicrometersPerYear(double rate) => new(Accepted.Check(rate));

    /// <summary>States a rate in mils (thousandths of an inch) per year; 1 mil = 25.4 um exactly.</summary>
    /// <param name="rate">Finite, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public static CorrosionRate FromMilsPerYear(double rate) =>
        new(AcceptedRange.AtLeast(0, "mil/a").Check(rate) * UnitConversions.MillimetersPerInch);

    /// <summary>States the mean rate of a loss of thickness over a time.</summary>
    /// <param name="loss">Thickness lost, at least 0.</param>
    /// <param name="time">The time it took, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative or the time is not positive.</exception>
    public static CorrosionRate FromLoss(Length loss, Duration time) => new(
        AcceptedRange.AtLeast(0, "um").Check(UnitConversions.Micrometers(loss), nameof(loss))
        / AcceptedRange.Above(0, "a").Check(UnitConversions.Years(time), nameof(time)));

    /// <summary>The mass this rate removes from each square metre in a year.</summary>
    /// <param name="density">Density of the metal, more than 0. For zinc the standards use 7.14 and 7.2 g/cm3.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive.</exception>
    public MassLossRate ToMassLoss(Density density) => MassLossRate.FromGramsPerSquareMeterYear(
        MassLossKernel.GramsPerSquareMeterYear(this.MicrometersPerYear, MassLossRate.CheckDensity(density)));

    /// <inheritdoc/>
    public int CompareTo(CorrosionRate other) => this.MicrometersPerYear.CompareTo(other.MicrometersPerYear);

    /// <summary>The same order for callers that know no type; null comes first.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    int IComparable.CompareTo(object? obj) => UntypedOrder.Of(this, obj);

    /// <summary>The rate as invariant text.</summary>
    public override string ToString() => this.stored.IsSet
        ? MeasureText.Write(this.MicrometersPerYear, TradeUnit.MicrometerPerYear, 6)
        : "unset";
}
