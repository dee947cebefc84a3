using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>Bends in doubles: mm, degrees, m2. Callers check arguments.</summary>
internal static class BendKernel
{
    private const double Radian = Math.PI / 180;

    /// <summary>Pappus: A = pi D R phi.</summary>
    internal static double SquareMeters<TSteps>(double diameterMm, double radiusMm, double degrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = Math.PI * diameterMm * radiusMm * (degrees * Radian) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.Area, [diameterMm, radiusMm, degrees], area);
        }

        return area;
    }

    /// <summary>(R + r) phi.</summary>
    internal static double OutsideArcMm<TSteps>(double diameterMm, double radiusMm, double degrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double arc = (radiusMm + (diameterMm / 2)) * (degrees * Radian);
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.OutsideArc, [radiusMm, diameterMm, degrees], arc);
        }

        return arc;
    }

    /// <summary>(R - r) phi.</summary>
    internal static double InsideArcMm<TSteps>(double diameterMm, double radiusMm, double degrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double arc = (radiusMm - (diameterMm / 2)) * (degrees * Radian);
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.InsideArc, [radiusMm, diameterMm, degrees], arc);
        }

        return arc;
    }

    /// <summary>m joints turn phi / m each; the axes between them are tangents: A = pi D 2 m R tan(phi / 2m).</summary>
    internal static double MitredSquareMeters<TSteps>(
        double diameterMm, double radiusMm, double degrees, int joints, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = Math.PI * diameterMm * 2 * joints * radiusMm * Math.Tan(degrees * Radian / (2 * joints)) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.MitredArea, [diameterMm, joints, radiusMm, degrees], area);
        }

        return area;
    }

    internal static double JointTurnDegrees<TSteps>(double degrees, int joints, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double turn = degrees / joints;
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.JointTurn, [degrees, joints], turn);
        }

        return turn;
    }

    /// <summary>A middle piece along the outside: 2 (R + r) tan(alpha / 2).</summary>
    internal static double PieceOutsideMm<TSteps>(double diameterMm, double radiusMm, double turnDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double piece = ((2 * radiusMm) + diameterMm) * Math.Tan(turnDegrees * Radian / 2);
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.PieceOutside, [radiusMm, diameterMm, turnDegrees], piece);
        }

        return piece;
    }

    /// <summary>A middle piece along the inside: 2 (R - r) tan(alpha / 2).</summary>
    internal static double PieceInsideMm<TSteps>(double diameterMm, double radiusMm, double turnDegrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double piece = ((2 * radiusMm) - diameterMm) * Math.Tan(turnDegrees * Radian / 2);
        if (TSteps.Records)
        {
            steps.Add(BendFormulas.PieceInside, [radiusMm, diameterMm, turnDegrees], piece);
        }

        return piece;
    }

    /// <summary>1.5 NPS, rounded to whole mm.</summary>
    internal static double LongRadiusMm(double inches) =>
        WithAllowance.Floor((1.5 * inches * UnitConversions.MillimetersPerInch) + 0.5);

    /// <summary>1.0 NPS: half of the return's centre-to-centre dimension, which is rounded to whole mm.</summary>
    internal static double ShortRadiusMm(double inches) =>
        WithAllowance.Floor((2 * inches * UnitConversions.MillimetersPerInch) + 0.5) / 2;
}
