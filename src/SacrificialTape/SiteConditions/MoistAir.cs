using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>Air of a temperature and a relative humidity, and the dew point that follows.</summary>
/// <remarks>
/// Temperature: the range of the constants (-45 to 60 degC by default). Relative humidity over the phase of the
/// constants: 2 to 100 %. Below 2 % is refused, because a fraction such as 0.65 is 0.65 % as a percentage: no open air
/// is that dry, and a slip would pass for very dry air.
/// </remarks>
public sealed record MoistAir : IHasWorkings
{
    private readonly StoredNumber celsius;
    private readonly StoredNumber percent;
    private readonly StoredNumber dewPoint;

    /// <summary>Describes air.</summary>
    /// <param name="temperature">Temperature of the air.</param>
    /// <param name="humidity">Relative humidity, 2 to 100 %.</param>
    /// <param name="constants">The set of constants; left out: <see cref="SaturationConstants.Wmo"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public MoistAir(Temperature temperature, RelativeHumidity humidity, SaturationConstants? constants = null)
    {
        this.Constants = constants ?? SaturationConstants.Wmo;
        this.celsius = new StoredNumber(this.Constants.Check(UnitConversions.DegreesCelsius(temperature), nameof(temperature)));
        this.percent = new StoredNumber(Humidities.Check(UnitConversions.Percent(humidity), nameof(humidity)));
        this.dewPoint = new StoredNumber(DewPointKernel.DewPointC(this.Celsius, this.Percent, this.Constants.A, this.Constants.B, default(NoSteps)));
    }

    /// <summary>Temperature of the air.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(this.Celsius);

    /// <summary>Relative humidity.</summary>
    public RelativeHumidity Humidity => RelativeHumidity.FromPercent(this.Percent);

    /// <summary>The set of constants.</summary>
    public SaturationConstants Constants { get; }

    /// <summary>The dew point; with constants over ice, the frost point.</summary>
    public Temperature DewPoint => Temperature.FromDegreesCelsius(this.DewPointCelsius);

    /// <summary>The saturation pressure at the temperature of the air.</summary>
    public Pressure SaturationPressure => Pressure.FromHectopascals(this.Saturation(default(NoSteps)));

    /// <summary>The pressure of the vapour in the air.</summary>
    public Pressure VapourPressure =>
        Pressure.FromHectopascals(DewPointKernel.VapourHpa(this.Percent, this.Saturation(default(NoSteps)), default(NoSteps)));

    internal static AcceptedRange Humidities => AcceptedRange.Between(2, 100, "%").Noting("is it a fraction? 0.65 means 0.65 %");

    internal double Celsius => this.celsius.Bare;

    internal double Percent => this.percent.Bare;

    internal double DewPointCelsius => this.dewPoint.Bare;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = DewPointKernel.VapourHpa(this.Percent, this.Saturation(steps), steps);
        _ = DewPointKernel.DewPointC(this.Celsius, this.Percent, this.Constants.A, this.Constants.B, steps);
        return steps.Under("Dew point, constants " + this.Constants.Name);
    }

    /// <summary>Temperature, humidity and dew point as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Celsius:0.##} degC, {this.Percent:0.##} % RH, dew point {this.DewPointCelsius:0.0} degC");

    private double Saturation<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        DewPointKernel.SaturationHpa(this.Celsius, this.Constants.E0, this.Constants.A, this.Constants.B, steps);
}
