using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>What a lay of parallel strips is made from, checked.</summary>
internal readonly record struct ParallelInput(StraightPipe Pipe, StripStock Stock, double LeastLapMm, LayChoices Choices)
{
    internal static ParallelInput Accept(StraightPipe pipe, StripStock stock, Length leastLap, LayChoices? choices)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(stock);
        double lap = AcceptedRange.FromBelow(0, stock.WidthMm, "mm").Noting("less than the strip is wide")
            .Check(UnitConversions.Millimeters(leastLap), nameof(leastLap));
        return new(pipe, stock, lap, choices ?? LayChoices.Default);
    }
}
