namespace SacrificialTape.Tests;

/// <summary>A pipe, what it needs and what can be had, all of it invented.</summary>
public sealed record ChoiceCase(
    double DiameterMm,
    double LengthMm,
    double Years,
    CorrosivityCategory Category,
    IReadOnlyList<(double FoilMm, double WidthMm, double RollM)> Stocks,
    IReadOnlyList<double> LapsMm,
    int Seed);
