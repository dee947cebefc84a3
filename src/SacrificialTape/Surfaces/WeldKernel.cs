using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Lengths of weld seams, in doubles (mm, degrees). Callers check arguments.</summary>
internal static class WeldKernel
{
    /// <summary>The saddle line: a quarter of it from the ridge of the run to its flank, four times.</summary>
    internal static double SaddleMm<TSteps>(double runMm, double branchMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double k = branchMm / runMm;
        double quarter = IntegralKernel.Of(t => SaddleElement(k, t), 0, Math.PI / 2);
        double seam = 2 * branchMm * quarter;
        if (TSteps.Records)
        {
            steps.Add(TeeFormulas.Modulus, [branchMm, runMm], k);
            steps.Add(WeldFormulas.Saddle, [branchMm, quarter], seam);
        }

        return seam;
    }

    /// <summary>The ellipse of a mitre joint: 4 a E(b), a = D / (2 cos(alpha / 2)), b = sin(alpha / 2).</summary>
    internal static double MitreMm<TSteps>(double diameterMm, double turnDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double half = turnDegrees * Math.PI / 360;
        double e = EllipticKernel.Complete(Math.Sin(half)).E;
        double seam = 2 * diameterMm * e / Math.Cos(half);
        if (TSteps.Records)
        {
            steps.Add(WeldFormulas.Mitre, [diameterMm, e, turnDegrees], seam);
        }

        return seam;
    }

    internal static double CourseMm<TSteps>(double lengthMm, int courses, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double course = lengthMm / courses;
        if (TSteps.Records)
        {
            steps.Add(WeldFormulas.Course, [lengthMm, courses], course);
        }

        return course;
    }

    internal static double FilletFaceMm(double legMm) => legMm * Math.Sqrt(2);

    // ds / (r dt) along the saddle line. On the flank of an equal tee both terms under the fraction vanish: the line
    // turns a corner there, and its slope tends to one.
    private static double SaddleElement(double k, double t)
    {
        double sine = Math.Sin(t);
        double cosine = Math.Cos(t);
        double ks = k * sine;
        double away = ((1 - k) * (1 + k)) + (k * k * cosine * cosine);
        return away > 0 ? Math.Sqrt(1 + (ks * ks * cosine * cosine / away)) : Math.Sqrt(2);
    }
}
