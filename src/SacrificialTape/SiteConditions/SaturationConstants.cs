using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>The three constants of e = e0 exp(a T/(b + T)), always those of one author together.</summary>
/// <remarks>
/// No constructor is public: an a of one set with a b of another gives a number that belongs to neither. Temperatures
/// outside the range of a set are refused.
/// </remarks>
public sealed record SaturationConstants
{
    private SaturationConstants(string name, WaterPhase over, double e0, double a, double b, double lowest, double highest, Basis basis)
    {
        this.Name = name;
        this.Over = over;
        this.E0 = e0;
        this.A = a;
        this.B = b;
        this.Low = lowest;
        this.High = highest;
        this.Basis = basis;
    }

    /// <summary>6.112 hPa, 17.62, 243.12 degC over water, -45 to 60 degC: the default.</summary>
    public static SaturationConstants Wmo { get; } = new(
        "WMO (Sonntag 1990)", WaterPhase.Water, 6.112, 17.62, 243.12, -45, 60, DewPointFormulas.WmoSet);

    /// <summary>6.1094 hPa, 17.625, 243.04 degC over water, -40 to 50 degC.</summary>
    public static SaturationConstants AlduchovEskridge { get; } = new(
        "Alduchov and Eskridge 1996", WaterPhase.Water, 6.1094, 17.625, 243.04, -40, 50, DewPointFormulas.AlduchovSet);

    /// <summary>6.1121 hPa, 17.502, 240.97 degC over water, -20 to 50 degC.</summary>
    public static SaturationConstants Buck { get; } = new(
        "Buck 1981", WaterPhase.Water, 6.1121, 17.502, 240.97, -20, 50, DewPointFormulas.BuckSet);

    /// <summary>6.112 hPa, 17.67, 243.5 degC over water, -30 to 35 degC.</summary>
    public static SaturationConstants Bolton { get; } = new(
        "Bolton 1980", WaterPhase.Water, 6.112, 17.67, 243.5, -30, 35, DewPointFormulas.BoltonSet);

    /// <summary>6.108 hPa, 17.27, 237.3 degC over water, -30 to 60 degC.</summary>
    public static SaturationConstants Tetens { get; } = new(
        "Tetens (FAO-56)", WaterPhase.Water, 6.108, 17.27, 237.3, -30, 60, DewPointFormulas.TetensSet);

    /// <summary>6.112 hPa, 22.46, 272.62 degC over ice, -65 to 0 degC.</summary>
    public static SaturationConstants WmoOverIce { get; } = new(
        "WMO over ice", WaterPhase.Ice, 6.112, 22.46, 272.62, -65, 0, DewPointFormulas.WmoIceSet);

    /// <summary>All sets.</summary>
    public static ValueList<SaturationConstants> All { get; } = [Wmo, AlduchovEskridge, Buck, Bolton, Tetens, WmoOverIce];

    /// <summary>Whose set it is.</summary>
    public string Name { get; }

    /// <summary>Over water or over ice.</summary>
    public WaterPhase Over { get; }

    /// <summary>The saturation pressure at 0 degC.</summary>
    public Pressure AtZero => Pressure.FromHectopascals(this.E0);

    /// <summary>Lowest temperature of the set.</summary>
    public Temperature Lowest => Temperature.FromDegreesCelsius(this.Low);

    /// <summary>Highest temperature of the set.</summary>
    public Temperature Highest => Temperature.FromDegreesCelsius(this.High);

    /// <summary>On what the constants rest.</summary>
    public Basis Basis { get; }

    internal double E0 { get; }

    internal double A { get; }

    internal double B { get; }

    internal double Low { get; }

    internal double High { get; }

    /// <summary>The saturation pressure at a temperature.</summary>
    /// <param name="temperature">Within the range of the set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range of the set.</exception>
    [BasisOf(typeof(DewPointFormulas), nameof(DewPointFormulas.Saturation))]
    public Pressure SaturationPressure(Temperature temperature) => Pressure.FromHectopascals(
        DewPointKernel.SaturationHpa(this.Check(UnitConversions.DegreesCelsius(temperature), nameof(temperature)), this.E0, this.A, this.B, default(NoSteps)));

    /// <summary>Whose set it is, with its constants.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Name}: {this.E0} hPa, {this.A}, {this.B} degC");

    internal double Check(double celsius, string parameter) =>
        AcceptedRange.Between(this.Low, this.High, "degC").Noting("the set " + this.Name).Check(celsius, parameter);
}
