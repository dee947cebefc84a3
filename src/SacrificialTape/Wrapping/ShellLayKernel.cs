using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Strips on a shell that reach past its seams and are cut out over its openings, in doubles (mm).</summary>
internal static class ShellLayKernel
{
    internal static double SpanMm<TSteps>(double heightMm, double pastMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = heightMm + (2 * pastMm);
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.Span, [heightMm, pastMm], span);
        }

        return span;
    }

    internal static double KeptShare<TSteps>(double areaM2, double grossM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double kept = areaM2 / grossM2;
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.Kept, [areaM2, grossM2], kept);
        }

        return kept;
    }

    /// <summary>Course by course from the end; the tape past a seam is at most a strip wide, so none is counted twice.</summary>
    internal static double PastSeamMm<TSteps>(double count, double pastMm, double spacingMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double courses = Math.Min(count, WithAllowance.Ceiling(pastMm / spacingMm));
        double past = (courses * pastMm) - (spacingMm * courses * (courses - 1) / 2);
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.CoursesPastSeam, [count, pastMm, spacingMm], courses);
            steps.Add(ShellLayFormulas.PastSeam, [courses, pastMm, spacingMm], past);
        }

        return past;
    }

    internal static double OverCourseMm2<TSteps>(double ringMm, double count, double widthMm, double pastSeamMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double over = ringMm * ((count * widthMm) - (2 * pastSeamMm)) / count;
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.OverCourse, [ringMm, count, widthMm, pastSeamMm], over / 1e6);
        }

        return over;
    }

    internal static double OverAloneMm2<TSteps>(double ringMm, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.OverAlone, [ringMm, heightMm], ringMm * heightMm / 1e6);
        }

        return ringMm * heightMm;
    }

    internal static double OverAlongMm2<TSteps>(double heightMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.OverAlong, [heightMm, widthMm], heightMm * widthMm / 1e6);
        }

        return heightMm * widthMm;
    }

    internal static double CutOutMm<TSteps>(double kept, double overMm2, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double cut = (1 - kept) * overMm2 / widthMm;
        if (TSteps.Records)
        {
            steps.Add(ShellLayFormulas.CutOut, [kept, overMm2 / 1e6, widthMm], cut);
        }

        return cut;
    }
}
