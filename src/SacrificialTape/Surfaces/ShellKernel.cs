using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Area of a shell and of openings in it, in doubles.</summary>
internal static class ShellKernel
{
    /// <summary>pi D h, openings and all.</summary>
    internal static double GrossSquareMeters<TSteps>(double diameterMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double gross = Math.PI * diameterMm * lengthMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(ShellFormulas.GrossArea, [diameterMm, lengthMm], gross);
        }

        return gross;
    }

    /// <summary>Holes of pipes on the curved shell.</summary>
    internal static double RoundSquareMeters<TSteps>(double shellMm, double diameterMm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double hole = TeeKernel.HoleSquareMeters(shellMm, diameterMm, steps);
        if (TSteps.Records)
        {
            steps.Add(ShellFormulas.RoundOpenings, [count, hole], count * hole);
        }

        return count * hole;
    }

    /// <summary>Rectangles on the unrolled shell.</summary>
    internal static double RectangularSquareMeters<TSteps>(double alongMm, double aroundMm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = count * alongMm * aroundMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(ShellFormulas.RectangularOpenings, [count, alongMm, aroundMm], area);
        }

        return area;
    }

    /// <summary>What is left of the shell.</summary>
    internal static double NetSquareMeters<TSteps>(double gross, double openings, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(ShellFormulas.Area, [gross, openings], gross - openings);
        }

        return gross - openings;
    }
}
