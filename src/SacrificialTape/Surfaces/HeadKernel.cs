using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Area and depth of heads, in doubles.</summary>
internal static class HeadKernel
{
    // Nearer to a sphere than this, the area differs from the sphere's by less than 1e-12 of itself.
    private const double LeastEccentricity = 1e-6;

    /// <summary>Outside of a dish: half a spheroid on the face that was measured, and a plate outside of that face.</summary>
    internal static double SpheroidSquareMeters<TSteps>(double diameterMm, double depthMm, double thicknessMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double radius = diameterMm / 2;
        bool flat = depthMm < radius;
        double e = Math.Sqrt(Math.Abs(radius - depthMm) * (radius + depthMm)) / Math.Max(radius, depthMm);
        if (e < LeastEccentricity)
        {
            double half = HemisphereSquareMeters(diameterMm, steps);
            return Outside(half, 2 * Math.PI * diameterMm, HeadFormulas.HemisphereCurvature, [diameterMm], thicknessMm, steps);
        }

        double face = flat
            ? ((Math.PI * radius * radius) + (Math.PI * depthMm * depthMm * Math.Atanh(e) / e)) / 1e6
            : ((Math.PI * radius * radius) + (Math.PI * radius * depthMm * Math.Atan(depthMm * e / radius) / e)) / 1e6;
        double curvature = flat
            ? 2 * Math.PI * (depthMm + (radius * Math.Atan(e * radius / depthMm) / e))
            : 2 * Math.PI * (depthMm + (radius * radius * Math.Log((1 + e) * depthMm / radius) / (depthMm * e)));
        if (TSteps.Records)
        {
            steps.Add(flat ? HeadFormulas.FlatEccentricity : HeadFormulas.DeepEccentricity, [diameterMm, depthMm], e);
            steps.Add(flat ? HeadFormulas.FlatSpheroid : HeadFormulas.DeepSpheroid, [diameterMm, depthMm, e], face);
        }

        Formula sum = flat ? HeadFormulas.FlatCurvature : HeadFormulas.DeepCurvature;
        return Outside(face, curvature, sum, [diameterMm, depthMm, e], thicknessMm, steps);
    }

