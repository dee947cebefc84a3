namespace SacrificialTape.ServiceLife;

/// <summary>
/// Slopes at the points of a rising curve, such that the cubic between them rises too. Inside, a weighted harmonic mean
/// of the chords on both sides (Fritsch and Butland); at the ends, the slope of the parabola through three points, or
/// zero where that falls.
/// </summary>
internal static class MonotoneSlopes
{
    /// <summary>At least three points; both rows rise strictly.</summary>
    internal static double[] Of(double[] x, double[] y)
    {
        int last = x.Length - 1;
        double[] step = new double[last];
        double[] chord = new double[last];
        for (int i = 0; i < last; i++)
        {
            step[i] = x[i + 1] - x[i];
            chord[i] = (y[i + 1] - y[i]) / step[i];
        }

        double[] slope = new double[x.Length];
        for (int i = 1; i < last; i++)
        {
            double before = (2 * step[i]) + step[i - 1];
            double after = step[i] + (2 * step[i - 1]);
            slope[i] = (before + after) / ((before / chord[i - 1]) + (after / chord[i]));
        }

        slope[0] = AtEnd(step[0], step[1], chord[0], chord[1]);
        slope[last] = AtEnd(step[last - 1], step[last - 2], chord[last - 1], chord[last - 2]);
        return slope;
    }

    // All chords are positive here. Then the parabola's slope stays below two chords, so only zero is left to guard.
    private static double AtEnd(double near, double next, double nearChord, double nextChord) => Math.Max(
        0, ((((2 * near) + next) * nearChord) - (near * nextChord)) / (near + next));
}
