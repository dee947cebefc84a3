using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Rings on the straight pieces of a mitred bend, in doubles (mm). A middle piece reaches a + b cos(t) from its middle on
/// both sides, t round the pipe from the outside, a = R tan(alpha / 2), b = r tan(alpha / 2); an end piece as far from its
/// tangent.
/// </summary>
internal static class MitredBendKernel
{
    internal static double MiddleSpanMm<TSteps>(double pieceMm, double weldLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = pieceMm + (2 * weldLapMm);
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.MiddleSpan, [pieceMm, weldLapMm], span);
        }

        return span;
    }

    internal static double EndSpanMm<TSteps>(double pieceMm, double weldLapMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = (pieceMm / 2) + weldLapMm + lapMm;
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.EndSpan, [pieceMm, weldLapMm, lapMm], span);
        }

        return span;
    }

    /// <summary>Of rings on each other, of pieces over the weld, of the end pieces on the tape of the straight pipe.</summary>
    internal static double LeastLapMm<TSteps>(double middleMm, double endMm, double weldLapMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = Math.Min(Math.Min(middleMm, endMm), Math.Min(2 * weldLapMm, lapMm));
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.LeastLap, [middleMm, endMm, weldLapMm, lapMm], least);
        }

        return least;
    }

    internal static double ShortPieceMm<TSteps>(double diameterMm, double markMm, double middleMm, double swingMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double piece = diameterMm * RingCutKernel.HalfAngle(markMm, middleMm, swingMm);
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.ShortPiece, [diameterMm, markMm, middleMm, swingMm], piece);
        }

        return piece;
    }

    internal static double StripMm<TSteps>(int passes, double whole, double ringMm, double shortMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = passes * ((whole * ringMm) + shortMm);
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.Strip, [passes, whole, ringMm, shortMm], strip);
        }

        return strip;
    }

    internal static double TrimMm<TSteps>(
        int passes, double whole, double circumferenceMm, double shortMm, double keptMm2, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double trim = passes * ((whole * circumferenceMm) + shortMm - (keptMm2 / widthMm));
        if (TSteps.Records)
        {
            steps.Add(MitredBendFormulas.Trim, [passes, whole, circumferenceMm, shortMm, keptMm2 / 1e6, widthMm], trim);
        }

        return trim;
    }
}
