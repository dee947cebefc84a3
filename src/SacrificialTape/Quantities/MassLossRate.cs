using UnitsNet;

namespace SacrificialTape.Quantities;

/// <summary>How fast a metal surface loses mass: per square metre and year of 365 d.</summary>
/// <remarks>
/// <para>Kept apart from <see cref="CorrosionRate"/> because the standards round the two columns of their category
/// tables separately: a rate is classified in the unit it was measured in.</para>
/// <para>Range: finite, zero or more. Canonical unit: g/(m2.a). Equality: 15 significant digits; order by size.
/// <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct MassLossRate : IComparable<MassLossRate>, IComparable
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AtLeast(0, "g/(m2.a)");

    private readonly StoredNumber stored;

    private MassLossRate(double value) => this.stored = new StoredNumber(value);

    /// <summary>The rate in grams per square metre and year.</summary>
    public double GramsPerSquareMeterYear => this.stored.Read(nameof(MassLossRate));

    /// <summary>Whether one rate is below another.</summary>
    public static bool operator <(MassLossRate left, MassLossRate right) => left.CompareTo(right) < 0;

    /// <summary>Whether one rate is above another.</summary>
    public static bool operator >(MassLossRate left, MassLossRate right) => left.CompareTo(right) > 0;

    /// <summary>Whether one rate is below or equal to another.</summary>
    public static bool operator <=(MassLossRate left, MassLossRate right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one rate is above or equal to another.</summary>
    public static bool operator >=(MassLossRate left, MassLossRate right) => left.CompareTo(right) >= 0;

    /// <summary>States a rate in grams per square metre and year.</summary>
    /// <param name="rate">Finite, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public static MassLossRate FromGramsPerSquareMeterYear(double rate) => new(Accepted.Check(rate));

    /// <summary>States a rate in ounces per square foot and year; 1 oz = 28.349523125 g and 1 ft = 0.3048 m exactly.</summary>
    /// <param name="rate">Finite, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public static MassLossRate FromOuncesPerSquareFootYear(double rate) => new(
        AcceptedRange.AtLeast(0, "oz/(ft2.a)").Check(rate) * UnitConversions.GramsPerOunce / UnitConversions.SquareMetersPerSquareFoot);

    /// <summary>The thickness this loss of mass removes in a year.</summary>
    /// <param name="density">Density of the metal, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive.</exception>
    public CorrosionRate ToCorrosionRate(Density density) => CorrosionRate.FromMicrometersPerYear(
        MassLossKernel.MicrometersPerYear(this.GramsPerSquareMeterYear, CheckDensity(density)));

    /// <inheritdoc/>
    public int CompareTo(MassLossRate other) => this.GramsPerSquareMeterYear.CompareTo(other.GramsPerSquareMeterYear);

    /// <summary>The same order for callers that know no type; null comes first.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    int IComparable.CompareTo(object? obj) => UntypedOrder.Of(this, obj);

    /// <summary>The rate as invariant text.</summary>
    public override string ToString() => this.stored.IsSet
        ? MeasureText.Write(this.GramsPerSquareMeterYear, TradeUnit.GramPerSquareMeterYear, 6)
        : "unset";

    internal static double CheckDensity(Density density) =>
        AcceptedRange.Above(0, "kg/m3").Check(UnitConversions.KilogramsPerCubicMeter(density), nameof(density));
}