    /// <summary>pi D^2 / 2, on the face that D was measured on.</summary>
    internal static double HemisphereSquareMeters<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double face = Math.PI * diameterMm * diameterMm / 2 / 1e6;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.Hemisphere, [diameterMm], face);
        }

        return face;
    }

    /// <summary>The face that was measured is the outside.</summary>
    internal static double AsMeasured<TSteps>(double face, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.MeasuredOutside, [face], face);
        }

        return face;
    }

    /// <summary>Crown and knuckle. A knuckle of half the diameter leaves no crown: the head is a hemisphere.</summary>
    internal static double TorisphericalSquareMeters<TSteps>(double diameterMm, double crownMm, double knuckleMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (IsHemisphere(diameterMm, knuckleMm))
        {
            return AsMeasured(HemisphereSquareMeters(diameterMm, steps), steps);
        }

        double degrees = CrownDegrees(diameterMm, crownMm, knuckleMm, steps);
        double phi = degrees * Math.PI / 180;
        double circle = (diameterMm / 2) - knuckleMm;
        double crown = 4 * Math.PI * crownMm * crownMm * Math.Pow(Math.Sin(phi / 2), 2) / 1e6;
        double knuckle = 2 * Math.PI * knuckleMm * ((circle * ((Math.PI / 2) - phi)) + (knuckleMm * Math.Cos(phi))) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.TorisphericalDepth, [knuckleMm, crownMm, degrees], DepthMm(crownMm, knuckleMm, degrees));
            steps.Add(HeadFormulas.CrownArea, [crownMm, degrees], crown);
            steps.Add(HeadFormulas.KnuckleArea, [knuckleMm, circle, degrees], knuckle);
            steps.Add(HeadFormulas.TorisphericalDish, [crown, knuckle], crown + knuckle);
        }

        return crown + knuckle;
    }

    /// <summary>Depth of crown and knuckle, on the face of the radii.</summary>
    internal static double TorisphericalDepthMm(double diameterMm, double crownMm, double knuckleMm) =>
        IsHemisphere(diameterMm, knuckleMm)
            ? diameterMm / 2
            : DepthMm(crownMm, knuckleMm, CrownDegrees(diameterMm, crownMm, knuckleMm, default(NoSteps)));

    /// <summary>Straight flange, knuckle and crown in section.</summary>
    internal static Meridian TorisphericalMeridian(double diameterMm, double crownMm, double knuckleMm, double straightFlangeMm)
    {
        if (IsHemisphere(diameterMm, knuckleMm))
        {
            return Meridian.Head(diameterMm, straightFlangeMm, new MeridianArc(0, diameterMm / 2, Math.PI / 2, 0));
        }

        double phi = CrownDegrees(diameterMm, crownMm, knuckleMm, default(NoSteps)) * Math.PI / 180;
        return Meridian.Head(
            diameterMm,
            straightFlangeMm,
            new MeridianArc((diameterMm / 2) - knuckleMm, knuckleMm, Math.PI / 2, phi),
            new MeridianArc(0, crownMm, phi, 0));
    }

    /// <summary>A pointed cone.</summary>
    internal static double ConeSquareMeters<TSteps>(double diameterMm, double depthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double face = Math.PI * diameterMm / 2 * double.Hypot(depthMm, diameterMm / 2) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.Cone, [diameterMm, depthMm], face);
        }

        return AsMeasured(face, steps);
    }

    /// <summary>A flat disc.</summary>
    internal static double DiscSquareMeters<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double face = Math.PI * diameterMm * diameterMm / 4 / 1e6;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.Disc, [diameterMm], face);
        }

        return AsMeasured(face, steps);
    }

    /// <summary>Dish and straight flange.</summary>
    internal static double SquareMeters<TSteps>(double dish, double outsideDiameterMm, double straightFlangeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double flange = Math.PI * outsideDiameterMm * straightFlangeMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.StraightFlange, [outsideDiameterMm, straightFlangeMm], flange);
            steps.Add(HeadFormulas.Area, [dish, flange], dish + flange);
        }

        return dish + flange;
    }

    private static bool IsHemisphere(double diameterMm, double knuckleMm) => diameterMm / 2 <= knuckleMm;

    private static double DepthMm(double crownMm, double knuckleMm, double degrees) =>
        knuckleMm + (2 * (crownMm - knuckleMm) * Math.Pow(Math.Sin(degrees * Math.PI / 360), 2));

    // sin(phi) = c / (L - r), written so that a crown of half the diameter gives a right angle to the last digit.
    private static double CrownDegrees<TSteps>(double diameterMm, double crownMm, double knuckleMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double radius = diameterMm / 2;
        double circle = radius - knuckleMm;
        double degrees = Math.Atan(circle / Math.Sqrt((crownMm - radius) * (crownMm + radius - (2 * knuckleMm)))) * 180 / Math.PI;
        if (TSteps.Records)
        {
            steps.Add(HeadFormulas.KnuckleCentres, [diameterMm, knuckleMm], circle);
            steps.Add(HeadFormulas.CrownEdge, [circle, crownMm, diameterMm, knuckleMm], degrees);
        }

        return degrees;
    }

    private static double Outside<TSteps>(
        double face, double curvature, Formula sum, ReadOnlySpan<double> inputs, double thicknessMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (thicknessMm == 0)
        {
            return AsMeasured(face, steps);
        }

        double dish = face + (((thicknessMm * curvature) + (2 * Math.PI * thicknessMm * thicknessMm)) / 1e6);
        if (TSteps.Records)
        {
            steps.Add(sum, inputs, curvature);
            steps.Add(HeadFormulas.OutsideDish, [face, thicknessMm, curvature], dish);
        }

        return dish;
    }
}
