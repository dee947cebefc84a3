namespace SacrificialTape.Quantities;

/// <summary>
/// The units in which the trade states what this library takes and gives as text: in rules, findings and workings.
/// </summary>
public enum TradeUnit
{
    /// <summary>A plain number: a count, a factor, an exponent.</summary>
    One = 0,

    /// <summary>Percent, a hundredth of one.</summary>
    Percent,

    /// <summary>Micrometre.</summary>
    Micrometer,

    /// <summary>Millimetre.</summary>
    Millimeter,

    /// <summary>Centimetre.</summary>
    Centimeter,

    /// <summary>Metre.</summary>
    Meter,

    /// <summary>Inch, 25.4 mm exactly.</summary>
    Inch,

    /// <summary>Foot, 304.8 mm exactly.</summary>
    Foot,

    /// <summary>Square centimetre.</summary>
    SquareCentimeter,

    /// <summary>Square metre.</summary>
    SquareMeter,

    /// <summary>Degree of arc.</summary>
    Degree,

    /// <summary>Degree Celsius.</summary>
    DegreeCelsius,

    /// <summary>Year of 365 d.</summary>
    Year,

    /// <summary>Hour.</summary>
    Hour,

    /// <summary>Gram.</summary>
    Gram,

    /// <summary>Kilogram.</summary>
    Kilogram,

    /// <summary>Kilogram per cubic metre.</summary>
    KilogramPerCubicMeter,

    /// <summary>Gram per cubic centimetre.</summary>
    GramPerCubicCentimeter,

    /// <summary>Gram per square metre.</summary>
    GramPerSquareMeter,

    /// <summary>Micrometre per year.</summary>
    MicrometerPerYear,

    /// <summary>Gram per square metre and year.</summary>
    GramPerSquareMeterYear,

    /// <summary>Milligram per square metre and day.</summary>
    MilligramPerSquareMeterDay,

    /// <summary>Square centimetre of bare steel per square metre of covered surface.</summary>
    SquareCentimeterPerSquareMeter,

    /// <summary>Ampere hour per kilogram.</summary>
    AmpereHourPerKilogram,

    /// <summary>Ohm square centimetre.</summary>
    OhmSquareCentimeter,

    /// <summary>Microgram per cubic metre of air.</summary>
    MicrogramPerCubicMeter,

    /// <summary>Volt.</summary>
    Volt,

    /// <summary>Millivolt.</summary>
    Millivolt,

    /// <summary>Ampere.</summary>
    Ampere,

    /// <summary>Ampere per square metre.</summary>
    AmperePerSquareMeter,

    /// <summary>Milliampere per square metre.</summary>
    MilliamperePerSquareMeter,

    /// <summary>Milliampere per metre of edge.</summary>
    MilliamperePerMeter,

    /// <summary>Siemens per metre.</summary>
    SiemensPerMeter,

    /// <summary>Ohm metre.</summary>
    OhmMeter,

    /// <summary>Ohm square metre.</summary>
    OhmSquareMeter,

    /// <summary>Ohm.</summary>
    Ohm,

    /// <summary>Kilogram per ampere and year.</summary>
    KilogramPerAmpereYear,

    /// <summary>Gram per mole.</summary>
    GramPerMole,

    /// <summary>Coulomb per mole.</summary>
    CoulombPerMole,

    /// <summary>Mole per cubic metre.</summary>
    MolePerCubicMeter,

    /// <summary>Square metre per second.</summary>
    SquareMeterPerSecond,

    /// <summary>Megapascal.</summary>
    Megapascal,

    /// <summary>Vickers hardness, HV.</summary>
    VickersHardness,

    /// <summary>Hectopascal.</summary>
    Hectopascal,

    /// <summary>Kelvin, of a difference of temperatures.</summary>
    Kelvin,

    /// <summary>Per kelvin.</summary>
    PerKelvin,

    /// <summary>Milligram per square metre.</summary>
    MilligramPerSquareMeter,

    /// <summary>Microsiemens per centimetre.</summary>
    MicrosiemensPerCentimeter,

    /// <summary>Millilitre.</summary>
    Milliliter,

    /// <summary>Square millimetre.</summary>
    SquareMillimeter,

    /// <summary>Metre per second.</summary>
    MeterPerSecond,

    /// <summary>Newton per millimetre of width.</summary>
    NewtonPerMillimeter,

    /// <summary>Milliohm.</summary>
    Milliohm,
}
