namespace SacrificialTape.Wrapping;

/// <summary>
/// Strips square to a pipe, cut along a slant that stands a + b cos(t) from the middle of a piece, in doubles (mm, mm2).
/// </summary>
internal static class RingCutKernel
{
    /// <summary>Area of a band of the pipe, from one mark to another along it, that lies beyond the slant.</summary>
    internal static double BeyondMm2(double tubeMm, double fromMm, double toMm, double middleMm, double swingMm) =>
        tubeMm * (Past(toMm, middleMm, swingMm) - Past(fromMm, middleMm, swingMm));

    /// <summary>Share of the way round, as an angle on each side of the outside, on which the mark lies within the slant.</summary>
    internal static double HalfAngle(double markMm, double middleMm, double swingMm)
    {
        double c = Math.Clamp((markMm - middleMm) / swingMm, -1, 1);
        return Math.Acos(c);
    }

    // Integral over a whole turn of max(0, z - a - b cos t).
    private static double Past(double markMm, double middleMm, double swingMm)
    {
        double over = markMm - middleMm;
        if (over >= swingMm)
        {
            return 2 * Math.PI * over;
        }

        if (over <= -swingMm)
        {
            return 0;
        }

        double t = Math.Acos(over / swingMm);
        return 2 * ((over * (Math.PI - t)) + (swingMm * Math.Sin(t)));
    }
}
