using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Strain of the edges of a flat strip that is laid round the tube of a bend, in doubles (mm, parts of one). Its centre
/// line, a circle round the tube, is a geodesic; the curvature beside it is 1 / (r (R + r)) on the outside and
/// -1 / (r (R - r)) on the inside. For narrow strips both strains tend to |K| w^2 / 8.
/// </summary>
internal static class StrainKernel
{
    internal static double Pucker<TSteps>(double widthMm, double tubeMm, double bendMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        // 1 - cos(x) = 2 sin^2(x / 2) keeps its digits for narrow strips.
        double half = Math.Sin(widthMm / 4 / Math.Sqrt(tubeMm * (bendMm + tubeMm)));
        double strain = 2 * half * half;
        if (TSteps.Records)
        {
            steps.Add(StrainFormulas.Pucker, [widthMm, tubeMm, bendMm], strain);
        }

        return strain;
    }

    internal static double Stretch<TSteps>(double widthMm, double tubeMm, double bendMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double half = Math.Sinh(widthMm / 4 / Math.Sqrt(tubeMm * (bendMm - tubeMm)));
        double strain = 2 * half * half;
        if (TSteps.Records)
        {
            steps.Add(StrainFormulas.Stretch, [widthMm, tubeMm, bendMm], strain);
        }

        return strain;
    }

    internal static double WidestForPuckerMm(double tubeMm, double bendMm, double strain) =>
        4 * Math.Sqrt(tubeMm * (bendMm + tubeMm)) * Math.Asin(Math.Sqrt(strain / 2));

    internal static double WidestForStretchMm(double tubeMm, double bendMm, double strain) =>
        4 * Math.Sqrt(tubeMm * (bendMm - tubeMm)) * Math.Asinh(Math.Sqrt(strain / 2));
}
