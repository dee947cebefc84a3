using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>How a bend is measured when it is laid out along its outside. Doubles in mm and degrees.</summary>
internal static class UnrolledKernel
{
    /// <summary>g = (R + r cos psi)/(R + r), psi from the outside.</summary>
    internal static double BendFactor<TSteps>(double radiusMm, double tubeMm, double degrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double factor = (radiusMm + (tubeMm * Math.Cos(degrees * (Math.PI / 180)))) / (radiusMm + tubeMm);
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.BendFactor, [radiusMm, tubeMm, degrees], factor);
        }

        return factor;
    }

    /// <summary>Integral of g around: (R (b - a) + r^2 (sin(b/r) - sin(a/r)))/(R + r).</summary>
    internal static double CoveredMm<TSteps>(double radiusMm, double tubeMm, double fromMm, double toMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double covered = ((radiusMm * (toMm - fromMm)) + (tubeMm * tubeMm * (Math.Sin(toMm / tubeMm) - Math.Sin(fromMm / tubeMm)))) / (radiusMm + tubeMm);
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.BendCovered, [radiusMm, tubeMm, toMm, fromMm], covered);
        }

        return covered;
    }

    /// <summary>
    /// sqrt of the mean of g^2 from a to b. A way that turns evenly from a to b while it goes dx along is at most
    /// sqrt(mean(g^2) dx^2 + dy^2) long, since the root of a mean is no less than the mean of the roots.
    /// </summary>
    internal static double MeanSquareFactor(double radiusMm, double tubeMm, double fromMm, double toMm)
    {
        double a = fromMm / tubeMm;
        double b = toMm / tubeMm;
        double square;
        if (Math.Abs(b - a) < 1e-6)
        {
            double at = radiusMm + (tubeMm * Math.Cos((a + b) / 2));
            square = at * at;
        }
        else
        {
            double linear = 2 * radiusMm * tubeMm * (Math.Sin(b) - Math.Sin(a)) / (b - a);
            double squared = tubeMm * tubeMm * (0.5 + ((Math.Sin(2 * b) - Math.Sin(2 * a)) / (4 * (b - a))));
            square = (radiusMm * radiusMm) + linear + squared;
        }

        return Math.Sqrt(Math.Max(0, square)) / (radiusMm + tubeMm);
    }
}
