namespace SacrificialTape.Quantities;

/// <summary>
/// What each <see cref="TradeUnit"/> is called in text, what kind of quantity it measures and how many canonical units
/// it holds. A closed list: a unit that is not in it is refused, and case counts (mm is not MM).
/// </summary>
internal static class TradeUnits
{
    // A long file asks for every one of its measures.
    private static readonly Dictionary<string, TradeUnit>.AlternateLookup<ReadOnlySpan<char>> BySymbol =
        Enum.GetValues<TradeUnit>().ToDictionary(Symbol, StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    internal static string Symbol(TradeUnit unit) => unit switch
    {
        TradeUnit.One => string.Empty,
        TradeUnit.Percent => "%",
        TradeUnit.Micrometer => "um",
        TradeUnit.Millimeter => "mm",
        TradeUnit.Centimeter => "cm",
        TradeUnit.Meter => "m",
        TradeUnit.Inch => "in",
        TradeUnit.Foot => "ft",
        TradeUnit.SquareCentimeter => "cm2",
        TradeUnit.SquareMeter => "m2",
        TradeUnit.Degree => "deg",
        TradeUnit.DegreeCelsius => "degC",
        TradeUnit.Year => "a",
        TradeUnit.Hour => "h",
        TradeUnit.Gram => "g",
        TradeUnit.Kilogram => "kg",
        TradeUnit.KilogramPerCubicMeter => "kg/m3",
        TradeUnit.GramPerCubicCentimeter => "g/cm3",
        TradeUnit.GramPerSquareMeter => "g/m2",
        TradeUnit.MicrometerPerYear => "um/a",
        TradeUnit.GramPerSquareMeterYear => "g/(m2.a)",
        TradeUnit.MilligramPerSquareMeterDay => "mg/(m2.d)",
        TradeUnit.SquareCentimeterPerSquareMeter => "cm2/m2",
        TradeUnit.AmpereHourPerKilogram => "A.h/kg",
        TradeUnit.OhmSquareCentimeter => "ohm.cm2",
        TradeUnit.MicrogramPerCubicMeter => "ug/m3",
        TradeUnit.Volt => "V",
        TradeUnit.Millivolt => "mV",
        TradeUnit.Ampere => "A",
        TradeUnit.AmperePerSquareMeter => "A/m2",
        TradeUnit.MilliamperePerSquareMeter => "mA/m2",
        TradeUnit.MilliamperePerMeter => "mA/m",
        TradeUnit.SiemensPerMeter => "S/m",
        TradeUnit.OhmMeter => "ohm.m",
        TradeUnit.OhmSquareMeter => "ohm.m2",
        TradeUnit.Ohm => "ohm",
        TradeUnit.KilogramPerAmpereYear => "kg/(A.a)",
        TradeUnit.GramPerMole => "g/mol",
        TradeUnit.CoulombPerMole => "C/mol",
        TradeUnit.MolePerCubicMeter => "mol/m3",
        TradeUnit.SquareMeterPerSecond => "m2/s",
        TradeUnit.Megapascal => "MPa",
        TradeUnit.VickersHardness => "HV",
        TradeUnit.Hectopascal => "hPa",
        TradeUnit.Kelvin => "K",
        TradeUnit.PerKelvin => "1/K",
        TradeUnit.MilligramPerSquareMeter => "mg/m2",
        TradeUnit.MicrosiemensPerCentimeter => "uS/cm",
        TradeUnit.Milliliter => "ml",
        TradeUnit.SquareMillimeter => "mm2",
        TradeUnit.MeterPerSecond => "m/s",
        TradeUnit.NewtonPerMillimeter => "N/mm",
        TradeUnit.Milliohm => "mohm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not one of the trade's units."),
    };

    /// <summary>The canonical unit of the same kind of quantity, and how many of it one of this unit holds.</summary>
    internal static (TradeUnit Canonical, double Factor) Scale(TradeUnit unit) => unit switch
    {
        TradeUnit.Percent => (TradeUnit.One, 0.01),
        TradeUnit.Micrometer => (TradeUnit.Millimeter, 0.001),
        TradeUnit.Centimeter => (TradeUnit.Millimeter, 10),
        TradeUnit.Meter => (TradeUnit.Millimeter, 1000),
        TradeUnit.Inch => (TradeUnit.Millimeter, UnitConversions.MillimetersPerInch),
        TradeUnit.Foot => (TradeUnit.Millimeter, 12 * UnitConversions.MillimetersPerInch),
        TradeUnit.SquareCentimeter => (TradeUnit.SquareMeter, 1e-4),
        TradeUnit.Hour => (TradeUnit.Year, 1 / UnitConversions.HoursPerYear),
        TradeUnit.Gram => (TradeUnit.Kilogram, 0.001),
        TradeUnit.GramPerCubicCentimeter => (TradeUnit.KilogramPerCubicMeter, 1000),
        TradeUnit.Millivolt => (TradeUnit.Volt, 0.001),
        TradeUnit.MilliamperePerSquareMeter => (TradeUnit.AmperePerSquareMeter, 0.001),
        TradeUnit.OhmSquareMeter => (TradeUnit.OhmSquareCentimeter, 1e4),
        TradeUnit.Hectopascal => (TradeUnit.Megapascal, 1e-4),
        TradeUnit.MilligramPerSquareMeter => (TradeUnit.GramPerSquareMeter, 0.001),
        TradeUnit.MicrosiemensPerCentimeter => (TradeUnit.SiemensPerMeter, 1e-4),
        TradeUnit.SquareMillimeter => (TradeUnit.SquareMeter, 1e-6),
        TradeUnit.Milliohm => (TradeUnit.Ohm, 0.001),
        _ => (unit, 1),
    };

    /// <summary>The units that do for a kind of quantity, in words; all there are where any kind does.</summary>
    internal static string ThatDo(TradeUnit? wanted)
    {
        IEnumerable<TradeUnit> units = Enum.GetValues<TradeUnit>();
        if (wanted is { } kind)
        {
            units = units.Where(unit => Scale(unit).Canonical == Scale(kind).Canonical);
        }

        return $"units that do: {string.Join(", ", units.Select(static unit => unit == TradeUnit.One ? "none (a plain number)" : Symbol(unit)))}";
    }

    internal static bool TryFind(ReadOnlySpan<char> symbol, out TradeUnit unit)
    {
        if (BySymbol.TryGetValue(symbol, out unit))
        {
            return true;
        }

        // Both mu signs (micro sign U+00B5, Greek mu U+03BC), the spelt-out word, and the degree sign.
        TradeUnit? alias = symbol switch
        {
            "\u00B5m" or "\u03BCm" or "micron" or "microns" => TradeUnit.Micrometer,
            "\u00B5m/a" or "\u03BCm/a" => TradeUnit.MicrometerPerYear,
            "\u00B0" => TradeUnit.Degree,
            "\u00B0C" => TradeUnit.DegreeCelsius,
            "m\u00B2" => TradeUnit.SquareMeter,
            "cm\u00B2" => TradeUnit.SquareCentimeter,
            "g/m\u00B2" => TradeUnit.GramPerSquareMeter,
            _ => null,
        };
        unit = alias ?? default;
        return alias is not null;
    }
}
