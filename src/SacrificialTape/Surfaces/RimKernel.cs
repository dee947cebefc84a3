using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas of sheet edges and of the rims of openings, in doubles.</summary>
internal static class RimKernel
{
    /// <summary>Both bands and the thickness.</summary>
    internal static double WidthMm<TSteps>(double frontMm, double backMm, double thicknessMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = frontMm + backMm + thicknessMm;
        if (TSteps.Records)
        {
            steps.Add(RimFormulas.Width, [frontMm, backMm, thicknessMm], width);
        }

        return width;
    }

    /// <summary>L w, with a square of each reach more at an inside corner and less at an outside one.</summary>
    internal static double EdgeSquareMeters<TSteps>(
        double lengthMm, double widthMm, int insideLessOutside, double frontMm, double backMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = ((lengthMm * widthMm) + (insideLessOutside * ((frontMm * frontMm) + (backMm * backMm)))) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(RimFormulas.EdgeArea, [lengthMm, widthMm, insideLessOutside, frontMm, backMm], area);
        }

        return area;
    }

    /// <summary>Round inside the opening.</summary>
    internal static double RimMm<TSteps>(WindowOpening opening, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rim = opening.IsRound ? Math.PI * opening.WidthMm : 2 * (opening.WidthMm + opening.HeightMm);
        if (TSteps.Records && opening.IsRound)
        {
            steps.Add(RimFormulas.RoundRim, [opening.WidthMm], rim);
        }
        else if (TSteps.Records)
        {
            steps.Add(RimFormulas.RectangularRim, [opening.WidthMm, opening.HeightMm], rim);
        }

        return rim;
    }

    /// <summary>The rim through the thickness and a band on each face.</summary>
    internal static double OpeningSquareMeters<TSteps>(WindowOpening opening, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rim = RimMm(opening, steps);
        double width = WidthMm(opening.FrontMm, opening.BackMm, opening.ThicknessMm, steps);
        double squares = (opening.FrontMm * opening.FrontMm) + (opening.BackMm * opening.BackMm);
        double area = ((rim * width) + ((opening.IsRound ? Math.PI : 4) * squares)) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(
                opening.IsRound ? RimFormulas.RoundOpening : RimFormulas.RectangularOpening,
                [rim, width, opening.FrontMm, opening.BackMm],
                area);
        }

        return area;
    }
}
