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
        double lap = AcceptedLap.Mm(stock, leastLap, nameof(leastLap));
        return new(pipe, stock, lap, choices ?? LayChoices.Default);
    }
}
