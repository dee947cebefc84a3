using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>What the air of a site is like over a year: what a dose-response function asks for.</summary>
/// <remarks>
/// Annual means. Range: temperature -90 to 70 degC, humidity 0 to 100 %, depositions zero or more. What a function was
/// fitted to is narrower; the function says so.
/// </remarks>
public sealed record AnnualAtmosphere
{
    private readonly StoredNumber celsius;
    private readonly StoredNumber percent;

    /// <summary>Describes the air of a site.</summary>
    /// <param name="temperature">Annual mean temperature.</param>
    /// <param name="humidity">Annual mean relative humidity.</param>
    /// <param name="sulfurDioxide">Annual mean deposition of sulfur dioxide.</param>
    /// <param name="chloride">Annual mean deposition of chloride.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature or humidity is outside its range.</exception>
    public AnnualAtmosphere(Temperature temperature, RelativeHumidity humidity, DepositionRate sulfurDioxide, DepositionRate chloride)
    {
        this.celsius = new StoredNumber(
            AcceptedRange.Between(DoseRangeTerms.Air.LeastCelsius, DoseRangeTerms.Air.MostCelsius, "degC").Check(UnitConversions.DegreesCelsius(temperature), nameof(temperature)));
        this.percent = new StoredNumber(AcceptedRange.Between(DoseRangeTerms.Air.LeastPercent, DoseRangeTerms.Air.MostPercent, "%").Check(UnitConversions.Percent(humidity), nameof(humidity)));
        _ = sulfurDioxide.MilligramsPerSquareMeterDay + chloride.MilligramsPerSquareMeterDay;
        this.SulfurDioxide = sulfurDioxide;
        this.Chloride = chloride;
    }

    /// <summary>Annual mean temperature.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(this.Celsius);

    /// <summary>Annual mean relative humidity.</summary>
    public RelativeHumidity Humidity => RelativeHumidity.FromPercent(this.Percent);

    /// <summary>Annual mean deposition of sulfur dioxide.</summary>
    public DepositionRate SulfurDioxide { get; }

    /// <summary>Annual mean deposition of chloride.</summary>
    public DepositionRate Chloride { get; }

    internal double Celsius => this.celsius.Bare;

    internal double Percent => this.percent.Bare;

    /// <summary>The four values as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Celsius:0.######} degC, {this.Percent:0.######} % RH, SO2 {this.SulfurDioxide}, Cl {this.Chloride}");
}
