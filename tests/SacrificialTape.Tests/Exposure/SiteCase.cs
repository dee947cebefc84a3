namespace SacrificialTape.Tests.Exposure;

/// <summary>The air of a site within the data behind the dose-response functions.</summary>
public sealed record SiteCase(double Celsius, double Percent, double Sulfur, double Chloride)
{
    internal AnnualAtmosphere Air() => Of(this.Celsius, this.Percent, this.Sulfur, this.Chloride);

    internal static AnnualAtmosphere Of(double celsius, double percent, double sulfur, double chloride) => new(
        Temperature.FromDegreesCelsius(celsius),
        RelativeHumidity.FromPercent(percent),
        DepositionRate.FromMilligramsPerSquareMeterDay(sulfur),
        DepositionRate.FromMilligramsPerSquareMeterDay(chloride));
}
