using UnitsNet;
using UnitsNet.Units;

namespace SacrificialTape.Quantities;

/// <summary>
/// The one file where UnitsNet quantities become canonical doubles and back. The usual units are converted here by
/// their exact factors: the library's own conversion by unit allocates and touches its unit tables, which costs a third
/// of a second on first use. Rare units go to the library. A new major version of UnitsNet is a change of this file.
/// </summary>
internal static class UnitConversions
{
    /// <summary>A year in this library: 365 d = 8760 h, in every formula.</summary>
    internal const double HoursPerYear = 8760;

    internal const double MillimetersPerInch = 25.4;

    internal const double GramsPerOunce = 28.349523125;

    internal const double SquareMetersPerSquareFoot = 0.3048 * 0.3048;

    internal const double KilogramsPerPound = 0.45359237;

    internal static double Millimeters(Length length)
    {
        double value = (double)length.Value;
        return length.Unit switch
        {
            LengthUnit.Millimeter => value,
            LengthUnit.Meter => value * 1000,
            LengthUnit.Centimeter => value * 10,
            LengthUnit.Micrometer => value / 1000,
            LengthUnit.Inch => value * MillimetersPerInch,
            LengthUnit.Foot => value * (12 * MillimetersPerInch),
            LengthUnit.Mil => value * (MillimetersPerInch / 1000),
            LengthUnit.Kilometer => value * 1e6,
            _ => (double)length.Millimeters,
        };
    }

    internal static double Micrometers(Length length)
    {
        double value = (double)length.Value;
        return length.Unit switch
        {
            LengthUnit.Micrometer => value,
            LengthUnit.Millimeter => value * 1000,
            LengthUnit.Meter => value * 1e6,
            _ => Millimeters(length) * 1000,
        };
    }

    internal static double SquareMeters(Area area)
    {
        double value = (double)area.Value;
        return area.Unit switch
        {
            AreaUnit.SquareMeter => value,
            AreaUnit.SquareCentimeter => value / 1e4,
            AreaUnit.SquareMillimeter => value / 1e6,
            _ => (double)area.SquareMeters,
        };
    }

    internal static double Years(Duration duration)
    {
        double value = (double)duration.Value;
        return duration.Unit switch
        {
            DurationUnit.Year365 => value,
            DurationUnit.Day => value / 365,
            DurationUnit.Hour => value / HoursPerYear,
            _ => (double)duration.Hours / HoursPerYear,
        };
    }

    internal static double Meters(Length length) =>
        length.Unit == LengthUnit.Meter ? (double)length.Value : Millimeters(length) / 1000;

    internal static double Hours(Duration duration) =>
        duration.Unit == DurationUnit.Hour ? (double)duration.Value : (double)duration.Hours;

    internal static double KilogramsPerCubicMeter(Density density)
    {
        double value = (double)density.Value;
        return density.Unit switch
        {
            DensityUnit.KilogramPerCubicMeter => value,
            DensityUnit.GramPerCubicCentimeter => value * 1000,
            _ => (double)density.KilogramsPerCubicMeter,
        };
    }

    internal static double GramsPerSquareMeter(AreaDensity density) =>
        density.Unit == AreaDensityUnit.GramPerSquareMeter ? (double)density.Value : (double)density.GramsPerSquareMeter;

    internal static double Degrees(Angle angle) =>
        angle.Unit == AngleUnit.Degree ? (double)angle.Value : (double)angle.Degrees;

    /// <summary>
    /// Scales with another zero are shifted in decimal: 273.45 K is 0.3 degC, while the difference of the two doubles
    /// has lost the digits that make it equal to 0.3 degC.
    /// </summary>
    internal static double Megapascals(Pressure pressure) => (double)pressure.Megapascals;

    internal static double DegreesCelsius(Temperature temperature)
    {
        double value = (double)temperature.Value;
        if (Math.Abs(value) > 1e9)
        {
            return (double)temperature.DegreesCelsius; // beyond any surface, and perhaps beyond decimal
        }

        return temperature.Unit switch
        {
            TemperatureUnit.DegreeCelsius => value,
            TemperatureUnit.Kelvin => (double)((decimal)value - 273.15m),
            TemperatureUnit.DegreeFahrenheit => (double)(((decimal)value - 32) / 1.8m),
            _ => (double)temperature.DegreesCelsius,
        };
    }

    internal static double Kilograms(Mass mass) =>
        mass.Unit == MassUnit.Kilogram ? (double)mass.Value : (double)mass.Kilograms;

