using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace SacrificialTape.Quantities;

/// <summary>
/// A number with the unit it was stated in: the limit of a rule, what a finding measured, a line of the workings, a
/// cell of a survey. It keeps number and unit as given and compares by meaning.
/// </summary>
/// <remarks>
/// <para>Range: any finite number. Text: invariant, a point as decimal sign, one of the symbols of
/// <see cref="TradeUnit"/> after an optional space; <c>1,5 mm</c> is refused.</para>
/// <para>Equality: 15 significant digits of the canonical number, so 10 mm, 1 cm and 0.01 m are one value. A
/// <c>default</c> value is unset and says so when read.</para>
/// </remarks>
/// <example><code source="PrecisionPage.cs" region="text" /></example>
public readonly struct Measure : IEquatable<Measure>, ISpanParsable<Measure>
{
    private readonly StoredNumber number;
    private readonly TradeUnit unit;

    /// <summary>States a number in a unit.</summary>
    /// <param name="number">Any finite number.</param>
    /// <param name="unit">The unit it is stated in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN or infinite, or the unit is not defined.</exception>
    public Measure(double number, TradeUnit unit)
    {
        string symbol = TradeUnits.Symbol(unit);
        AcceptedRange.Between(double.MinValue, double.MaxValue, symbol).Check(number);
        this.number = new StoredNumber(number);
        this.unit = unit;
    }

    /// <summary>The number as given, in <see cref="Unit"/>.</summary>
    public double Number => this.number.Read(nameof(Measure));

    /// <summary>The unit as given.</summary>
    public TradeUnit Unit => this.number.IsSet ? this.unit : throw new InvalidOperationException(
        "This Measure is unset: it is a default value that no constructor has filled.");

    /// <summary>What equality compares: the canonical unit, and the number in it cut to 15 digits.</summary>
    internal (TradeUnit Unit, double Number) Key => (TradeUnits.Scale(this.Unit).Canonical, StoredNumber.Key(this.Canonical));

    private double Canonical => this.Number * TradeUnits.Scale(this.unit).Factor;

    /// <summary>Whether two measures mean the same, whatever unit each is stated in.</summary>
    public static bool operator ==(Measure left, Measure right) => left.Equals(right);

    /// <summary>Whether two measures differ in meaning.</summary>
    public static bool operator !=(Measure left, Measure right) => !left.Equals(right);

    /// <summary>States a length in millimetres.</summary>
    /// <param name="length">Any length.</param>
    public static Measure Of(Length length) => new(UnitConversions.Millimeters(length), TradeUnit.Millimeter);

    /// <summary>States a duration in years of 365 d.</summary>
    /// <param name="duration">Any duration.</param>
    public static Measure Of(Duration duration) => new(UnitConversions.Years(duration), TradeUnit.Year);

    /// <summary>States a temperature in degrees Celsius.</summary>
    /// <param name="temperature">Any temperature.</param>
    public static Measure Of(Temperature temperature) =>
        new(UnitConversions.DegreesCelsius(temperature), TradeUnit.DegreeCelsius);

    /// <summary>The measure as a length.</summary>
    /// <exception cref="InvalidOperationException">It does not measure a length.</exception>
    public Length ToLength() => Length.FromMillimeters(this.In(TradeUnit.Millimeter));

    /// <summary>The measure as an area.</summary>
    /// <exception cref="InvalidOperationException">It does not measure an area.</exception>
    public Area ToArea() => Area.FromSquareMeters(this.In(TradeUnit.SquareMeter));

    /// <summary>The measure as a duration; a year is 365 d.</summary>
    /// <exception cref="InvalidOperationException">It does not measure a time.</exception>
    public Duration ToDuration() => Duration.FromYears365(this.In(TradeUnit.Year));

    /// <summary>The measure as a temperature.</summary>
    /// <exception cref="InvalidOperationException">It does not measure a temperature.</exception>
    public Temperature ToTemperature() => Temperature.FromDegreesCelsius(this.In(TradeUnit.DegreeCelsius));

    /// <summary>The measure as a corrosion rate.</summary>
    /// <exception cref="InvalidOperationException">It does not measure a corrosion rate.</exception>
    public CorrosionRate ToCorrosionRate() =>
        CorrosionRate.FromMicrometersPerYear(this.In(TradeUnit.MicrometerPerYear));

    /// <summary>Reads a measure from text: a number with a decimal point, then the symbol of a unit.</summary>
    /// <param name="text">For instance <c>20 mm</c>, <c>0.1mm</c>, <c>85 um</c>, <c>4.2 um/a</c>.</param>
    /// <exception cref="FormatException">The text is not such a measure; the message says what was expected.</exception>
    public static Measure Parse(string text) => Parse(text, CultureInfo.InvariantCulture);

    /// <inheritdoc cref="Parse(string)"/>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture whose decimal sign is used instead of the point.</param>
    public static Measure Parse(string s, IFormatProvider? provider)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc cref="Parse(string, IFormatProvider?)"/>
    public static Measure Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        MeasureText.Read(s, provider, out Measure measure) is { } fault ? throw new FormatException(fault) : measure;

    /// <summary>Reads a measure from text, or says false.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture whose decimal sign is used instead of the point.</param>
    /// <param name="result">The measure.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Measure result) =>
        TryParse(s.AsSpan(), provider, out result);

    /// <inheritdoc cref="TryParse(string?, IFormatProvider?, out Measure)"/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Measure result) =>
        MeasureText.Read(s, provider, out result) is null;

    /// <inheritdoc/>
    public bool Equals(Measure other) =>
        this.number.IsSet == other.number.IsSet
        && (!this.number.IsSet
            || (TradeUnits.Scale(this.unit).Canonical == TradeUnits.Scale(other.unit).Canonical
                && StoredNumber.Key(this.Canonical) == StoredNumber.Key(other.Canonical)));

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => obj is Measure other && this.Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => this.number.IsSet
        ? HashCode.Combine(TradeUnits.Scale(this.unit).Canonical, StoredNumber.Key(this.Canonical))
        : 0;

    /// <summary>The measure as invariant text, with up to six significant digits.</summary>
    public override string ToString() =>
        this.number.IsSet ? MeasureText.Write(this.Number, this.unit, 6) : "unset";

    /// <summary>The measure with up to six significant digits and the decimal sign of a culture; the unit stays as it is.</summary>
    /// <param name="provider">The culture of the reader; null: invariant.</param>
    public string ToText(IFormatProvider? provider) =>
        this.number.IsSet ? MeasureText.WriteIn(provider ?? CultureInfo.InvariantCulture, this.Number, this.unit, 6) : "unset";

    /// <summary>The number in another unit of the same kind.</summary>
    internal double In(TradeUnit wanted)
    {
        double given = this.Number;
        if (wanted == this.unit)
        {
            return given;
        }

        (TradeUnit from, double factor) = TradeUnits.Scale(this.unit);
        (TradeUnit to, double wantedFactor) = TradeUnits.Scale(wanted);
        return from == to
            ? given * factor / wantedFactor
            : throw new InvalidOperationException($"'{this}' is not a measure in {TradeUnits.Symbol(wanted)}.");
    }
}
