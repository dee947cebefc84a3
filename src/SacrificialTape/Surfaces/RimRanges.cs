namespace SacrificialTape.Surfaces;

/// <summary>What is accepted as the reach of a band over a sheet.</summary>
internal static class RimRanges
{
    internal const double MostReachMm = 100_000;
}
