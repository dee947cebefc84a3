using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Circumference and area of a pipe, in doubles.</summary>
internal static class PipeKernel
{
    /// <summary>C = pi D.</summary>
    internal static double CircumferenceMm<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double circumference = Math.PI * diameterMm;
        if (TSteps.Records)
        {
            steps.Add(PipeFormulas.Circumference, [diameterMm], circumference);
        }

        return circumference;
    }

    /// <summary>A = C h, in m2 from mm.</summary>
    internal static double SquareMeters<TSteps>(double diameterMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double circumference = CircumferenceMm(diameterMm, steps);
        double area = circumference * lengthMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PipeFormulas.Area, [circumference, lengthMm], area);
        }

        return area;
    }
}
