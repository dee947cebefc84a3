using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>A cone unrolled, in doubles (mm, degrees).</summary>
internal static class ConeDevelopmentKernel
{
    internal static double OuterMm<TSteps>(double largeMm, double smallMm, double slantMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double outer = largeMm * slantMm / (largeMm - smallMm);
        if (TSteps.Records)
        {
            steps.Add(ConeDevelopmentFormulas.Outer, [largeMm, slantMm, smallMm], outer);
        }

        return outer;
    }

    internal static double InnerMm<TSteps>(double largeMm, double smallMm, double slantMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double inner = smallMm * slantMm / (largeMm - smallMm);
        if (TSteps.Records)
        {
            steps.Add(ConeDevelopmentFormulas.Inner, [smallMm, slantMm, largeMm], inner);
        }

        return inner;
    }

    internal static double AngleDegrees<TSteps>(double largeMm, double smallMm, double slantMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double angle = 180 * (largeMm - smallMm) / slantMm;
        if (TSteps.Records)
        {
            steps.Add(ConeDevelopmentFormulas.Angle, [largeMm, smallMm, slantMm], angle);
        }

        return angle;
    }
}
