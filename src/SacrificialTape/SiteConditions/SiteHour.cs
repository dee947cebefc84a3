using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>One hour of a log or a forecast: when it begins and what was read in it; what was not is null.</summary>
/// <remarks>
/// The stamp carries its offset from universal time, so clock changes and zones change no order. Surface: -60 to 400 degC;
/// wind: 0 to 100 m/s. A surface taken from an offset to the air is an estimate: the sky cools steel below the air at night.
/// </remarks>
public sealed record SiteHour
{
    private readonly StoredNumber surface;
    private readonly StoredNumber wind;

    /// <summary>Describes an hour.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="air">The air; null when not read.</param>
    /// <param name="surfaceTemperature">The surface; null when not read.</param>
    /// <param name="rain">Whether it rains; null when not known.</param>
    /// <param name="wind">The wind; null when not read: it is then not judged.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SiteHour(DateTimeOffset start, MoistAir? air, Temperature? surfaceTemperature, bool? rain, Speed? wind = null)
    {
        this.Start = start;
        this.Air = air;
        this.Rain = rain;
        this.surface = surfaceTemperature is { } given
            ? new StoredNumber(SurfaceReading.Temperatures.Check(UnitConversions.DegreesCelsius(given), nameof(surfaceTemperature)))
            : default;
        this.wind = wind is { } blows
            ? new StoredNumber(AcceptedRange.Between(0, 100, "m/s").Check(UnitConversions.MetersPerSecond(blows), nameof(wind)))
            : default;
    }

    /// <summary>When it begins.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends: an hour later.</summary>
    public DateTimeOffset End => this.Start.AddHours(1);

    /// <summary>The air.</summary>
    public MoistAir? Air { get; }

    /// <summary>The surface.</summary>
    public Temperature? SurfaceTemperature => this.surface.IsSet ? Temperature.FromDegreesCelsius(this.surface.Bare) : null;

    /// <summary>Whether it rains.</summary>
    public bool? Rain { get; }

    /// <summary>The wind.</summary>
    public Speed? Wind => this.wind.IsSet ? Speed.FromMetersPerSecond(this.wind.Bare) : null;

    internal StoredNumber SurfaceCelsius => this.surface;

    internal StoredNumber WindMetersPerSecond => this.wind;

    /// <summary>
    /// Whether the surface is dry in this hour: no rain and warmer than the dew point. Null when that is not known.
    /// </summary>
    internal bool? Dry => this.Rain == true
        ? false
        : this.Air is { } air && this.surface.IsSet && !WithAllowance.Above(this.surface.Bare, air.DewPointCelsius)
            ? false
            : this.Rain is null || this.Air is null || !this.surface.IsSet ? null : true;

    /// <summary>An hour whose surface is taken as the air and an offset.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="air">The air.</param>
    /// <param name="offset">Surface less air, negative where the surface is colder.</param>
    /// <param name="rain">Whether it rains; null when not known.</param>
    /// <param name="wind">The wind; null when not read.</param>
    public static SiteHour WithSurfaceOffset(DateTimeOffset start, MoistAir air, TemperatureDelta offset, bool? rain, Speed? wind = null)
    {
        ArgumentNullException.ThrowIfNull(air);
        return new(start, air, Temperature.FromDegreesCelsius(air.Celsius + UnitConversions.Kelvins(offset)), rain, wind);
    }

    /// <summary>The stamp and what was read, as invariant text.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{this.Start:yyyy-MM-dd HH:mm zzz}: {this.Air?.ToString() ?? "air not read"}, {(this.surface.IsSet ? MeasureText.Write(this.surface.Bare, TradeUnit.DegreeCelsius, 4) : "surface not read")}, {this.Rain switch { true => "rain", false => "no rain", _ => "rain not known" }}");
}
