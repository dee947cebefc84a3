namespace SacrificialTape.Tests.Inspection;

/// <summary>Readings, foils and cut-outs with one thing changed at a time.</summary>
internal static class InspectionMake
{
    internal static ReadingPreparation Clean { get; } = new(true, Length.Zero, "made up");

    internal static Probability Share(double value) => Probability.FromFraction(value);

    internal static Length Um(double value) => Length.FromMicrometers(value);

    internal static Duration Years(double value) => Duration.FromYears365(value);

    internal static Foil Foil(double um = 100, double toleranceUm = 0) => new(Um(um), Um(toleranceUm));

    internal static FoilReadings Readings(Foil foil, params double[] um) =>
        new(foil, new ValueList<FoilReading>(um.Select(static one => FoilReading.Measured(Um(one), Clean))), Share(0.05));

    internal static ReadingStatistics Statistics(params double[] um) => new(new ValueList<Length>(um.Select(Um)));

    internal static RemainingLifeFromReadings Life(ReadingStatistics statistics, double years, ILossLaw law, double required = 20, double toleranceUm = 0, double confidence = 0.95) =>
        new(Foil(100, toleranceUm), statistics, Years(years), Um(required), law, Share(0.9), Share(confidence));
}
