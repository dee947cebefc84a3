using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>Air whose dew point was read: its humidity is worked out.</summary>
/// <remarks>Dew point: at most the temperature of the air, and such that the humidity is at least 2 %.</remarks>
public sealed record DewPointReading : IHasWorkings
{
    private readonly StoredNumber celsius;
    private readonly StoredNumber dewPoint;
    private readonly StoredNumber percent;

    /// <summary>Describes the reading.</summary>
    /// <param name="temperature">Temperature of the air.</param>
    /// <param name="dewPoint">Its dew point.</param>
    /// <param name="constants">The set of constants; left out: <see cref="SaturationConstants.Wmo"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, the dew point lies above the air, or the humidity is below 2 %.</exception>
    public DewPointReading(Temperature temperature, Temperature dewPoint, SaturationConstants? constants = null)
    {
        this.Constants = constants ?? SaturationConstants.Wmo;
        double air = this.Constants.Check(UnitConversions.DegreesCelsius(temperature), nameof(temperature));
        double dew = AcceptedRange.Between(this.Constants.Low, air, "degC").Noting("at most the air")
            .Check(UnitConversions.DegreesCelsius(dewPoint), nameof(dewPoint));
        this.celsius = new StoredNumber(air);
        this.dewPoint = new StoredNumber(dew);
        this.percent = new StoredNumber(AcceptedRange.Between(2, 100, "%").Noting("the humidity that this dew point means")
            .Check(DewPointKernel.PercentFromDewPoint(air, dew, this.Constants.A, this.Constants.B, default(NoSteps)), nameof(dewPoint)));
    }

    /// <summary>Temperature of the air.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(this.celsius.Bare);

    /// <summary>The dew point that was read.</summary>
    public Temperature DewPoint => Temperature.FromDegreesCelsius(this.dewPoint.Bare);

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
        _ = DewPointKernel.PercentFromDewPoint(this.celsius.Bare, this.dewPoint.Bare, this.Constants.A, this.Constants.B, steps);
        return steps.Under("Humidity from the dew point, constants " + this.Constants.Name);
    }

    /// <summary>Air, dew point and humidity as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.celsius.Bare:0.##} degC, dew point {this.dewPoint.Bare:0.##} degC, {this.percent.Bare:0.0} % RH");
}
