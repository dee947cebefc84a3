using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;

namespace SacrificialTape.TakeOff;

/// <summary>Strip per metre of pipe and pipe per roll of a spiral without ends, in doubles (mm).</summary>
internal static class ChartKernel
{
    internal static double StripPerMeterMm<TSteps>(in SpiralSolution spiral, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = 1000 * spiral.CircumferenceMm / spiral.TrueAdvanceMm;
        if (TSteps.Records)
        {
            steps.Add(ChartFormulas.StripPerMeter, [spiral.CircumferenceMm, spiral.TrueAdvanceMm], strip);
        }

        return strip;
    }

    /// <summary>The same in lanes.</summary>
    internal static TLanes StripPerMeterMm<TLanes>(in SpiralLanes<TLanes> spiral)
        where TLanes : struct, ILanes<TLanes> => 1000 * spiral.CircumferenceMm / spiral.TrueAdvanceMm;

    internal static double PipePerRollMm<TSteps>(in SpiralSolution spiral, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double pipe = rollMm * spiral.TrueAdvanceMm / spiral.CircumferenceMm;
        if (TSteps.Records)
        {
            steps.Add(ChartFormulas.PipePerRoll, [rollMm, spiral.TrueAdvanceMm, spiral.CircumferenceMm], pipe);
        }

        return pipe;
    }
}
