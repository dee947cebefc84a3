using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A strip along every weld seam, pressed on before the main lay.</summary>
public static class WeldStrips
{
    /// <summary>The strips for a number of like seams.</summary>
    /// <param name="seams">The seams.</param>
    /// <param name="stock">The strip; it should be wide enough to reach clean steel on both sides of the weld.</param>
    /// <param name="endLap">Lap of a closed strip on its own end, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end lap is negative.</exception>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.RingLength))]
    public static Strip For(WeldSeam seams, StripStock stock, Length endLap)
    {
        ArgumentNullException.ThrowIfNull(seams);
        ArgumentNullException.ThrowIfNull(stock);
        double lap = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(endLap), nameof(endLap));
        return Strip.Computed(
            stock,
            LengthMm(seams, lap, default(NoSteps)),
            seams.Count,
            StripPurpose.Weld,
            !seams.Closed,
            seams.LengthMm(default(NoSteps)),
            0);
    }

    internal static double LengthMm<TSteps>(WeldSeam seams, double endLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double seam = seams.LengthMm(steps);
        return seams.Closed ? SpanKernel.RingLengthMm(seam, endLapMm, steps) : seam;
    }
}
