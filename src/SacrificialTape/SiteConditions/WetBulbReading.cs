using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>Air whose dry and wet bulb were read: its humidity is worked out by the psychrometric equation.</summary>
/// <remarks>
/// Wet bulb: 0 degC or more (below it ice forms on the sleeve, and another coefficient holds), at most the air. Pressure:
/// 500 to 1100 hPa. Constants over water. A humidity below 2 % is refused: check that the sleeve is wet and the pressure
/// is that of the site.
/// </remarks>
public sealed record WetBulbReading : IHasWorkings
{
    private readonly StoredNumber air;
    private readonly StoredNumber wet;
    private readonly StoredNumber pressure;
    private readonly StoredNumber percent;

    /// <summary>Describes the reading.</summary>
    /// <param name="temperature">The dry bulb.</param>
    /// <param name="wetBulb">The wet bulb.</param>
    /// <param name="pressure">Pressure of the air at the site, not reduced to sea level.</param>
    /// <param name="psychrometer">The instrument.</param>
    /// <param name="constants">The set of constants, over water; left out: <see cref="SaturationConstants.Wmo"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The constants are over ice.</exception>
    public WetBulbReading(Temperature temperature, Temperature wetBulb, Pressure pressure, Psychrometer psychrometer, SaturationConstants? constants = null)
    {
        ArgumentNullException.ThrowIfNull(psychrometer);
        this.Constants = constants ?? SaturationConstants.Wmo;
        if (this.Constants.Over != WaterPhase.Water)
        {
            throw new ArgumentException("The sleeve is wet: take constants over water.", nameof(constants));
        }

        double dry = this.Constants.Check(UnitConversions.DegreesCelsius(temperature), nameof(temperature));
        this.Psychrometer = psychrometer;
        this.air = new StoredNumber(dry);
        this.wet = new StoredNumber(AcceptedRange.Between(0, dry, "degC").Noting("at most the air; below 0 degC ice forms on the sleeve")
            .Check(UnitConversions.DegreesCelsius(wetBulb), nameof(wetBulb)));
        this.pressure = new StoredNumber(AcceptedRange.Between(500, 1100, "hPa").Check(UnitConversions.Hectopascals(pressure), nameof(pressure)));
        this.percent = new StoredNumber(AcceptedRange.Between(2, 100, "%").Noting("the humidity that these bulbs mean; is the sleeve wet?")
            .Check(this.Solve(default(NoSteps)), nameof(wetBulb)));
    }

    /// <summary>The dry bulb.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(this.air.Bare);

    /// <summary>The wet bulb.</summary>
    public Temperature WetBulb => Temperature.FromDegreesCelsius(this.wet.Bare);

    /// <summary>Pressure of the air at the site.</summary>
    public Pressure Pressure => Pressure.FromHectopascals(this.pressure.Bare);

    /// <summary>The instrument.</summary>
    public Psychrometer Psychrometer { get; }

    /// <summary>The set of constants.</summary>
    public SaturationConstants Constants { get; }

    /// <summary>Relative humidity.</summary>
    public RelativeHumidity Humidity => RelativeHumidity.FromPercent(this.percent.Bare);

    /// <summary>The air by temperature and humidity.</summary>
    public MoistAir Air => new(this.Temperature, this.Humidity, this.Constants);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under($"Humidity from the wet bulb, {this.Psychrometer.Name}, constants {this.Constants.Name}");
    }

    /// <summary>Bulbs, pressure and humidity as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.air.Bare:0.##} degC, wet bulb {this.wet.Bare:0.##} degC, {this.pressure.Bare:0.##} hPa, {this.percent.Bare:0.0} % RH");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        SaturationConstants set = this.Constants;
        double atWet = DewPointKernel.SaturationHpa(this.wet.Bare, set.E0, set.A, set.B, steps);
        double vapour = DewPointKernel.PsychrometricHpa(atWet, this.Psychrometer.PerKelvin, this.pressure.Bare, this.air.Bare, this.wet.Bare, steps);
        double saturation = DewPointKernel.SaturationHpa(this.air.Bare, set.E0, set.A, set.B, steps);
        return DewPointKernel.PercentFromPressures(vapour, saturation, steps);
    }
}
