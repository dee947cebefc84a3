using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>
/// Oval patches round cut-outs, in mm. A convex shape is known by how far it reaches in each direction: h. A patch clears a
/// cut-out by m everywhere exactly when its reach is at least h + m in every direction, which for an ellipse of half axes
/// a and b reads a^2 cos^2 + b^2 sin^2 >= (h + m)^2.
/// </summary>
/// <remarks>
/// The ellipse of least area round a convex shape is unique (Loewner, John); the shape being symmetric about two axes, so is
/// the ellipse. With u = sin^2 the bound is a straight line in u above the curve (h + m)^2, which is concave for rectangles and
/// ellipses, so the line touches it once; a b is least where a cos = b sin at that point. That leaves one equation for
/// the direction in which they touch.
/// </remarks>
internal static class PatchKernel
{
    private const int Directions = 720;

    /// <summary>Half axes of the ellipse of least area that clears the shape by the margin everywhere.</summary>
    internal static (double HalfLengthMm, double HalfWidthMm) Smallest<TSteps>(in PatchShape shape, double marginMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        PatchShape given = shape;
        double angle = BracketedRoot.Find(phi => Slope(given, marginMm, phi), 0, Math.PI / 2, 1e-15);
        double reach = given.Reach(Math.Cos(angle), Math.Sin(angle));
        double length = (reach + marginMm) / (Math.Sqrt(2) * Math.Cos(angle));
        double width = (reach + marginMm) / (Math.Sqrt(2) * Math.Sin(angle));
        if (TSteps.Records)
        {
            double degrees = angle * 180 / Math.PI;
            steps.Add(given.IsRectangle ? PatchFormulas.RectangleReach : PatchFormulas.EllipseReach, [given.HalfLengthMm, given.HalfWidthMm, degrees], reach);
            steps.Add(PatchFormulas.HalfLength, [reach, marginMm, degrees], length);
            steps.Add(PatchFormulas.HalfWidth, [reach, marginMm, degrees], width);
        }

        return (length, width);
    }

    /// <summary>The least clear distance between an ellipse and the shape inside it; below zero when the shape sticks out.</summary>
    internal static double ClearMm(in PatchShape shape, double halfLengthMm, double halfWidthMm)
    {
        PatchShape given = shape;
        var patch = new PatchShape(false, halfLengthMm, halfWidthMm);
        return -Most(phi =>
        {
            (double sin, double cos) = Math.SinCos(phi);
            return given.Reach(cos, sin) - patch.Reach(cos, sin);
        }, Math.PI / 2);
    }

    /// <summary>The gap between two ellipses, or, below zero, how deep one lies in the other.</summary>
    internal static double GapMm(in PatchShape first, double firstTurn, in PatchShape second, double secondTurn, double eastMm, double northMm)
    {
        PatchShape one = first;
        PatchShape other = second;
        return Most(phi =>
        {
            (double sin, double cos) = Math.SinCos(phi);
            return (eastMm * cos) + (northMm * sin) - one.Reach(Math.Cos(phi - firstTurn), Math.Sin(phi - firstTurn))
                - other.Reach(Math.Cos(phi - secondTurn), Math.Sin(phi - secondTurn));
        }, 2 * Math.PI);
    }

    /// <summary>Length and width in whole steps.</summary>
    internal static (double LengthMm, double WidthMm) AsCut<TSteps>(double halfLengthMm, double halfWidthMm, double stepMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = stepMm * WithAllowance.Ceiling(2 * halfLengthMm / stepMm);
        double width = stepMm * WithAllowance.Ceiling(2 * halfWidthMm / stepMm);
        if (TSteps.Records)
        {
            steps.Add(PatchFormulas.LengthAsCut, [halfLengthMm, stepMm], length);
            steps.Add(PatchFormulas.WidthAsCut, [halfWidthMm, stepMm], width);
        }

        return (length, width);
    }

    internal static double OvalSquareMm(double lengthMm, double widthMm) => Math.PI / 4 * lengthMm * widthMm;

    internal static double OvalSquareM<TSteps>(double lengthMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = OvalSquareMm(lengthMm, widthMm) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PatchFormulas.OvalArea, [lengthMm, widthMm], area);
        }

        return area;
    }

    /// <summary>Pieces side by side for a patch: one if the strip is wide enough.</summary>
    internal static int Pieces<TSteps>(double acrossMm, double stripMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double pieces = Math.Max(1, WithAllowance.Ceiling((acrossMm - lapMm) / (stripMm - lapMm)));
        if (TSteps.Records)
        {
            steps.Add(PatchFormulas.Pieces, [acrossMm, lapMm, stripMm], pieces);
        }

        return (int)pieces;
    }

    internal static double Share<TSteps>(double patchedM2, double coveredM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double share = 100 * patchedM2 / coveredM2;
        if (TSteps.Records)
        {
            steps.Add(PatchFormulas.Share, [patchedM2, coveredM2], share);
        }

        return share;
    }

    // Above zero before the direction in which patch and grown cut-out touch, below zero after: x of the point where the
    // grown cut-out is touched, against a / sqrt(2), over what both have in common.
    private static double Slope(in PatchShape shape, double marginMm, double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        double twice = Math.Cos(2 * angle);
        double p = shape.HalfLengthMm * cos;
        double q = shape.HalfWidthMm * sin;
        return shape.IsRectangle
            ? p - q + (marginMm * twice)
            : (p * p) - (q * q) + (marginMm * Math.Sqrt((p * p) + (q * q)) * twice);
    }

    // The greatest value over an arc of directions: looked at all round, then narrowed down about the best ones.
    private static double Most(Func<double, double> function, double arc)
    {
        double step = arc / Directions;
        double[] values = new double[Directions + 1];
        for (int i = 0; i <= Directions; i++)
        {
            values[i] = function(i * step);
        }

        double most = double.NegativeInfinity;
        for (int i = 0; i <= Directions; i++)
        {
            double before = values[i == 0 ? 0 : i - 1];
            double after = values[i == Directions ? Directions : i + 1];
            if (values[i] >= before && values[i] >= after)
            {
                most = Math.Max(most, Narrowed(function, Math.Max(0, (i - 1) * step), Math.Min(arc, (i + 1) * step)));
            }
        }

        return most;
    }

    private static double Narrowed(Func<double, double> function, double low, double high)
    {
        const double Golden = 0.6180339887498949;
        double most = Math.Max(function(low), function(high));
        double left = high - (Golden * (high - low));
        double right = low + (Golden * (high - low));
        (double atLeft, double atRight) = (function(left), function(right));
        for (int i = 0; i < 45; i++)
        {
            if (atLeft > atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (Golden * (high - low));
                atLeft = function(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (Golden * (high - low));
                atRight = function(right);
            }
        }

        return Math.Max(most, Math.Max(atLeft, atRight));
    }
}