    internal static double Grams(Mass mass)
    {
        double value = (double)mass.Value;
        return mass.Unit switch
        {
            MassUnit.Gram => value,
            MassUnit.Milligram => value / 1000,
            MassUnit.Kilogram => value * 1000,
            _ => (double)mass.Grams,
        };
    }

    internal static double SquareCentimeters(Area area) =>
        area.Unit == AreaUnit.SquareCentimeter ? (double)area.Value : SquareMeters(area) * 1e4;

    internal static double Percent(RelativeHumidity humidity) =>
        humidity.Unit == RelativeHumidityUnit.Percent ? (double)humidity.Value : (double)humidity.Percent;

    internal static double MicrogramsPerCubicMeter(MassConcentration concentration) =>
        concentration.Unit == MassConcentrationUnit.MicrogramPerCubicMeter
            ? (double)concentration.Value
            : (double)concentration.MicrogramsPerCubicMeter;

    internal static double Volts(ElectricPotential potential) =>
        potential.Unit == ElectricPotentialUnit.Volt ? (double)potential.Value : (double)potential.Volts;

    internal static double MolesPerLiter(Molarity strength) =>
        strength.Unit == MolarityUnit.MolePerLiter ? (double)strength.Value : (double)strength.MolesPerLiter;

    internal static double Amperes(ElectricCurrent current) =>
        current.Unit == ElectricCurrentUnit.Ampere ? (double)current.Value : (double)current.Amperes;

    internal static double AmperesPerSquareMeter(ElectricCurrentDensity density) =>
        density.Unit == ElectricCurrentDensityUnit.AmperePerSquareMeter ? (double)density.Value : (double)density.AmperesPerSquareMeter;

    internal static double SiemensPerMeter(ElectricConductivity conductivity) =>
        conductivity.Unit == ElectricConductivityUnit.SiemensPerMeter ? (double)conductivity.Value : (double)conductivity.SiemensPerMeter;

    internal static double OhmMeters(ElectricResistivity resistivity) =>
        resistivity.Unit == ElectricResistivityUnit.OhmMeter ? (double)resistivity.Value : (double)resistivity.OhmMeters;

    internal static double Hectopascals(Pressure pressure) =>
        pressure.Unit == PressureUnit.Hectopascal ? (double)pressure.Value : (double)pressure.Hectopascals;

    /// <summary>A difference of temperatures: 1 K is 1 degC, and no zero is shifted.</summary>
    internal static double Kelvins(TemperatureDelta difference) =>
        difference.Unit is TemperatureDeltaUnit.Kelvin or TemperatureDeltaUnit.DegreeCelsius ? (double)difference.Value : (double)difference.Kelvins;

    internal static double Milliliters(Volume volume) =>
        volume.Unit == VolumeUnit.Milliliter ? (double)volume.Value : (double)volume.Milliliters;

    internal static double SquareMillimeters(Area area) =>
        area.Unit == AreaUnit.SquareMillimeter ? (double)area.Value : SquareMeters(area) * 1e6;

    internal static double MicrosiemensPerCentimeter(ElectricConductivity conductivity) => conductivity.Unit switch
    {
        ElectricConductivityUnit.MicrosiemensPerCentimeter => (double)conductivity.Value,
        ElectricConductivityUnit.MillisiemensPerCentimeter => (double)conductivity.Value * 1000,
        _ => SiemensPerMeter(conductivity) * 1e4,
    };

    internal static double MetersPerSecond(Speed speed) =>
        speed.Unit == SpeedUnit.MeterPerSecond ? (double)speed.Value : (double)speed.MetersPerSecond;

    internal static double NewtonsPerMillimeter(ForcePerLength force) =>
        force.Unit == ForcePerLengthUnit.NewtonPerMillimeter ? (double)force.Value : (double)force.NewtonsPerMillimeter;

    internal static double MilligramsPerSquareMeter(AreaDensity density) =>
        density.Unit == AreaDensityUnit.MilligramPerSquareMeter ? (double)density.Value : GramsPerSquareMeter(density) * 1000;

    internal static double Ohms(ElectricResistance resistance) =>
        resistance.Unit == ElectricResistanceUnit.Ohm ? (double)resistance.Value : (double)resistance.Ohms;

    internal static Length FromMillimeters(double value) => Length.FromMillimeters(value);

    internal static Area FromSquareMeters(double value) => Area.FromSquareMeters(value);

    internal static Duration FromYears(double value) => Duration.FromYears365(value);

    internal static Angle FromDegrees(double value) => Angle.FromDegrees(value);

    internal static Mass FromKilograms(double value) => Mass.FromKilograms(value);
}
