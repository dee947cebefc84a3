using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>Rings side by side on a cylinder, in doubles (mm).</summary>
internal static class RingKernel
{
    internal static ParallelCut Cut<TSteps>(
        double diameterMm, double heightMm, StripStock stock, double leastLapMm, LayChoices choices, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = stock.WidthMm;
        double circumference = PipeKernel.CircumferenceMm(diameterMm, steps);
        double count = SpanKernel.OpenCount(heightMm, width, leastLapMm, steps);
        double ring = SpanKernel.RingLengthMm(circumference, choices.EndLapMm, steps);
        int rings = StripCount.Whole(count, width, leastLapMm);
        double lap = 0;
        double layers = choices.Passes; // a single ring has no neighbour to wander from
        if (rings > 1)
        {
            lap = SpanKernel.OpenLapMm(count, width, heightMm, steps);
            layers = SpanKernel.OpenLayers(choices.Passes, width, choices.WanderMm, width - lap, steps);
        }

        // A single ring wider than the pipe is long stands over; what stands over is cut off along its whole length.
        double cover = circumference * Math.Min(1, heightMm / (count * width));
        double trim = rings > 1 ? 0 : circumference - cover;
        return new(
            rings,
            lap,
            (int)layers,
            Strip.Computed(stock, ring, rings * choices.Passes, StripPurpose.Ring, false, cover, trim));
    }
}
