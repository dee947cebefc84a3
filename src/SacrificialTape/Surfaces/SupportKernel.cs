using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas of straps, columns, washers and measured areas, in doubles.</summary>
internal static class SupportKernel
{
    /// <summary>(D/2 + t) phi and the straight ends.</summary>
    internal static double OuterFaceMm<TSteps>(double pipeMm, double thicknessMm, double wrapDegrees, double endsMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double outer = (((pipeMm / 2) + thicknessMm) * wrapDegrees * Math.PI / 180) + endsMm;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.OuterFace, [pipeMm, thicknessMm, wrapDegrees, endsMm], outer);
        }

        return outer;
    }

    /// <summary>D/2 phi and the straight ends.</summary>
    internal static double InnerFaceMm<TSteps>(double pipeMm, double wrapDegrees, double endsMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double inner = (pipeMm / 2 * wrapDegrees * Math.PI / 180) + endsMm;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.InnerFace, [pipeMm, wrapDegrees, endsMm], inner);
        }

        return inner;
    }

    /// <summary>Width times the faces that are covered.</summary>
    internal static double StrapSquareMeters<TSteps>(double widthMm, double outerMm, double innerMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = widthMm * (outerMm + innerMm) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.StrapArea, [widthMm, outerMm, innerMm], area);
        }

        return area;
    }

    /// <summary>Wall of a frustum: that of a concentric reducer.</summary>
    internal static double ColumnWallSquareMeters<TSteps>(double footMm, double topMm, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double slant = ReducerKernel.SlantMm(footMm, topMm, heightMm, steps);
        double wall = Math.PI * (footMm + topMm) / 2 * slant / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.ColumnWall, [footMm, topMm, slant], wall);
        }

        return wall;
    }

    /// <summary>The plate less the foot and the bolt holes.</summary>
    internal static double PlateTopSquareMeters<TSteps>(double footMm, BasePlate plate, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double round = (footMm * footMm) + (plate.BoltHoles * plate.HoleMm * plate.HoleMm);
        double top = ((plate.WidthMm * plate.DepthMm) - (Math.PI / 4 * round)) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.PlateTop, [plate.WidthMm, plate.DepthMm, footMm, plate.BoltHoles, plate.HoleMm], top);
        }

        return top;
    }

    /// <summary>Four narrow sides.</summary>
    internal static double PlateSidesSquareMeters<TSteps>(BasePlate plate, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double sides = 2 * (plate.WidthMm + plate.DepthMm) * plate.ThicknessMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.PlateSides, [plate.WidthMm, plate.DepthMm, plate.ThicknessMm], sides);
        }

        return sides;
    }

    /// <summary>Wall and plate.</summary>
    internal static double ColumnSquareMeters<TSteps>(double wall, double plateTop, double plateSides, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = wall + plateTop + plateSides;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.ColumnArea, [wall, plateTop, plateSides], area);
        }

        return area;
    }

    /// <summary>
    /// Diameter of the largest hole in a corner of a plate beside a foot in its middle: with W and D the half sides, R the
    /// foot's radius and r the hole's, (W - r)^2 + (D - r)^2 = (R + r)^2.
    /// </summary>
    internal static double CornerHoleMm(double footMm, BasePlate plate)
    {
        double w = plate.WidthMm / 2;
        double d = plate.DepthMm / 2;
        double foot = footMm / 2;
        double b = w + d + foot;
        double radius = b - Math.Sqrt(Math.Max(0, (b * b) - (w * w) - (d * d) + (foot * foot)));
        return 2 * Math.Min(radius, Math.Min(w, d));
    }

    /// <summary>n rings.</summary>
    internal static double WashersSquareMeters<TSteps>(double outsideMm, double insideMm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = count * Math.PI / 4 * (outsideMm - insideMm) * (outsideMm + insideMm) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.Washers, [count, outsideMm, insideMm], area);
        }

        return area;
    }

    /// <summary>Measured area and its allowance.</summary>
    internal static double MeasuredSquareMeters<TSteps>(double measured, double allowance, Basis basis, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = measured * (1 + allowance);
        if (TSteps.Records)
        {
            steps.Add(SupportFormulas.Measured.RestingOn(basis), [measured, allowance], area);
        }

        return area;
    }
}
