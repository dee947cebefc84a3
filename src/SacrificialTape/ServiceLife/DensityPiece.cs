namespace SacrificialTape.ServiceLife;

/// <summary>A piece of a density that is straight from one end to the other. Ends more than zero.</summary>
internal readonly record struct DensityPiece(double Low, double High, double AtLow, double AtHigh)
{
    internal static DensityPiece[] Uniform(double low, double high) =>
        low == high ? [] : [new(low, high, 1 / (high - low), 1 / (high - low))];

    internal static DensityPiece[] Triangular(double low, double mode, double high)
    {
        double peak = 2 / (high - low);
        return (low < mode, mode < high) switch
        {
            (true, true) => [new(low, mode, 0, peak), new(mode, high, peak, 0)],
            (true, false) => [new(low, high, 0, peak)],
            (false, true) => [new(low, high, peak, 0)],
            _ => [],
        };
    }
}
