using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>
/// Perimeters of rolled and hollow sections, in mm. A corner of radius r at which the outline turns by the angle b is
/// shorter than the sharp corner by (2 tan(b/2) - b) r, whichever way it turns; at a right angle by (2 - pi/2) r.
/// </summary>
internal static class SectionKernel
{
    private const double SquareCorner = 2 - (Math.PI / 2);

    /// <summary>2 h + 4 b - 2 t_w - (8 - 2 pi) r.</summary>
    internal static double IMm<TSteps>(double heightMm, double widthMm, double webMm, double radiusMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = (2 * heightMm) + (4 * widthMm) - (2 * webMm) - (4 * SquareCorner * radiusMm);
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.I, [heightMm, widthMm, webMm, radiusMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>An outline of flanges whose inner faces slope, with root and toe radii; no slope gives parallel flanges.</summary>
    internal static double ChannelMm<TSteps>(
        double heightMm, double widthMm, double webMm, double rootMm, double toeMm, double taperDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double taper = taperDegrees * Math.PI / 180;
        double saved = CornerSaving(taperDegrees);
        double inner = (widthMm - webMm) * ((1 / Math.Cos(taper)) - Math.Tan(taper));
        double perimeter = (2 * heightMm) + (2 * widthMm) + (2 * inner) - (2 * saved * (rootMm + toeMm));
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.CornerSaving, [taperDegrees], saved);
            steps.Add(SectionFormulas.InnerFace, [widthMm, webMm, taperDegrees], inner);
            steps.Add(SectionFormulas.Channel, [heightMm, widthMm, inner, saved, rootMm, toeMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>By how much a corner between an upright face and a tapered one is shorter than sharp, per mm of radius.</summary>
    internal static double CornerSaving(double taperDegrees)
    {
        double turn = (90 - taperDegrees) * Math.PI / 180;
        return (2 * Math.Tan(turn / 2)) - turn;
    }

    /// <summary>2 (a + b) - (2 - pi/2)(r1 + 2 r2).</summary>
    internal static double AngleMm<TSteps>(double longMm, double shortMm, double rootMm, double toeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = (2 * (longMm + shortMm)) - (SquareCorner * (rootMm + (2 * toeMm)));
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.Angle, [longMm, shortMm, rootMm, toeMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>2 h + 2 b - (4 - pi) r.</summary>
    internal static double TeeMm<TSteps>(double heightMm, double widthMm, double radiusMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = (2 * heightMm) + (2 * widthMm) - (2 * SquareCorner * radiusMm);
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.Tee, [heightMm, widthMm, radiusMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>2 (h + b) - (8 - 2 pi) r_o.</summary>
    internal static double RectangularHollowMm<TSteps>(double heightMm, double widthMm, double cornerMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = (2 * (heightMm + widthMm)) - (4 * SquareCorner * cornerMm);
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.RectangularHollow, [heightMm, widthMm, cornerMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>pi D.</summary>
    internal static double CircularHollowMm<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = Math.PI * diameterMm;
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.CircularHollow, [diameterMm], perimeter);
        }

        return perimeter;
    }

    /// <summary>r_o = k T.</summary>
    internal static double CornerRadiusMm<TSteps>(double factor, double thicknessMm, Formula rule, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double radius = factor * thicknessMm;
        if (TSteps.Records)
        {
            steps.Add(rule, [factor, thicknessMm], radius);
        }

        return radius;
    }

    /// <summary>What two round corners leave of a side: each takes r tan(b/2) of it.</summary>
    internal static double FaceMm<TSteps>(
        double sideMm, double radiusBeforeMm, double turnBeforeDegrees, double radiusAfterMm, double turnAfterDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double face = sideMm
            - (radiusBeforeMm * Math.Tan(turnBeforeDegrees * Math.PI / 360))
            - (radiusAfterMm * Math.Tan(turnAfterDegrees * Math.PI / 360));
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.Face, [sideMm, radiusBeforeMm, turnBeforeDegrees, radiusAfterMm, turnAfterDegrees], face);
        }

        return face;
    }

    /// <summary>r b.</summary>
    internal static double FoldRunMm<TSteps>(double radiusMm, double turnDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double run = radiusMm * turnDegrees * Math.PI / 180;
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.FoldRun, [radiusMm, turnDegrees], run);
        }

        return run;
    }

    /// <summary>U l.</summary>
    internal static double SquareMeters<TSteps>(double perimeterMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = perimeterMm * lengthMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SectionFormulas.Area, [perimeterMm, lengthMm], area);
        }

        return area;
    }
}
